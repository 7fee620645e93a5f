// The system at the blower's cooling speed: what every room gets of cooled air, before and after.
//
// The blower holds the airflow that the sheet gives for its cooling speed, as its taps are set to do (good to
// 10 %: with one outlet more a fixed speed moves a little more); where the sheet gives none, it moves what it
// does while heating. Rooms' needs: questions/house_gains.hpp. Air is told as it leaves the coil, in both.
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
