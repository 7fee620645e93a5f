// The windows whose cold air falls into the room: how cold, when they sweat, what one feels of it.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/place_parts.hpp"

namespace report {
namespace {

using questions::FallingAir;

std::string sweats_words(const FallingAir& falling) {
    if (falling.sweats_above >= 1) return "it does not sweat";
    return fmt::format("it sweats when the room's air is above {} of relative humidity",
                       percent(falling.sweats_above));
}

std::string as_tested(const FallingAir& falling) {
    return falling.tested ? "" : " (outside of what that share was tested in)";
}

std::string window_words(const PlaceView& view, const FallingAir& falling) {
    const units::System system = view.system;
    if (falling.speed <= units::Velocity())
        return fmt::format("{} inside, {}; no air falls off it", figure(falling.glass, system),
                           sweats_words(falling));
    const std::string where = falling.at.empty() ? std::string() : ", where the " + falling.at + " is";
    std::string elsewhere;
    if (falling.dissatisfied_near && falling.dissatisfied_far)
        elsewhere =
            fmt::format("; nobody is known to stand anywhere: {} at {}, {} at {}",
                        percent(*falling.dissatisfied_near), to_the_inch(questions::stands_near, system),
                        percent(*falling.dissatisfied_far), to_the_inch(questions::stands_far, system));
    return fmt::format(
        "{} inside, {}; its air flows over the floor at {} and {}, {} from the glass{}; {} of people feel "
        "that{}{}",
        figure(falling.glass, system), sweats_words(falling), figure(falling.speed, system),
        figure(falling.air, system), to_the_inch(falling.distance, system), where,
        percent(falling.dissatisfied), as_tested(falling), elsewhere);
}

const FallingAir* of_window(const std::vector<FallingAir>& all, const std::string& window) {
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const FallingAir& f) { return f.window == window; });
    return at == all.end() ? nullptr : &*at;
}

}  // namespace

Note glass_note(const PlaceView& view) {
    Note note{"the glass", {}};
    for (const FallingAir& planned : view.answer.falling) {
        const std::string words = window_words(view, planned);
        note.lines.push_back(fmt::format("{}: {}", planned.window, words));
        const FallingAir* found = of_window(view.answer.falling_before, planned.window);
        const std::string before = found ? window_words(view, *found) : std::string();
        if (found && before != words)
            note.lines.push_back(fmt::format("{} as it is now: {}", planned.window, before));
    }
    for (const FallingAir& found : view.answer.falling_before)
        if (!of_window(view.answer.falling, found.window))
            note.lines.push_back(
                fmt::format("{} as it is now, and no longer: {}", found.window, window_words(view, found)));
    return note;
}

}  // namespace report
