// Writes quantities as the trade reads them, rounded to what is worth saying (never to false precision).
//
// us: lengths to 1/8 in as "12 ft 6-1/2 in", airflow in whole cfm, pressure to 0.001 in.wc, temperature in
// whole F, heat to 10 Btu/h, speed to 10 ft/min, areas to 0.1 ft2. si: lengths to 5 mm as "95 mm" below a
// metre and to 0.01 m as "3.81 m" from there, airflow in whole L/s, pressure to 0.1 Pa below 10 Pa and whole
// Pa from there, temperature to 0.5 C, heat to 5 W, speed to 0.1 m/s, areas to 0.01 m2. Each kind keeps its
// count of digits ("21.0 C"), so columns align; only R-values and air changes, which are names as much as
// numbers, drop a last ".0" ("R-11", "14 ACH50"). Halves round away from zero. Every text written here of a
// quantity that can be read (units/read.hpp) reads back, and writing what was read gives the same text. What
// is not finite is written "?".
#pragma once

#include <string>

#include "units/quantity.hpp"
#include "units/read.hpp"

namespace units {

enum class System { us, si };

// One quantity split for tables: the number alone and the unit alone.
struct Written {
    std::string number;
    std::string unit;
    std::string text() const;  // "63 cfm"
};

Written write(Length value, System system);  // us: number holds the whole "12 ft 6-1/2 in", unit is empty
Written write(Area value, System system);
Written write(Airflow value, System system);
Written write(Velocity value, System system);
Written write(Pressure value, System system);
Written write(FrictionRate value, System system);  // us 0.001 in.wc/100 ft, si 0.01 Pa/m
Written write(Temperature value, System system);
Written write(TemperatureDifference value, System system);  // us whole F, si 0.5 K
Written write(Power value, System system);
Written write(HeatFlux value, System system);       // 0.1
Written write(Resistance value, System system);     // us "R-11" (0.1), si 0.01 m2K/W
Written write(Transmittance value, System system);  // us 0.001 Btu/h.ft2.F, si 0.01 W/m2K
Written write(LeakageTest value);                   // "14 ACH50", 0.1

Written write(Conductivity value, System system);  // us 0.01 Btu/h.ft.F, si 0.01 W/mK

// A plain decimal with so many digits after the point: "0.075". Never locale dependent, never "-0".
std::string decimal(double value, int digits);

}  // namespace units
