#include "questions/answer_loads.hpp"

#include "house/cannot_answer.hpp"
#include "questions/check_sheet.hpp"

namespace questions {
namespace {

HouseGains house_gains(const house::House& house, const loads::Infiltration& infiltration) {
    HouseGains gains{loads::house_heat_gain(house, infiltration), {}};
    const loads::Air supply = loads::air_at(house.summer->supply, loads::site_pressure(house.site));
    const units::TemperatureDifference colder = house.summer->indoor - house.summer->supply;
    for (const loads::RoomHeatGain& room : gains.gain.rooms) {
        RoomAir air;
        air.flow = loads::airflow_for(room.total, 1, supply.specific_heat, colder);
        air.airflow = air.flow / supply.density;
        gains.air.push_back(air);
    }
    return gains;
}

HouseLoads house_loads(house::House house) {
    HouseLoads answer;
    answer.loss = loads::house_heat_loss(house);
    answer.on_time = loads::on_time(house, answer.loss);
    const units::Temperature indoor = house.site.winter_indoor;
    const units::Pressure pressure = loads::site_pressure(house.site);
    const loads::Air return_air = loads::air_at(indoor, pressure);
    answer.blower = ducts::design_blower(house.blower, answer.on_time.output, return_air);
    if (answer.blower.mass_flow.si() <= 0)
        throw house::CannotAnswer({}, "at that static pressure the blower moves no air");
    answer.supply = loads::supply_temperature(answer.on_time.output, answer.blower.mass_flow,
                                              return_air.specific_heat, indoor);
    const loads::Air supply_air = loads::air_at(answer.supply, pressure);
    for (const loads::RoomHeatLoss& room : answer.loss.rooms) {
        RoomAir air;
        const units::TemperatureDifference warmer = answer.supply - room.inside;
        air.enough = room.total.si() <= 0 || warmer.si() > 0;
        if (room.total.si() > 0 && air.enough)
            air.flow = loads::airflow_for(room.total, answer.on_time.share, supply_air.specific_heat, warmer);
        air.airflow = air.flow / supply_air.density;
        answer.air.push_back(air);
    }
    if (house.summer) answer.gains = house_gains(house, answer.loss.infiltration);
    answer.house = std::move(house);
    return answer;
}

Asked losses_and_gains(const house::House& house) {
    const loads::HouseHeatLoss loss = loads::house_heat_loss(house);
    Asked asked;
    for (const loads::RoomHeatLoss& room : loss.rooms) asked.figures.push_back(room.total.si());
    asked.figures.push_back(loss.total.si());
    if (!house.summer) return asked;
    const loads::HouseHeatGain gain = loads::house_heat_gain(house, loss.infiltration);
    for (const loads::RoomHeatGain& room : gain.rooms) asked.figures.push_back(room.total.si());
    asked.figures.push_back(gain.sensible.si());
    asked.figures.push_back(gain.latent.si());
    return asked;
}

}  // namespace

LoadsAnswer answer_loads(const house::Survey& survey) {
    LoadsAnswer answer;
    house::Built planned = house::build(survey, {}, house::Stage::planned);
    answer.weighed = weigh_assumptions(
        survey, planned, house::Stage::planned, losses_and_gains(planned.house),
        [](const house::House& house) { return std::optional<Asked>(losses_and_gains(house)); });
    answer.planned = house_loads(std::move(planned.house));
    if (plans_a_change(survey))
        answer.found = house_loads(house::build(survey, {}, house::Stage::found).house);
    return answer;
}

}  // namespace questions
