#include "questions/try_outlet.hpp"

#include "loads/air.hpp"

namespace questions {
namespace {

int position_of(const house::House& house, house::DuctId id) {
    for (std::size_t i = 0; i < house.ducts.size(); ++i)
        if (house.ducts[i].id == id) return static_cast<int>(i);
    return -1;
}

void change(house::House& house, int outlet, const Proposal& proposal) {
    if (proposal.tap) {
        house::Duct& run = house.ducts[static_cast<std::size_t>(first_new_duct(house, outlet))];
        run.from = proposal.tap->duct;
        run.at = proposal.tap->at;
    }
    for (const DamperAt& damper : proposal.dampers)
        house.outlets[static_cast<std::size_t>(damper.outlet)].damper = damper.degrees;
    const auto room = static_cast<std::size_t>(house.outlets[static_cast<std::size_t>(outlet)].room.index);
    auto& way = house.whole_system->ways_out[room];
    if (proposal.door_shut && way) way->shut = true;
}

}  // namespace

int first_new_duct(const house::House& house, int outlet) {
    int first = -1;
    const house::Duct* duct = house.duct(house.outlets[static_cast<std::size_t>(outlet)].duct);
    for (; duct; duct = duct->from ? house.duct(*duct->from) : nullptr)
        if (duct->state == house::State::added) first = position_of(house, duct->id);
    return first;
}

units::Airflow airflow_of(const HouseAtWork& at, const AtWork& work, int outlet) {
    const auto i = static_cast<std::size_t>(outlet);
    return work.point.outlets[i] / loads::air_at(work.night.arrivals[i], at.machine.pressure).density;
}

units::Airflow supply_air(const HouseAtWork& at, const AtWork& work, house::RoomId room) {
    units::Airflow sum;
    for (std::size_t i = 0; i < at.house.outlets.size(); ++i)
        if (at.house.outlets[i].room == room && at.house.is_supply(at.house.outlets[i]))
            sum += airflow_of(at, work, static_cast<int>(i));
    return sum;
}

OutletTrial try_outlet(const HouseAtWork& planned, int outlet, const Proposal& proposal) {
    HouseAtWork changed = planned;
    change(changed.house, outlet, proposal);
    if (proposal.made_for.si() > 0)
        changed.machine.design.outlets[static_cast<std::size_t>(outlet)] = proposal.made_for;
    OutletTrial trial;
    trial.work = at_work(changed, proposal.size, proposal.fans);
    trial.airflow = airflow_of(changed, trial.work, outlet);
    trial.arrives = trial.work.night.arrivals[static_cast<std::size_t>(outlet)];
    trial.reaches = trial.work.night.rooms[static_cast<std::size_t>(
        changed.house.outlets[static_cast<std::size_t>(outlet)].room.index)];
    return trial;
}

}  // namespace questions
