#include "network/calibrate.hpp"

#include <algorithm>
#include <cmath>

#include "ducts/blower.hpp"
#include "ducts/leakage.hpp"
#include "ducts/plenum.hpp"
#include "house/cannot_answer.hpp"
#include "loads/heater.hpp"
#include "units/unit.hpp"

namespace network {
namespace {

struct KnownFlow {
    std::optional<units::MassFlow> flow;  // empty: by the table
    AirflowKnown by;
};

std::optional<units::TemperatureDifference> measured_rise(const house::House& house) {
    for (const house::Reading& reading : house.readings)
        if (reading.what == house::ReadingKind::temperature_rise)
            return std::get<units::TemperatureDifference>(reading.value);
    return std::nullopt;
}

KnownFlow known_flow(const house::House& house, const ducts::Plenum& plenum) {
    const house::Blower& blower = house.blower;
    const units::MassFlow planned = plenum.blower.mass_flow;
    if (std::holds_alternative<units::Airflow>(blower.known_by)) return {planned, AirflowKnown::measured};
    const bool by_pressure = std::holds_alternative<units::Pressure>(blower.known_by);
    if (by_pressure && blower.static_measured) return {planned, AirflowKnown::by_static};
    if (const auto rise = measured_rise(house))
        return {plenum.on_time.output / (plenum.return_air.specific_heat * *rise), AirflowKnown::by_rise};
    if (by_pressure) return {std::nullopt, AirflowKnown::by_table};
    return {planned, AirflowKnown::assumed_rise};
}

double wall_area(const ducts::Side& side) {
    double area = 0;
    for (const ducts::SystemSection& section : side)
        area += (section.section.perimeter * section.length).si();
    return area;
}

// A coefficient of a whole side, spread over its walls or put at its plenum.
SideLeak spread(double coefficient, double area) {
    return area > 0 ? SideLeak{coefficient / area, 0, {}} : SideLeak{0, coefficient, {}};
}

// kg/s at 1 Pa and m2 of wall, the mean over what the side is made of.
double class_coefficient(const house::House& house, const ducts::Side& side, house::DuctSealing sealing,
                         const loads::Air& air) {
    double sum = 0, area = 0;
    for (const ducts::SystemSection& section : side) {
        const house::Duct* duct =
            section.duct < 0 ? nullptr : &house.ducts[static_cast<std::size_t>(section.duct)];
        const bool round = !duct || !duct->shape || std::holds_alternative<house::Round>(*duct->shape);
        const double wall = (section.section.perimeter * section.length).si();
        area += wall, sum += wall * house::leakage_class(sealing, round);
    }
    const double mean = area > 0 ? sum / area : house::leakage_class(sealing, false);
    return ducts::leakage_class(mean).at_one_pascal * air.density.si();
}

// A return that nobody described has about as much wall as is usual beside such a supply (estimate).
double return_area(const ducts::DuctSystem& system) {
    return system.return_side.empty() ? wall_area(system.supply) : wall_area(system.return_side);
}

Leaks leaks_by_class(const house::House& house, const ducts::DuctSystem& system, house::DuctSealing sealing,
                     const loads::Air& air) {
    Leaks leaks;
    leaks.exponent = ducts::leakage_exponent;
    leaks.supply.per_area = class_coefficient(house, system.supply, sealing, air);
    const double of_return = class_coefficient(house, system.return_side, sealing, air);
    leaks.return_side = spread(of_return * return_area(system), wall_area(system.return_side));
    return leaks;
}

Leaks leaks_by_test(const ducts::DuctSystem& system, const house::DuctTest& test, const loads::Air& air) {
    Leaks leaks;
    leaks.exponent = house::leakage_test_exponent;
    const double whole = (test.flow * air.density).si() / std::pow(test.at.si(), leaks.exponent);
    const double supply = wall_area(system.supply), back = return_area(system);
    if (supply + back <= 0) return leaks;
    leaks.supply = spread(whole * supply / (supply + back), supply);
    leaks.return_side = spread(whole * back / (supply + back), wall_area(system.return_side));
    return leaks;
}

[[noreturn]] void fail() {
    throw house::CannotAnswer({},
                              "no leaks of the ducts take such shares of the air: check supply and return "
                              "under [duct_leakage]");
}

// Leaks at the plenums, where the pressure is, that take so much of the blower's flow in this house. What
// they take is known, so the house is solved with just that drawn and let in; the openings follow from the
// pressures that gives. A blower that does not hold its flow moves another one then: solved again.
void meet_shares(const house::House& house, const ducts::DuctSystem& system,
                 const house::LeakageShares& shares, Machine& machine) {
    constexpr int most = 30;
    constexpr double met = 1e-10;
    units::MassFlow moved = machine.design_flow;
    OperatingPoint point;
    double off = 1;
    for (int i = 0; i < most && off > met; ++i) {
        machine.leaks.supply.taken = shares.supply * moved;
        machine.leaks.return_side.taken = shares.return_side * moved;
        point = operating_point(house, system, machine);
        off = std::abs(point.blower / moved - 1);
        moved = point.blower;
    }
    if (off > met) fail();
    const auto opening = [&](units::MassFlow taken, units::Pressure pressure) {
        if (taken.si() > 0 && pressure.si() <= 0) fail();
        return taken.si() > 0 ? SideLeak{0, taken.si() / std::pow(pressure.si(), machine.leaks.exponent), {}}
                              : SideLeak{};
    };
    machine.leaks.supply = opening(shares.supply * moved, point.supply_plenum);
    machine.leaks.return_side = opening(shares.return_side * moved, -point.return_plenum);
}

void set_leaks(const house::House& house, const ducts::DuctSystem& system, const loads::Air& air,
               Machine& machine) {
    const house::DuctLeakage& leakage = house.whole_system->leakage;
    if (const auto* sealing = std::get_if<house::DuctSealing>(&leakage))
        machine.leaks = leaks_by_class(house, system, *sealing, air);
    else if (const auto* test = std::get_if<house::DuctTest>(&leakage))
        machine.leaks = leaks_by_test(system, *test, air);
    else
        meet_shares(house, system, std::get<house::LeakageShares>(leakage), machine);
}

bool is_constant(const house::House& house) {
    return house.blower.kind == house::BlowerKind::constant_airflow;
}
bool was_seen(const KnownFlow& known) { return known.flow && known.by != AirflowKnown::assumed_rise; }

// The blower while the ducts of the house as found are tried on it.
BlowerLaw law_at_first(const house::House& house, const KnownFlow& known, const Machine& machine,
                       const loads::Air& return_air) {
    if (is_constant(house) && !was_seen(known))
        return HeldAirflow{machine.design_flow, house.whole_system->constant_airflow_limit};
    if (known.flow) return HeldAirflow{machine.design_flow, {}};
    const FanCurve table = table_curve(house.blower.points, return_air);
    if (house.blower.points.size() > 1) return table;
    return falling_curve(machine.design_flow, table.gain(machine.design_flow),
                         house.whole_system->blower_fall);
}

// The blower's answer to other pressures, through what it moves now.
BlowerLaw law_through(const house::House& house, const Machine& machine, units::MassFlow flow,
                      units::Pressure gain) {
    const house::WholeSystem& whole = *house.whole_system;
    // A motor was seen to hold its airflow at this pressure, whatever its limit is assumed to be.
    constexpr double beyond_rounding = 1 + 1e-6;
    if (is_constant(house))
        return HeldAirflow{flow, std::max(whole.constant_airflow_limit, beyond_rounding * gain)};
    const loads::Air air = loads::air_at(machine.returns, machine.pressure);
    if (house.blower.points.size() < 2) return falling_curve(flow, gain, whole.blower_fall);
    const double stretch = stretch_through(house.blower.points, air, flow, gain);
    if (stretch <= 0)
        throw house::CannotAnswer({},
                                  "at the pressure these ducts ask for at the measured airflow the blower's "
                                  "table moves no air: check points and measured under [blower]");
    return table_curve(house.blower.points, air, stretch);
}

}  // namespace

ducts::DuctSystem planned_ducts(const house::House& house, const Machine& machine,
                                const std::optional<house::Shape>& unsized) {
    return ducts::duct_system(house, machine.design, unsized);
}

Calibrated calibrate(const house::House& house, const loads::HouseHeatLoss& loss,
                     const std::optional<house::Shape>& unsized) {
    const ducts::Plenum plenum = ducts::plenum(house, loss);
    Calibrated calibrated;
    Machine& machine = calibrated.machine;
    machine.output = plenum.on_time.output;
    machine.returns = house.site.winter_indoor;
    machine.pressure = plenum.supply.pressure;
    const KnownFlow known = known_flow(house, plenum);
    calibrated.known_by = known.by;
    machine.design_flow = known.flow ? *known.flow : plenum.blower.mass_flow;
    machine.design = ducts::design_flows(house, loss, machine.design_flow);
    machine.blower = law_at_first(house, known, machine, plenum.return_air);
    const ducts::DuctSystem system = planned_ducts(house, machine, unsized);
    set_leaks(house, system, plenum.return_air, machine);
    if (std::holds_alternative<HeldAirflow>(machine.blower) && (was_seen(known) || !is_constant(house))) {
        const OperatingPoint point = operating_point(house, system, machine);
        machine.blower = law_through(house, machine, point.blower, point.external_static);
    }
    return calibrated;
}

Machine machine_for(const house::House& planned, const loads::HouseHeatLoss& loss, const house::House& found,
                    const Machine& machine) {
    Machine other = machine;
    other.output =
        loads::on_time(planned, loss).output;  // where only its time on is assumed, it follows the loss
    other.design = ducts::design_flows(planned, loss, machine.design_flow);
    other.design.each_other_outlet = machine.design.each_other_outlet;
    for (std::size_t i = 0; i < planned.outlets.size(); ++i)
        for (std::size_t j = 0; j < found.outlets.size(); ++j)
            if (planned.outlets[i].id == found.outlets[j].id)
                other.design.outlets[i] = machine.design.outlets[j];
    return other;
}

}  // namespace network
