#include "questions/house_gains.hpp"

#include "loads/air.hpp"
#include "loads/heater.hpp"

namespace questions {

HouseGains house_gains(const house::House& house, const loads::Infiltration& infiltration) {
    HouseGains gains{loads::house_heat_gain(house, infiltration), {}, {}};
    const loads::Air supply = loads::air_at(house.summer->supply, loads::site_pressure(house.site));
    const units::TemperatureDifference colder = house.summer->indoor - house.summer->supply;
    const auto air_for = [&](units::Power gain) {
        RoomAir air;
        air.flow = loads::airflow_for(gain, 1, supply.specific_heat, colder);
        air.airflow = air.flow / supply.density;
        return air;
    };
    for (const loads::RoomHeatGain& room : gains.gain.rooms) gains.air.push_back(air_for(room.total));
    gains.of_house = air_for(gains.gain.sensible);
    return gains;
}

}  // namespace questions
