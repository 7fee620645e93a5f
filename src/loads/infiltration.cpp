#include "loads/infiltration.hpp"

#include <cmath>

#include "house/cannot_answer.hpp"
#include "loads/air.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;

constexpr units::Length storey_height{2.5};
constexpr double flow_exponent = 0.65;
constexpr units::Pressure test_pressure{50}, reference_pressure{4};

// Where the others' floor area is not known, the whole house has the described rooms' volume for its surface.
units::Volume heated_volume(const house::House& house, units::Area exposed) {
    const units::Length height = mean_ceiling(house);
    const units::Volume described = described_floor_area(house) * height;
    if (house.other_rooms && house.other_rooms->floor_area > units::Area())
        return described + house.other_rooms->floor_area * height;
    const units::Area described_exposed = described_exposed_surface(house);
    return described_exposed > units::Area() ? (exposed / described_exposed) * described : described;
}

units::Area leakage_area(const house::House& house, const Infiltration& leaks) {
    if (const auto* of_surface = std::get_if<double>(&house.air_leakage))
        return *of_surface * 1e-4 * leaks.exposed;
    const Air indoors = air_at(house.site.winter_indoor, site_pressure(house.site));
    return leakage_area_from_test(std::get<units::LeakageTest>(house.air_leakage), leaks.shares.volume,
                                  indoors.density);
}

}  // namespace

double infiltration_driving_force(units::Length stack_height, units::TemperatureDifference difference) {
    return (51 + 0.35 * (stack_height / unit::metre) * (units::abs(difference) / unit::kelvin)) / 1000;
}

units::Area leakage_area_from_test(units::LeakageTest test, units::Volume volume, units::Density density) {
    const units::Airflow at_test = test.at_50_pascal * volume;
    const units::Airflow at_reference = std::pow(reference_pressure / test_pressure, flow_exponent) * at_test;
    const units::Velocity through_leaks{std::sqrt((2 * reference_pressure / density).si())};
    return at_reference / through_leaks;
}

Infiltration infiltration(const house::House& house) {
    Infiltration leaks;
    leaks.exposed = exposed_surface(house);
    leaks.shares.volume = heated_volume(house, leaks.exposed);
    leaks.leakage_area = leakage_area(house, leaks);
    if (leaks.leakage_area > units::Area() && leaks.exposed <= units::Area())
        throw house::CannotAnswer(
            {}, "air leaks into the house, but no described room faces outdoors: describe one that does");
    leaks.stack_height = house.storeys * storey_height;
    leaks.difference = house.site.winter_indoor - house.site.winter_outdoor;
    const double driving = infiltration_driving_force(leaks.stack_height, leaks.difference);
    leaks.airflow = driving * (leaks.leakage_area / unit::square_centimetre) * unit::litre_per_second;
    leaks.air = outdoor_air(leaks.airflow, house.ventilation);
    const double wind = infiltration_driving_force(leaks.stack_height, {}) / driving;
    leaks.shares = leakage_shares(house, {leaks.exposed, leaks.shares.volume, wind});
    return leaks;
}

}  // namespace loads
