// What was assumed, in words: the default, its value with low and high, and what it does to the answer.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "house/build.hpp"
#include "questions/weigh_assumptions.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

// "62 F (52 to 70)": as the row wants it written.
std::string default_text(const house::DefaultRow& row, units::System system);

// What a default does to the answer: in words, empty where it hardly matters; and by how much of the figures.
struct Effect {
    std::vector<std::string> words;
    double size = 0;
};
using EffectOf = std::function<Effect(const questions::Weight&)>;

// The five defaults that matter most, one a line, and how many more there are; with `all` every one.
Note assumed_note(const questions::Weighed& weighed, const EffectOf& effect_of, units::System system,
                  bool all);

// A figure at both ends of a default, where it moves by more than 2 % of `value`.
std::optional<questions::Range> moved(const questions::Weight& weight, std::size_t figure, double value);

}  // namespace report
