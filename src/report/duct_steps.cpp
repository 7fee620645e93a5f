// The friction rate, and the proof that the pipe carries its airflow at it.
#include <fmt/format.h>

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/section.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method available_method{"available static pressure",
                                         "external static pressure - devices - register - grille",
                                         "trade-association procedure, common practice"};
constexpr loads::Method equivalent_method{
    "equivalent length", "loss of the fittings / friction per length of their duct",
    "trade-association procedure, common practice; each fitting's coefficient in the table of fittings"};
constexpr loads::Method path_method{"effective length of a path",
                                    "each piece's length + its fittings as pipe",
                                    "trade-association procedure, common practice"};
constexpr loads::Method speed_method{"speed", "airflow / area", "definition"};
constexpr loads::Method reynolds_method{"Reynolds number", "density x speed x diameter / viscosity",
                                        "definition"};
constexpr loads::Method colebrook_method{
    "friction factor", "1 / sqrt(f) = -2 log10(roughness / (3.7 diameter) + 2.51 / (Re sqrt(f)))",
    "Colebrook 1939"};
constexpr loads::Method laminar_method{"friction factor", "64 / Re", "laminar flow, Hagen-Poiseuille"};

std::string feet_or_metres(units::Length length, System system) {
    return fmt::format("{} {}", units::decimal(count(length, system), system == System::us ? 0 : 1),
                       unit_of(length, system).name);
}

// What the fittings of each piece lose, as length of pipe at the piece's own friction.
void add_equivalents(std::vector<Step>& steps, const house::House& house, const ducts::Path& path,
                     System system) {
    for (const ducts::PathPiece& piece : path.pieces) {
        if (piece.equivalent.si() <= 0) continue;
        const std::string whose = piece.duct < 0
                                      ? "the run to rooms not described"
                                      : "the " + house.ducts[static_cast<std::size_t>(piece.duct)].name;
        const Worked length = in_sum(piece.fittings, system) / in_sum(piece.counted_at, system);
        steps.push_back(finished_step("fittings of " + whose + " as pipe", equivalent_method,
                                      system == System::us ? length * given(100, "100") : length,
                                      count(piece.equivalent, system),
                                      feet_or_metres(piece.equivalent, system)));
    }
}

void add_path(std::vector<Step>& steps, const std::string& what, const ducts::Path& path, System system) {
    std::vector<Worked> parts;
    for (const ducts::PathPiece& piece : path.pieces)
        for (const units::Length part : {piece.length, piece.equivalent})
            if (part.si() > 0) parts.push_back(printed(count(part, system), 2));
    steps.push_back(finished_step(what, path_method, plus_all(parts), count(path.total(), system),
                                  feet_or_metres(path.total(), system)));
}

// A duct with its airflow, as friction sees it.
struct Flowing {
    ducts::Section section;
    loads::Air air;
    units::Airflow airflow;
    double re = 0, f = 0;
    units::Velocity speed() const { return airflow / section.area; }
};

Flowing flowing(const house::Duct& duct, const house::Shape& shape, units::Airflow airflow,
                const loads::Air& air) {
    Flowing flow;
    flow.section = ducts::section_of(shape, duct.kind, duct.stretch);
    flow.air = air;
    flow.airflow = airflow;
    flow.re = ducts::reynolds(flow.section, flow.airflow, flow.air);
    flow.f = ducts::friction_factor(flow.re, flow.section.roughness / flow.section.hydraulic_diameter);
    return flow;
}

// The chosen pipe with what it gives.
Flowing chosen(const questions::BranchAnswer& answer) {
    const questions::BranchTrial& choice = answer.sizing.choice();
    const ducts::Supply& supply = answer.sizing.setting.supply;
    return flowing(*answer.house.duct(answer.outlet.duct), choice.pipe, choice.gives,
                   loads::air_at(choice.needs ? choice.needs->arrival : supply.temperature, supply.pressure));
}

Worked speed_of(const Flowing& flow, System system) {
    const Worked airflow = in_sum(flow.airflow, system);
    return (system == System::us ? airflow : airflow / given(1000, "1000")) /
           in_sum(flow.section.area, system);
}

void add_friction_factor(std::vector<Step>& steps, const Flowing& flow, System system) {
    const units::Length D = flow.section.hydraulic_diameter;
    const Worked speed = in_sum(flow.speed(), system);
    const Worked per_viscosity = system == System::us ? given(60, "60") * speed : speed;
    steps.push_back(plain_step("Reynolds number in it", reynolds_method,
                               in_sum(flow.air.density, system) * per_viscosity * in_sum(D, system) /
                                   in_sum(flow.air.viscosity, system),
                               flow.re, 0));
    const Worked re = printed(flow.re, 0);
    if (flow.re <= 2000) {
        steps.push_back(plain_step("friction factor f", laminar_method, given(64, "64") / re, flow.f, 4));
    } else if (flow.re >= 4000) {
        const Worked rough = in_sum(flow.section.roughness, system) / (given(3.7, "3.7") * in_sum(D, system));
        const Worked smooth = given(2.51, "2.51") / (re * sqrt(printed_to(flow.f, 5)));
        const double x = 1 / std::sqrt(flow.f);
        steps.push_back(
            finished_step("friction factor f: its equation checked, both sides", colebrook_method,
                          given(-2, "-2") * log10(rough + smooth), x,
                          fmt::format("{} = 1 / sqrt({})", units::decimal(x, 3), units::decimal(flow.f, 5))));
    }
}

