// Source: energy balance of the room over the design night; run losses from run_heat_loss.hpp.
#include "ducts/airflow_that_holds.hpp"

#include <cmath>

#include "ducts/duct_temperatures.hpp"

namespace ducts {
namespace {

// Where the shared part of the way ends: it does not depend on the flow sought.
units::Temperature leaving_shared(const HeatWay& way, const Supply& supply) {
    units::Temperature at = supply.temperature;
    for (std::size_t i = 0; i < way.shared.size(); ++i)
        at = leaving_temperature(way.shared[i], way.shared_flows[i], supply.specific_heat, at);
    return at;
}

units::Temperature leaving_own(const HeatWay& way, const Supply& supply, units::MassFlow flow,
                               units::Temperature entering) {
    for (const Run& run : way.own) entering = leaving_temperature(run, flow, supply.specific_heat, entering);
    return entering;
}

}  // namespace

HeatWay heat_way(const Side& supply, const std::vector<int>& way) {
    HeatWay heat;
    heat.shared.reserve(way.size()), heat.shared_flows.reserve(way.size());
    const units::MassFlow last = supply[static_cast<std::size_t>(way.back())].flow;
    for (int at : way) {
        const SystemSection& section = supply[static_cast<std::size_t>(at)];
        const Run run = run_of(section);
        const bool shared = section.flow > last * (1 + 1e-9);
        (shared ? heat.shared : heat.own).push_back(run);
        if (shared) heat.shared_flows.push_back(section.flow);
    }
    return heat;
}

units::Temperature arrival(const HeatWay& way, const Supply& supply, units::MassFlow flow) {
    return leaving_own(way, supply, flow, leaving_shared(way, supply));
}

std::optional<Holding> airflow_that_holds(const HeatWay& way, const Supply& supply,
                                          const loads::RoomHeatLoss& room) {
    // Heat the flow brings, averaged over the night, less what the room loses.
    const units::Temperature entering = leaving_shared(way, supply);
    const auto short_of = [&](double kg_s) {
        const units::MassFlow flow(kg_s);
        const units::TemperatureDifference warmer = leaving_own(way, supply, flow, entering) - room.inside;
        return (supply.on_time * (flow * supply.specific_heat * warmer) - room.total).si();
    };
    if (room.total.si() <= 0) return Holding{{}, arrival(way, supply, {}), {}};
    constexpr double beyond_any_house = 100;  // kg/s
    double low = 0, high = 1e-3;
    while (short_of(high) < 0) {
        low = high, high *= 2;
        if (high > beyond_any_house) return std::nullopt;
    }
    // Illinois false position: a bracket that closes faster than halving and cannot be lost.
    double f_low = short_of(low), f_high = short_of(high);
    int last_side = 0;
    for (int i = 0; i < 200 && high - low > 1e-12 * high; ++i) {
        const double guess = (low * f_high - high * f_low) / (f_high - f_low);
        const double f = short_of(guess);
        if (std::abs(f) < 1e-12 * room.total.si()) {
            low = high = guess;
            break;
        }
        if (f < 0) {
            low = guess, f_low = f;
            if (last_side == -1) f_high /= 2;
            last_side = -1;
        } else {
            high = guess, f_high = f;
            if (last_side == 1) f_low /= 2;
            last_side = 1;
        }
    }
    Holding holding;
    holding.flow = units::MassFlow(high);
    holding.arrival = arrival(way, supply, holding.flow);
    holding.airflow = holding.flow / loads::air_at(holding.arrival, supply.pressure).density;
    return holding;
}

units::Temperature room_temperature(const HeatWay& way, const Supply& supply, const loads::RoomHeatLoss& room,
                                    units::MassFlow flow) {
    const units::HeatLossPerKelvin brings = supply.on_time * (flow * supply.specific_heat);
    if (brings + room.conductance <= units::HeatLossPerKelvin()) return room.balance;  // nothing moves it
    const units::TemperatureDifference above_balance = arrival(way, supply, flow) - room.balance;
    return room.balance + above_balance * (brings / (brings + room.conductance));
}

}  // namespace ducts
