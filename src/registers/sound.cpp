#include "registers/sound.hpp"

#include <array>

#include "units/unit.hpp"

namespace registers {
namespace {

using units::unit::foot_per_minute;

struct Bound {
    Sound sound;
    units::Velocity most;
    std::string_view words;
};
constexpr std::array bounds{
    Bound{Sound::quiet, 350 * foot_per_minute, "quiet"},
    Bound{Sound::soft_rush, 425 * foot_per_minute, "a soft rush"},
    Bound{Sound::heard, 575 * foot_per_minute, "heard"},
};
constexpr units::Velocity soft_rush = bounds[1].most;
constexpr double return_faster = 1.2;

}  // namespace

std::string_view in_words(Sound sound) {
    for (const Bound& bound : bounds)
        if (bound.sound == sound) return bound.words;
    return "loud";
}

Sound supply_sound(units::Velocity through_free_area) {
    for (const Bound& bound : bounds)
        if (through_free_area <= bound.most) return bound.sound;
    return Sound::loud;
}

units::Area softly_through(units::Airflow flow) { return flow / soft_rush; }

Sound return_sound(units::Velocity through_free_area) {
    return supply_sound(through_free_area / return_faster);
}

}  // namespace registers
