#include <algorithm>
#include <memory>

#include "ducts/section.hpp"
#include "questions/cooled_system.hpp"
#include "questions/place.hpp"
#include "questions/register_face.hpp"
#include "registers/falling_air.hpp"
#include "registers/falling_sheet.hpp"
#include "registers/outlet_pattern.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

constexpr units::Length usual_sill{3 * units::unit::foot};  // where the sheet gives none; common practice

// The air as it leaves the register.
struct Outflow {
    const BranchTrial& trial;
    RegisterFace chosen;
    units::Temperature room;
    units::Pressure pressure;  // of the site
    units::Area free() const { return chosen.free; }
};

registers::WarmJet jet_of(const Outflow& out, const registers::OutletPattern& pattern) {
    units::Area area = out.free();
    if (pattern.counts == registers::CountedArea::core) area = out.chosen.face.width * out.chosen.face.height;
    if (pattern.counts == registers::CountedArea::neck) area = ducts::section_of(out.trial.pipe).area;
    return {{out.trial.gives, area, pattern.k}, out.trial.arrives - out.room, out.room};
}

// Straight blades or spread ones: the faster jet of those that wash the glass.
void blow_at_glass(const house::Room& room, const registers::Location& location, const FallingAir& falling,
                   const Outflow& out, WarmAirThere& warm) {
    const auto& windows = room.plan->windows;
    const auto window = std::find_if(windows.begin(), windows.end(),
                                     [&](const auto& one) { return one.name == falling.window; });
    const loads::Air room_air = loads::air_at(room.winter_indoor, out.pressure);
    const registers::ColdGlass glass{window->height, room.winter_indoor - falling.glass};
    const registers::FallingSheet sheet = registers::falling_sheet(glass, room.winter_indoor, room_air);
    for (const registers::OutletPattern& pattern : registers::outlet_patterns()) {
        if (pattern.mount != location.mount) continue;
        const registers::WashingJet jet{jet_of(out, pattern), out.chosen.face.width, pattern.spread};
        const registers::AgainstTheSheet now = registers::against_the_sheet(
            jet, {sill_of(*window), window->height, window->width, abs(location.off_centre)}, sheet);
        const auto& best = warm.at_glass;
        const bool better = !best || (now.washes != best->washes ? now.washes : now.jet > best->jet);
        if (!better) continue;
        warm.at_glass = now;
        warm.washing = jet;
        warm.blades = pattern.name;
    }
}

// From the wall a register is in to the one it blows at; of one in the ceiling half the way across.
units::Length run_across(const house::Plan& plan, const registers::Location& location) {
    if (!location.wall) return 0.5 * std::max(plan.width, plan.depth);
    const bool across_north =
        *location.wall == house::WallSide::south || *location.wall == house::WallSide::north;
    return across_north ? plan.depth : plan.width;
}

// The register is the one chosen for winter's need.
CooledPlace cooled_place(HouseAtWork whole, int outlet, const house::Room& room,
                         const registers::Location& location, const Outflow& warm) {
    const house::Summer& summer = *whole.house.summer;
    const auto& needs = warm.trial.needs;
    if (needs) whole.machine.design.outlets[static_cast<std::size_t>(outlet)] = needs->flow;
    CooledPlace cooled;
    cooled.gives = cooled_system(whole, warm.trial.pipe).of(outlet);
    const registers::OutletPattern& usual = registers::usual_pattern(location.mount);
    registers::WarmJet jet = jet_of(warm, usual);
    jet.jet.flow = cooled.gives;
    jet.room = summer.indoor;
    jet.warmer = summer.supply - summer.indoor;
    cooled.air = registers::cooled_air(jet, usual, room.ceiling);
    return cooled;
}

// The back of a stack and its boot, from the floor to the register's upper edge; common practice.
units::Area back_of(const Outflow& out) { return out.chosen.face.width * (1 * units::unit::foot); }

