#include "ducts/run_heat_loss.hpp"

#include <cmath>

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

}  // namespace ducts
