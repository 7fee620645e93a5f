// From the plenum to the room: arrival along the way, the airflow needed, and the temperature reached.
#include <fmt/format.h>

#include "ducts/run_heat_loss.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method airflow_method{"air a load needs",
                                       "load / (on-time x density x specific heat x (arrival - room))",
                                       loads::need_method.source};
constexpr loads::Method brings_method{"heat brought for each degree",
                                      "on-time x airflow x density x specific heat", "energy balance"};
constexpr loads::Method reached_method{
    "temperature a room reaches",
    "balance + (arrival - balance) x brought / (brought + lost for each degree)",
    "energy balance of the room"};

// One piece of duct on the way: what enters, at what flow.
struct Passage {
    const ducts::Run& run;
    units::MassFlow flow;
    units::Temperature entering;
};

Worked passage_sum(const Passage& p, const ducts::Supply& supply, System system) {
    const Worked around = in_sum(p.run.surroundings, system);
    const Worked exponent =
        in_sum(p.run.perimeter, system) * in_sum(p.run.length, system) /
        (in_sum(p.run.resistance, system) * in_sum(p.flow, system) * in_sum(supply.specific_heat, system));
    return around + (in_sum(p.entering, system) - around) * exp(-exponent);
}

// The air's temperature on its way, one step for each piece of duct.
class Way {
  public:
    Way(std::vector<Step>& steps, const questions::BranchSizing& sizing, System system)
        : steps_(steps), sizing_(sizing), system_(system), at_(sizing.setting.supply.temperature) {}

    // The trunk is shared: its flows are those of the plan, whatever the branch gives. `told`: as steps.
    void along_the_trunk(bool told) {
        for (std::size_t i = 0; i < sizing_.way.shared.size(); ++i)
            pass(sizing_.way.shared[i], sizing_.way.shared_flows[i],
                 told ? fmt::format("supply air after piece {} of the shared trunk", i + 1) : std::string());
    }
    void along_the_branch(units::MassFlow flow) {
        for (std::size_t i = 0; i < sizing_.way.own.size(); ++i)
            pass(sizing_.way.own[i], flow, fmt::format("supply air after piece {} of the branch", i + 1));
    }

  private:
    void pass(const ducts::Run& run, units::MassFlow flow, const std::string& what) {
        const ducts::Supply& supply = sizing_.setting.supply;
        const units::Temperature out = ducts::leaving_temperature(run, flow, supply.specific_heat, at_);
        if (!what.empty() && run.length.si() > 0)
            steps_.push_back(step(what, ducts::run_loss_method,
                                  passage_sum({run, flow, at_}, supply, system_), out, system_));
        at_ = out;
    }

    std::vector<Step>& steps_;
    const questions::BranchSizing& sizing_;
    System system_;
    units::Temperature at_;
};

Worked heat_per_airflow_and_degree(units::Density density, const ducts::Supply& supply, System system) {
    const Worked heat = in_sum(density, system) * in_sum(supply.specific_heat, system);
    return system == System::us ? given(60, "60") * heat : heat / given(1000, "1000");
}

units::Density arriving_density(const questions::BranchSizing& sizing) {
    const questions::BranchTrial& choice = sizing.choice();
    const ducts::Supply& supply = sizing.setting.supply;
    return loads::air_at(choice.needs ? choice.needs->arrival : supply.temperature, supply.pressure).density;
}

}  // namespace

void add_need(std::vector<Step>& steps, const questions::BranchAnswer& answer, System system) {
    const questions::BranchSizing& sizing = answer.sizing;
    const auto& needs = sizing.choice().needs;
    if (!needs || needs->flow.si() <= 0) return;
    Way way(steps, sizing, system);
    way.along_the_trunk(true);
    way.along_the_branch(needs->flow);
    const ducts::Supply& supply = sizing.setting.supply;
    const loads::RoomHeatLoss& room = sizing.setting.asked;
    const Worked sum =
        in_sum(room.total, system) /
        (printed(supply.on_time, 4) * heat_per_airflow_and_degree(arriving_density(sizing), supply, system) *
         (in_sum(needs->arrival, system) - in_sum(room.inside, system)));
    steps.push_back(step("supply air the room needs while the heater is on, as it leaves the register",
                         airflow_method, sum, needs->airflow, system));
}

void add_reached(std::vector<Step>& steps, const questions::BranchAnswer& answer, System system) {
    const questions::BranchSizing& sizing = answer.sizing;
    const questions::BranchTrial& choice = sizing.choice();
    const ducts::Supply& supply = sizing.setting.supply;
    const loads::RoomHeatLoss& room = sizing.setting.asked;
    const units::MassFlow flow = choice.gives_mass;
    if (flow.si() <= 0) return;
    const units::Density density = flow / choice.gives;  // as it leaves the register
    Way way(steps, sizing, system);
    way.along_the_trunk(!choice.needs);
    way.along_the_branch(flow);
    const units::HeatLossPerKelvin brings = supply.on_time * (flow * supply.specific_heat);
    const CountingUnit unit = unit_of(brings, system);
    steps.push_back(finished_step("heat the air it gives brings for each degree", brings_method,
                                  printed(supply.on_time, 4) * in_sum(choice.gives, system) *
                                      heat_per_airflow_and_degree(density, supply, system),
                                  count(brings, system),
                                  fmt::format("{} {}", units::decimal(count(brings, system), 1), unit.name)));
    const Worked balance = in_sum(room.balance, system), brought = in_sum(brings, system);
    const Worked sum = balance + (in_sum(choice.arrives, system) - balance) * brought /
                                     (brought + in_sum(room.conductance, system));
    steps.push_back(
        step("temperature the room reaches with that air", reached_method, sum, choice.reaches, system));
}

}  // namespace report