WarmAirThere warm_air(const house::Room& room, const registers::Location& location, const Outflow& out) {
    const registers::OutletPattern& usual = registers::usual_pattern(location.mount);
    const registers::WarmJet jet = jet_of(out, usual);
    WarmAirThere there;
    there.throw_length = registers::throw_of(jet.jet);
    if (location.mount == house::Mount::ceiling || location.mount == house::Mount::high_wall)
        there.from_high_up =
            registers::from_high_up({jet, usual.blows, room.ceiling, run_across(*room.plan, location)});
    else if (usual.blows == registers::Blows::across)
        there.rise = std::min(room.ceiling, registers::rise(jet, there.throw_length));
    return there;
}

bool is_wet(house::FixtureKind kind) {
    return kind == house::FixtureKind::tub || kind == house::FixtureKind::shower ||
           kind == house::FixtureKind::toilet;
}

void measure_to_water(const house::Plan& plan, PlaceFigures& figures, const registers::Location& location) {
    for (const house::Fixture& fixture : plan.fixtures) {
        if (!is_wet(fixture.kind)) continue;
        const units::Length there = registers::distance(location.face, fixture.box);
        if (figures.from_water && *figures.from_water <= there) continue;
        figures.from_water = there;
        figures.water = fixture.name;
    }
}

int turns_of(const house::Duct& duct) {
    return static_cast<int>(
        std::count_if(duct.fittings.begin(), duct.fittings.end(), [](const house::CatalogueName& fitting) {
            return fitting.text.find("elbow") != std::string::npos ||
                   fitting.text.find("turn") != std::string::npos;
        }));
}

void measure_run(const house::House& house, house::DuctId last, PlaceFigures& figures) {
    for (const house::Duct* duct = house.duct(last); duct && duct->state == house::State::added;
         duct = duct->from ? house.duct(*duct->from) : nullptr) {
        figures.run += duct->length;
        figures.turns += turns_of(*duct);
    }
}

}  // namespace

units::Length sill_of(const house::PlanWindow& window) { return window.sill.value_or(usual_sill); }

PlaceFigures place_figures(const RunToRoom& run, const registers::Location& location,
                           const std::vector<FallingAir>& falling) {
    const auto whole = std::make_shared<const HouseAtWork>(
        HouseAtWork{led_to(run, location), run.planned.loss, run.planned.machine});
    const house::House& house = whole->house;
    const house::Outlet& outlet = house.outlets[static_cast<std::size_t>(run.outlet)];
    const house::Room& room = house.room(outlet.room);
    const BranchSetting setting = branch_setting(house, outlet.id, ducts::Stock::us, whole);
    PlaceFigures figures;
    figures.trial =
        try_size(house, setting, run.to_size ? std::optional<house::Shape>(run.size) : std::nullopt);
    measure_run(house, outlet.duct, figures);
    figures.led = house.duct(outlet.duct)->length;
    const ducts::Supply& supply = setting.supply;
    figures.lost_on_the_way =
        figures.trial.gives_mass * supply.specific_heat * (supply.temperature - figures.trial.arrives);
    const house::Outlet& as_planned = run.planned.house.outlets[static_cast<std::size_t>(run.outlet)];
    const Outflow out{
        figures.trial,
        register_face(as_planned, location.mount, run_end(house, outlet, figures.trial), run.longest),
        room.winter_indoor, supply.pressure};
    figures.face_speed = figures.trial.gives / out.free();
    figures.sound = registers::supply_sound(figures.face_speed);
    figures.warm = warm_air(room, location, out);
    if (house.summer) figures.cooled = cooled_place(*whole, run.outlet, room, location, out);
    if (const auto outside = outside_of(room, location))
        figures.in_cold_wall = registers::stack_in_wall(
            {*outside, back_of(out), room.winter_indoor, house.site.winter_outdoor, figures.trial.arrives});
    const FallingAir* most = felt_most(falling);
    const bool at_it =
        location.where == registers::Where::under_window || location.where == registers::Where::beside_window;
    if (at_it && most && most->window == location.name) {
        blow_at_glass(room, location, *most, out, figures.warm);
        figures.washes = figures.warm.at_glass->washes;
        figures.surely_washes =
            figures.washes && figures.warm.at_glass->jet >=
                                  (1 + registers::against_the_sheet_accuracy) * figures.warm.at_glass->sheet;
    }
    measure_to_water(*room.plan, figures, location);
    return figures;
}

}  // namespace questions
