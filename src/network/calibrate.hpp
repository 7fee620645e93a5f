// The machine as the house as found shows it: what its blower moves, and how its ducts leak.
//
//     blower   measured airflow; else that of a measured static pressure by the maker's table; else a
//     measured
//              temperature rise: output / (flow x specific heat); else the maker's table alone; else the
//              temperature rise assumed within the plate's. Where the airflow is known so, the house as found
//              moves just that, and the blower's curve is laid through it at the pressure the ducts then ask
//              for: the table stretched, or a straight line of the assumed fall; a motor that holds its
//              airflow then has that pressure within its limit
//     leaks    of a class by the area of duct wall (house/whole_system.hpp); of a test likewise, both sides
//              together; shares of the blower's airflow as leaks that take just that share in the house as
//              found; at the plenum, where the air is so fast that the ducts hardly push outwards
//
// The planned house has the same machine: `machine_for` only tells it what its new registers are made for.
#pragma once

#include <optional>

#include "ducts/duct_system.hpp"
#include "house/house.hpp"
#include "loads/room_heat_loss.hpp"
#include "network/operating_point.hpp"
#include "units/quantity.hpp"

namespace network {

enum class AirflowKnown { measured, by_static, by_rise, by_table, assumed_rise };

struct Calibrated {
    Machine machine;
    AirflowKnown known_by = AirflowKnown::assumed_rise;
};

// `house` as found, with its WholeSystem; `unsized`: the shape of ducts without one.
Calibrated calibrate(const house::House& house, const loads::HouseHeatLoss& loss,
                     const std::optional<house::Shape>& unsized = std::nullopt);
// For another stage of the same house.
Machine machine_for(const house::House& planned, const loads::HouseHeatLoss& loss, const house::House& found,
                    const Machine& machine);

// The duct tree at the plan's flows of this machine; `unsized`: the shape of ducts without one.
ducts::DuctSystem planned_ducts(const house::House& house, const Machine& machine,
                                const std::optional<house::Shape>& unsized);

}  // namespace network
