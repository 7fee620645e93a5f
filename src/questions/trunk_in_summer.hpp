// The system at the blower's cooling speed: what every room gets of cooled air, before and after.
//
// The air: questions/cooled_system.hpp. Rooms' needs: questions/house_gains.hpp. Both are told as they leave
// the coil.
#pragma once

#include <optional>
#include <vector>

#include "house/shape.hpp"
#include "questions/both_houses.hpp"

namespace questions {

struct CooledRoom {
    house::RoomId room;
    units::Airflow before, after, needs;
    bool falls_short() const { return after < needs; }
};

struct TrunkInSummer {
    bool own_speed = false;  // the sheet gives the cooling speed's airflow
    units::Airflow blower;   // of return air, after
    units::Pressure external_static_before, external_static;
    std::vector<CooledRoom> rooms;  // with an outlet, in the sheet's order
};

// Empty where there is no cooling. `size`: of new ducts without a shape.
std::optional<TrunkInSummer> trunk_in_summer(const BothHouses& both, const house::Shape& size);

}  // namespace questions
