// Outdoor air of leaks and of mechanical ventilation together.
//
//     balanced      = the smaller of supply and exhaust; unbalanced = the rest of the larger
//     through leaks = the larger of unbalanced and (leakage + 0.5 x unbalanced)
//     to be heated  = through leaks + (1 - recovery) x balanced
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 11-14. Unchanged. Chapter 16, eq. 51, of the same
// book adds the two as the root of squares instead; the rule here is the one of the load method.
// Fans that run at times, as of bath and kitchen, are in no load (ibid.). Moisture is not recovered.
// Accuracy: +-10 % of a measured airflow, far more of a fan's plate (common practice).
#pragma once

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method ventilation_method{
    "outdoor air of leaks and ventilation",
    "the larger of unbalanced and (leakage + 0.5 x unbalanced), + (1 - recovery) x balanced",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 11-14"};

struct OutdoorAir {
    units::Airflow balanced, unbalanced, through_leaks;
    double recovery = 0;
    units::Airflow to_heat() const { return through_leaks + (1 - recovery) * balanced; }
    units::Airflow entering() const { return through_leaks + balanced; }
};

OutdoorAir outdoor_air(units::Airflow leakage, const house::Ventilation& ventilation);

}  // namespace loads
