// No heat comes from nowhere or goes there.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "ducts/duct_temperatures.hpp"
#include "house/cannot_answer.hpp"
#include "network/a_whole_house.hpp"

namespace network {
namespace {

struct Night {
    RandomHouse made;
    OperatingPoint point;
    DesignNight night;
    double cp() const { return point.return_air.specific_heat.si(); }
};

// A house whose air runs forwards everywhere, with some partitions.
Night some_night(bool other_rooms) {
    Drawn drawn;
    drawn.usual = true;
    Night some{random_whole_house(*rc::gen::arbitrary<std::uint32_t>(), drawn), {}, {}};
    house::House& house = some.made.house;
    if (!other_rooms) house.other_rooms.reset();
    if (house.other_rooms) house.other_rooms->heat_loss = units::Power(2000);
    for (std::size_t i = 1; i < house.rooms.size(); i += 2)
        a_house::add_partition(house, i - 1, i, a_house::surface(8, a_house::u(2)));
    some.made.machine = planned_for(house, some.made.machine);
    some.made.machine.output = some.made.machine.design_flow.si() * units::Power(25'000);
    some.point = running(house, some.made.machine);
    for (const units::MassFlow flow : some.point.outlets) RC_PRE(flow.si() > 0);
    try {
        some.night = design_night(house, loads::house_heat_loss(house), some.made.machine, some.point);
    } catch (const house::CannotAnswer&) {
        RC_DISCARD("ducts that leak in more cold than the heater gives");
    }
    return some;
}

RC_GTEST_PROP(DesignNightLaws, heat_in_is_heat_out, ()) {
    const Night some = some_night(*rc::gen::arbitrary<bool>());
    const DesignNight& night = some.night;
    const units::Temperature outdoors = some.made.house.site.winter_outdoor;
    double lost = night.on_time * night.lost_on_the_way.si();
    for (const units::Temperature room : night.rooms) lost += 5 * (room - outdoors).si();
    if (some.made.house.other_rooms) lost += 2000.0 / 30 * (night.other_rooms - outdoors).si();
    const double given = night.on_time * some.made.machine.output.si();
    RC_ASSERT(std::abs(given - lost) < 1e-8 * std::max(1.0, given));
}

// The temperature of what rooms give the house.
double mix_of(const Night& some) {
    const house::House& house = some.made.house;
    std::vector<double> surplus(house.rooms.size());
    double supplied = 0, drawn = 0;
    for (std::size_t i = 0; i < house.outlets.size(); ++i) {
        const double flow = some.point.outlets[i].si();
        const bool supply = house.is_supply(house.outlets[i]);
        (supply ? supplied : drawn) += flow;
        surplus[static_cast<std::size_t>(house.outlets[i].room.index)] += supply ? flow : -flow;
    }
    const double returned = (some.point.blower - some.point.return_leak).si();
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.is_supply(house.outlets[i]))
            surplus[static_cast<std::size_t>(house.outlets[i].room.index)] -=
                std::max(0.0, returned - drawn) * some.point.outlets[i].si() / supplied;
    double given = 0, sum = 0;
    for (std::size_t i = 0; i < surplus.size(); ++i)
        if (surplus[i] > 1e-12) given += surplus[i], sum += surplus[i] * some.night.rooms[i].si();
    return given > 0 ? sum / given : house.site.winter_indoor.si();
}

// By sections: what each loses through its wall, and what leaks at its end against the air that makes up for
// it.
RC_GTEST_PROP(DesignNightLaws, what_is_lost_on_the_way_is_lost_by_ducts_and_leaks, ()) {
    const Night some = some_night(false);
    const ducts::Side& supply = some.point.system.supply;
    for (const units::MassFlow flow : some.point.outlets) RC_PRE(flow.si() > -1e-12);
    const double mix = mix_of(some);
    const auto leaving =
        ducts::leaving_temperatures(supply, some.night.supply, some.point.return_air.specific_heat);
    std::vector<double> leaked(supply.size());
    double at_plenum = some.point.blower.si(), lost = 0;
    for (std::size_t i = 0; i < supply.size(); ++i) {
        const double flow = supply[i].flow.si();
        RC_PRE(flow > -1e-12);
        leaked[i] += flow;
        if (supply[i].outlet >= 0)
            leaked[i] -= some.point.outlets[static_cast<std::size_t>(supply[i].outlet)].si();
        (supply[i].parent < 0 ? at_plenum : leaked[static_cast<std::size_t>(supply[i].parent)]) -= flow;
        const auto entering =
            supply[i].parent < 0 ? some.night.supply : leaving[static_cast<std::size_t>(supply[i].parent)];
        lost += flow * some.cp() * (entering - leaving[i]).si();
    }
    for (std::size_t i = 0; i < supply.size(); ++i) lost += leaked[i] * some.cp() * (leaving[i].si() - mix);
    lost += at_plenum * some.cp() * (some.night.supply.si() - mix);
    double area = 0, around = 0;
    for (const ducts::SystemSection& section : some.point.system.return_side) {
        const double wall = (section.section.perimeter * section.length).si();
        area += wall, around += wall * section.surroundings.si();
    }
    around = area > 0 ? around / area : some.made.house.site.winter_indoor.si();
    // A return pressed above what is around it (a room blown full) leaks outwards: air as warm as it comes
    // back is made up for by air of the house's mix.
    const double back =
        some.night.supply.si() - some.made.machine.output.si() / (some.point.blower.si() * some.cp());
    const double leak = some.point.return_leak.si();
    lost += leak * some.cp() * (mix - (leak > 0 ? around : back));
    RC_ASSERT(std::abs(lost - some.night.lost_on_the_way.si()) < 1e-7 * some.made.machine.output.si());
}

// All rooms as warm as the air that comes back, and pipes that lose nothing: then only heat counts, not how
// often it is sent.
RC_GTEST_PROP(DesignNightLaws, twice_the_output_is_on_half_the_time_and_leaves_the_rooms_as_warm, ()) {
    house::House house = with_rooms(*rc::gen::inRange(1, 6));
    house.register_drop = units::Pressure(10);
    for (int room = 0; room < static_cast<int>(house.rooms.size()); ++room)
        a_duct_house::add_outlet(house, a_duct_house::add_root(house, a_duct_house::six_inch, 0), room);
    Machine machine = planned_for(house, holding(0.05 * static_cast<double>(house.rooms.size())));
    machine.output = units::Power(*rc::gen::inRange(500, 1600) * static_cast<double>(house.rooms.size()));
    const auto loss = loads::house_heat_loss(house);
    const OperatingPoint point = running(house, machine);
    const DesignNight once = design_night(house, loss, machine, point);
    machine.output = 2 * machine.output;
    const DesignNight twice = design_night(house, loss, machine, point);
    RC_ASSERT(std::abs(twice.on_time - once.on_time / 2) < 1e-9);
    for (std::size_t i = 0; i < once.rooms.size(); ++i)
        RC_ASSERT(std::abs((twice.rooms[i] - once.rooms[i]).si()) < 1e-8);
}

}  // namespace
}  // namespace network
