// The air at the plenum on the design night: how long the heater is on, what the blower moves, how warm it
// leaves.
//
// The heater's output and the blower's airflow together fix the supply temperature; see loads/heater.hpp and
// ducts/blower.hpp for each. Throws house::CannotAnswer where the blower moves no air, or where so little
// passes the heater that it would leave hotter than any house heater lets it (90 C: limit switches open
// below that, common practice).
#pragma once

#include "ducts/airflow_that_holds.hpp"
#include "ducts/blower.hpp"
#include "house/house.hpp"
#include "loads/air.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"

namespace ducts {

struct Plenum {
    loads::OnTime on_time;
    loads::Air return_air, supply_air;
    DesignBlower blower;
    Supply supply;
};

Plenum plenum(const house::House& house, const loads::HouseHeatLoss& loss);

}  // namespace ducts
