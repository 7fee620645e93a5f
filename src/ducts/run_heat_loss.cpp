#include "ducts/run_heat_loss.hpp"

#include <cmath>
#include <numbers>

#include "units/unit.hpp"

namespace ducts {

units::Temperature leaving_temperature(const Run& run, units::MassFlow flow,
                                       units::SpecificHeat specific_heat, units::Temperature entering) {
    if (flow <= units::MassFlow(0)) return run.surroundings;  // still air has all the time there is
    const units::HeatLossPerKelvin through_wall = run.perimeter * run.length / run.resistance;
    const double kept = std::exp(-(through_wall / (flow * specific_heat)));
    return run.surroundings + kept * (entering - run.surroundings);
}

// Flat, as a wrap is rated. Around a pipe the heat leaves through a wider face than it enters by: R-6 on a
// 6 in pipe is on its inner face, so that a wrapped pipe loses about a quarter more than this says.
units::Resistance wrapped_resistance(units::Resistance bare, units::Resistance wrap) { return bare + wrap; }

units::Resistance flexible_insulation(units::Resistance rated, units::Length inside) {
    constexpr units::Conductivity wool{0.356 * 0.0254 / units::unit::r_value_us.si()};  // 0.356 in for each R
    const units::Length twice_thickness = 2 * (rated * wool);
    return inside / (2 * wool) * std::log1p(twice_thickness / inside);
}

units::Resistance insulated_resistance(units::Resistance bare, units::Resistance wrap, house::DuctKind kind,
                                       const Section& section) {
    const units::Length round = section.perimeter / std::numbers::pi;  // the diameter, were it round
    const bool is_round = round <= section.hydraulic_diameter * (1 + 1e-9);
    if (kind != house::DuctKind::flex || !is_round) return wrapped_resistance(bare, wrap);
    return bare + flexible_insulation(wrap, section.hydraulic_diameter);
}

}  // namespace ducts
