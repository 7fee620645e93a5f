#include "ducts/plenum.hpp"

#include "house/cannot_answer.hpp"
#include "units/unit.hpp"

namespace ducts {

Plenum plenum(const house::House& house, const loads::HouseHeatLoss& loss) {
    constexpr units::Temperature hottest = units::unit::celsius(90);
    const units::Temperature indoor = house.site.winter_indoor;
    const units::Pressure pressure = loads::site_pressure(house.site);
    Plenum air;
    air.on_time = loads::on_time(house, loss);
    air.return_air = loads::air_at(indoor, pressure);
    air.blower = design_blower(house.blower, loads::rated_output(house.heater, house.site, loss.total),
                               air.return_air);
    if (air.blower.mass_flow.si() <= 0)
        throw house::CannotAnswer({},
                                  "at that static pressure the blower moves no air: check points and "
                                  "measured under [blower], max_static under [heater]");
    const units::SpecificHeat cp = air.return_air.specific_heat;
    air.supply = {loads::supply_temperature(air.on_time.output, air.blower.mass_flow, cp, indoor), cp,
                  pressure, air.on_time.share};
    if (air.supply.temperature > hottest)
        throw house::CannotAnswer({},
                                  "so little air passes the heater that it would leave scalding hot: "
                                  "check output under [heater], points and measured under [blower]");
    air.supply_air = loads::air_at(air.supply.temperature, pressure);
    return air;
}

}  // namespace ducts
