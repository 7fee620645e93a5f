#include "questions/answer_loads.hpp"

#include "ducts/plenum.hpp"
#include "questions/asked_room.hpp"
#include "questions/check_sheet.hpp"
#include "questions/room_as_the_house.hpp"

namespace questions {
namespace {

HouseLoads losses_and_air(house::House house) {
    HouseLoads answer;
    answer.loss = loads::house_heat_loss(house);
    const ducts::Plenum plenum = ducts::plenum(house, answer.loss);
    answer.on_time = plenum.on_time;
    answer.blower = plenum.blower;
    answer.supply = plenum.supply.temperature;
    const loads::Air& supply_air = plenum.supply_air;
    for (const loads::RoomHeatLoss& room : answer.loss.rooms) {
        RoomAir air;
        const units::TemperatureDifference warmer = answer.supply - room.inside;
        air.enough = room.total.si() <= 0 || warmer.si() > 0;
        if (room.total.si() > 0 && air.enough)
            air.flow = loads::airflow_for(room.total, answer.on_time.share, supply_air.specific_heat, warmer);
        air.airflow = air.flow / supply_air.density;
        answer.air.push_back(air);
    }
    answer.house = std::move(house);
    return answer;
}

// The wanted temperature with the air for the house's: what the room then loses beyond what that air brings.
std::optional<RoomAsTheHouse> as_the_house(const HouseLoads& loads, std::size_t room) {
    const loads::RoomHeatLoss& wanted = loads.loss.rooms[room];
    std::optional<house::House> changed = with_room_as_the_house(loads.house, wanted.room);
    if (!changed) return std::nullopt;
    const HouseLoads there = losses_and_air(std::move(*changed));
    const loads::Air supply_air = loads::air_at(loads.supply, loads::site_pressure(loads.house.site));
    const RoomAir& air = there.air[room];
    const units::Power electric = loads::left_to_heat(wanted.total, loads.on_time.share, air.flow,
                                                      supply_air.specific_heat, loads.supply - wanted.inside);
    return RoomAsTheHouse{there.loss.rooms[room].inside, there.loss.rooms[room].total, air, electric};
}

HouseLoads house_loads(house::House house) {
    HouseLoads answer = losses_and_air(std::move(house));
    if (answer.house.summer) answer.gains = house_gains(answer.house, answer.loss.infiltration);
    for (std::size_t i = 0; i < answer.loss.rooms.size(); ++i) {
        answer.coldest.push_back(loads::coldest_surface(answer.house.rooms[i], answer.loss.rooms[i]));
        answer.as_the_house.push_back(as_the_house(answer, i));
    }
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

LoadsAnswer answer_loads(const house::Survey& survey, const std::string& room_name) {
    LoadsAnswer answer;
    house::Built planned = house::build(survey, {}, house::Stage::planned);
    if (!room_name.empty()) answer.only = asked_room(planned.house, room_name);
    answer.beyond_limits = beyond_limits(survey, planned.house);
    answer.weighed = weigh_assumptions(
        survey, planned, house::Stage::planned, losses_and_gains(planned.house),
        [](const house::House& house) { return std::optional<Asked>(losses_and_gains(house)); });
    answer.planned = house_loads(std::move(planned.house));
    if (plans_a_change(survey))
        answer.found = house_loads(house::build(survey, {}, house::Stage::found).house);
    return answer;
}

}  // namespace questions
