#include "ducts/fittings.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "units/nearest_word.hpp"

namespace ducts {
namespace {

const Fitting* find(std::string_view name) {
    const auto all = fittings();
    const auto found =
        std::find_if(all.begin(), all.end(), [name](const Fitting& row) { return row.name == name; });
    return found == all.end() ? nullptr : &*found;
}

std::string quoted(std::string_view name) { return "'" + std::string(name) + "'"; }

std::string listed(const std::vector<std::string>& names) {
    std::string list;
    for (const auto& name : names) list += (list.empty() ? "" : ", ") + quoted(name);
    return list;
}

house::Mistake unknown(const house::CatalogueName& name) {
    std::vector<std::string_view> known;
    for (const auto& row : fittings()) known.push_back(row.name);
    house::Mistake mistake;
    mistake.text = "unknown fitting " + quoted(name.text);
    const std::string nearest = units::nearest_word(name.text, known);
    if (!nearest.empty()) mistake.under = "did you mean " + quoted(nearest) + "?";
    mistake.remedy = "the nearest fittings are " + listed(units::nearest_words(name.text, known, 3));
    mistake.place = name.place;
    return mistake;
}

// The branch pays for the trunk's velocity as well as its own, but for the part of it that it takes along:
// a right angle takes none. In velocities rather than their ratio, so that it holds down to no flow.
units::Pressure takeoff_loss(const Fitting& fitting, units::Velocity branch, units::Velocity trunk,
                             const loads::Air& air) {
    const double taken_along = std::cos(fitting.angle_degrees * std::numbers::pi / 180);
    return velocity_pressure(trunk, air) + velocity_pressure(branch, air) -
           taken_along * (air.density * trunk * branch);
}

}  // namespace

std::variant<const Fitting*, house::Mistake> look_up_fitting(const house::CatalogueName& name) {
    const Fitting* found = find(name.text);
    if (found == nullptr) return unknown(name);
    return found;
}

const Fitting& counted_turn(bool square) { return *find(square ? "square turn" : "rounded turn"); }

units::Pressure fitting_loss(const Fitting& fitting, units::Velocity in_duct, units::Velocity in_trunk,
                             const loads::Air& air) {
    const bool off_a_trunk = fitting.law == LossLaw::takeoff && in_trunk > units::Velocity(0);
    if (off_a_trunk) return takeoff_loss(fitting, in_duct, in_trunk, air);
    return fitting.coefficient * velocity_pressure(in_duct, air);
}

units::Pressure velocity_pressure(units::Velocity velocity, const loads::Air& air) {
    return 0.5 * (air.density * velocity * velocity);
}

}  // namespace ducts
