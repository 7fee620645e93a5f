// The whole system while the coil is on: what every outlet gets of cooled air.
//
// The blower holds the airflow that the sheet gives for its cooling speed, as its taps are set to do (good to
// 10 %: with one outlet more a fixed speed moves a little more); where the sheet gives none, it moves what it
// does while heating. Air is told as it leaves the coil.
#pragma once

#include <optional>

#include "house/shape.hpp"
#include "questions/both_houses.hpp"

namespace questions {

struct CooledSystem {
    network::OperatingPoint point;
    units::Density supply_density;
    units::Airflow of(int outlet) const {  // position in House::outlets
        return point.outlets[static_cast<std::size_t>(outlet)] / supply_density;
    }
};

// Of a house with a Summer. `size`: of new ducts without a shape.
CooledSystem cooled_system(const HouseAtWork& at, const std::optional<house::Shape>& size);

}  // namespace questions
