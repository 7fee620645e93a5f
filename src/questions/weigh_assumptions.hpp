// What every assumption could change: the house is built again with one default at its low or its high, the
// question asked again, and the shifts combined.
//
// The question is asked for figures with the choice fixed, and for the choice itself. Shifts of one default
// at both its ends are kept apart as low and high; those of all defaults are combined as the root of the sum
// of squares (independent guesses). The method's own accuracy is not in it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "house/build.hpp"
#include "questions/verdict.hpp"

namespace questions {

struct Asked {
    std::vector<double> figures;  // always the same, in the same order
    std::string choice;           // what would be chosen now
    // Of a duct led through bays: the size that would be chosen and passes them; empty where none does both.
    std::optional<house::Shape> passing{};
};
// Empty where the house gives no answer.
using Question = std::function<std::optional<Asked>(const house::House&)>;

struct Weight {
    house::Assumption assumption;
    std::optional<Asked> at_low, at_high;  // of the default; empty: no answer there, which is a finding
};

struct Weighed {
    std::vector<Weight> weights;  // in the defaults' order
    std::vector<Range> ranges;    // one for each figure
    bool always_answered = true;
};

// The same of a question that builds its houses itself, each time with other defaults. It may throw
// house::CannotAnswer: no answer.
using QuestionOfDefaults = std::function<std::optional<Asked>(const house::Defaults&)>;
Weighed weigh_assumptions(const std::vector<house::Assumption>& assumptions, const Asked& answer,
                          const QuestionOfDefaults& question);

Weighed weigh_assumptions(const house::Survey& survey, const house::Built& built, house::Stage stage,
                          const Asked& answer, const Question& question);

}  // namespace questions
