// Outdoor air that leaks into the whole house on the design night.
//
//     airflow      = leakage area x (51 + H dt 0.35) / 1000
//     leakage area = airflow at 4 Pa x sqrt(density / (2 x 4 Pa)), airflow at 4 Pa = at 50 Pa x (4/50)^0.65
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 6-10 (heating, 6.7 m/s of wind, no flue), and ch. 16,
// eq. 40-46, for the blower-door test. Unchanged. Shared among the rooms by loads/leakage_shares.hpp.
// Symbols: airflow L/s, leakage area cm2 at 4 Pa, H stack height in m (2.5 a storey), dt in K.
// Leakage area: from the class (cm2 per m2 of exposed surface), or from a test (needs the heated volume).
// Exposed surface: whatever faces outdoors, attic, crawl space, garage or porch; a floor over a basement does
// not count. Where rooms are not described, the whole house's is that of a plain box, the described rooms
// included: sides 3 to 2, the house's floor area and storeys, the described rooms' mean ceiling height; its
// walls and its top ceiling. Where only the others' heat loss is stated, it is as much surface as loses that
// heat at the described rooms' mean loss, and the volume goes with it.
// Range: two-storey houses are the method's home; three are within its table. Accuracy: a class either way
// (common practice); +-40 % from a test (ibid. ch. 16).
#pragma once

#include <array>

#include "house/house.hpp"
#include "loads/leakage_shares.hpp"
#include "loads/method.hpp"
#include "loads/ventilation.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method infiltration_method{"air leakage",
                                            "leakage area x (51 + stack height x difference x 0.35) / 1000",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 6-10"};

struct Infiltration {
    units::Area exposed;       // of the whole house
    units::Area leakage_area;  // at 4 Pa
    units::Length stack_height;
    units::TemperatureDifference difference;  // indoors less outdoors
    units::Airflow airflow;                   // of the whole house, at indoor density
    OutdoorAir air;                           // with the mechanical ventilation
    LeakageShares shares;                     // of the rooms in all of it
};

units::Area described_floor_area(const house::House& house);
units::Length mean_ceiling(const house::House& house);  // of the described rooms

units::Area exposed_surface(const house::Room& room);
units::Area described_exposed_surface(const house::House& house);
// The box's, m2, on each storey; nothing where no floor area of the other rooms is known.
std::array<double, 4> box_surface_by_storey(const house::House& house);
units::Area exposed_surface(const house::House& house);  // never less than that of the described rooms

// L/s per cm2 of leakage area. Outdoors warmer than indoors drives as much, the other way.
double infiltration_driving_force(units::Length stack_height, units::TemperatureDifference difference);
units::Area leakage_area_from_test(units::LeakageTest test, units::Volume volume, units::Density density);
Infiltration infiltration(const house::House& house);

}  // namespace loads
