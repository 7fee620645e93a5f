#include "loads/damp_air.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "house/cannot_answer.hpp"
#include "loads/air.hpp"
#include "psychro/dew_point.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/wet_bulb.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;

constexpr double indoor_humidity = 0.5;
constexpr double dampest = 0.8;

units::Temperature summer_temperature(const house::Summer& summer, house::Space space) {
    switch (space) {
        case house::Space::attic:
            return unit::celsius(49);
        case house::Space::basement:
            return unit::celsius(20);
        case house::Space::crawl:
        case house::Space::ground:
            return unit::celsius(22);
        case house::Space::heated_rooms:
            return summer.indoor;
        case house::Space::outdoors:
        case house::Space::garage:
        case house::Space::porch:
            break;
    }
    return summer.outdoor;
}

psychro::State indoors(const house::Summer& summer, double pressure) {
    return psychro::state_from_relative_humidity(unit::in_celsius(summer.indoor), indoor_humidity, pressure);
}

double moisture_outdoors(const house::Summer& summer, const psychro::State& indoor) {
    if (const auto* more = std::get_if<double>(&summer.moisture)) return indoor.humidity_ratio + *more;
    const double wet_bulb = unit::in_celsius(std::get<units::Temperature>(summer.moisture));
    return psychro::state_from_wet_bulb(unit::in_celsius(summer.outdoor), wet_bulb, indoor.pressure_pa)
        .humidity_ratio;
}

}  // namespace

SummerMoisture summer_moisture(const house::House& house) try {
    const psychro::State indoor = indoors(*house.summer, site_pressure(house.site).si());
    return {indoor.humidity_ratio, moisture_outdoors(*house.summer, indoor)};
} catch (const psychro::OutOfRange& range) {
    throw house::CannotAnswer({}, std::string("no figures for the summer air: ") + range.what());
}

DampAir summer_air_in(const house::House& house, house::Space space) try {
    const units::Temperature temperature = summer_temperature(*house.summer, space);
    const SummerMoisture moisture = summer_moisture(house);
    const double most = space == house::Space::heated_rooms ? indoor_humidity : dampest;
    psychro::State air = psychro::state_from_relative_humidity(unit::in_celsius(temperature), most,
                                                               site_pressure(house.site).si());
    air.humidity_ratio = std::min(air.humidity_ratio,
                                  space == house::Space::heated_rooms ? moisture.indoors : moisture.outdoors);
    return {temperature, unit::celsius(psychro::dew_point_c(air))};
} catch (const psychro::OutOfRange& range) {
    throw house::CannotAnswer({}, std::string("no figures for the summer air: ") + range.what());
}

}  // namespace loads