// In us from pounds and feet: 2 x 32.174 turns density and speed into a pressure, 5.20233 lb/ft2 are 1 in.wc.
Worked darcy_weisbach(const Flowing& flow, System system) {
    const Worked plain_f_over_D = printed_to(flow.f, 5) / in_sum(flow.section.hydraulic_diameter, system);
    const Worked density = in_sum(flow.air.density, system), speed = in_sum(flow.speed(), system);
    const bool taut = flow.section.compression <= 1;
    const Worked f_over_D = taut ? plain_f_over_D : printed_to(flow.section.compression, 5) * plain_f_over_D;
    if (system == System::si) return f_over_D * density * squared(speed) / given(2, "2");
    return f_over_D * density * squared(speed / given(60, "60")) /
           (given(2, "2") * given(9.80665 / 0.3048, "32.174049") *
            given(249.08891 / 47.88025898033584, "5.2023300")) *
           given(100, "100");
}

}  // namespace

void add_friction_rate(std::vector<Step>& steps, const questions::BranchAnswer& answer, System system) {
    const ducts::FrictionRateBudget& budget = answer.sizing.budget;
    Worked left = in_sum(budget.external_static, system);
    std::string taken;
    for (const ducts::PressureLoss& part : budget.taken) {
        left = left - in_sum(part.loss, system);
        taken += (taken.empty() ? "less " : ", ") + part.name;
    }
    steps.push_back(step("available static pressure: the blower's, " + taken, available_method, left,
                         budget.available, system));
    add_equivalents(steps, answer.house, budget.supply, system);
    add_equivalents(steps, answer.house, budget.return_side, system);
    add_path(steps, "effective length of the longest supply path", budget.supply, system);
    add_path(steps, "effective length of the longest return path", budget.return_side, system);
    steps.push_back(finished_step("total effective length", sum_method,
                                  printed(count(budget.supply.total(), system), 2) +
                                      printed(count(budget.return_side.total(), system), 2),
                                  count(budget.total_effective_length, system),
                                  feet_or_metres(budget.total_effective_length, system)));
    if (budget.rate.si() <= 0) return;
    const Worked rate = in_sum(budget.available, system) / in_sum(budget.total_effective_length, system);
    steps.push_back(step("friction rate", ducts::friction_rate_method,
                         system == System::us ? rate * given(100, "100") : rate, budget.rate, system));
}

void add_carried(std::vector<Step>& steps, const questions::BranchAnswer& answer, System system) {
    if (answer.sizing.choice().gives.si() <= 0) return;
    const Flowing flow = chosen(answer);
    const std::string pipe = duct_words(answer.sizing.choice().pipe, system);
    steps.push_back(step("speed of the air the " + pipe + " gives", speed_method, speed_of(flow, system),
                         flow.speed(), system));
    add_friction_factor(steps, flow, system);
    steps.push_back(step("pressure lost by that air along the " + pipe, ducts::friction_method,
                         darcy_weisbach(flow, system), ducts::friction(flow.section, flow.airflow, flow.air),
                         system));
}

void add_judged(std::vector<Step>& steps, const questions::BranchAnswer& answer, System system) {
    const questions::BranchSetting& setting = answer.sizing.setting;
    for (const ducts::JudgedDuct& judged : answer.judged) {
        if (judged.size() != ducts::Size::too_small) continue;
        const house::Duct& duct = answer.house.ducts[static_cast<std::size_t>(judged.duct)];
        const loads::Air& air =
            duct.side == house::DuctSide::supply ? setting.supply_air : setting.return_air;
        const Flowing flow = flowing(duct, *duct.shape, judged.flow / air.density, air);
        if (judged.too_fast)
            steps.push_back(step("speed in the " + duct.name, speed_method, speed_of(flow, system),
                                 judged.velocity, system));
        if (!judged.loses_too_much) continue;
        add_friction_factor(steps, flow, system);
        const Worked friction = darcy_weisbach(flow, system);
        steps.push_back(step("pressure lost along the " + duct.name, ducts::friction_method,
                             duct.loss_factor == 1 ? friction : printed_to(duct.loss_factor, 4) * friction,
                             judged.friction, system));
    }
}

}  // namespace report
