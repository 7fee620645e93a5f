#include "questions/weigh_assumptions.hpp"

#include <algorithm>
#include <cmath>

#include "house/cannot_answer.hpp"

namespace questions {
namespace {

std::optional<Asked> ask_with(const house::Defaults& defaults, const QuestionOfDefaults& question) {
    try {
        return question(defaults);
    } catch (const house::CannotAnswer&) {
        return std::nullopt;
    }
}

// How far a figure moves below and above its value between the two ends of one default.
struct Shift {
    double down = 0, up = 0;
};
Shift shift(const Weight& weight, std::size_t figure, double value) {
    Shift s;
    for (const auto& end : {weight.at_low, weight.at_high}) {
        if (!end) continue;
        s.down = std::max(s.down, value - end->figures[figure]);
        s.up = std::max(s.up, end->figures[figure] - value);
    }
    return s;
}

}  // namespace

Weighed weigh_assumptions(const house::Survey& survey, const house::Built& built, house::Stage stage,
                          const Asked& answer, const Question& question) {
    return weigh_assumptions(
        built.assumptions, answer, [&](const house::Defaults& defaults) -> std::optional<Asked> {
            const house::Built again = house::build(survey, defaults, stage, built.extent);
            return again.mistakes.empty() ? question(again.house) : std::nullopt;
        });
}

Weighed weigh_assumptions(const std::vector<house::Assumption>& assumptions, const Asked& answer,
                          const QuestionOfDefaults& question) {
    Weighed weighed;
    for (const house::Assumption& assumption : assumptions) {
        const house::Defaults usual;
        Weight weight{assumption, ask_with(usual.with(assumption.id, house::Level::low), question),
                      ask_with(usual.with(assumption.id, house::Level::high), question)};
        weighed.always_answered = weighed.always_answered && weight.at_low && weight.at_high;
        weighed.weights.push_back(std::move(weight));
    }
    for (std::size_t i = 0; i < answer.figures.size(); ++i) {
        double down = 0, up = 0;
        for (const Weight& weight : weighed.weights) {
            const Shift s = shift(weight, i, answer.figures[i]);
            down += s.down * s.down;
            up += s.up * s.up;
        }
        weighed.ranges.push_back(
            {answer.figures[i] - std::sqrt(down), answer.figures[i], answer.figures[i] + std::sqrt(up)});
    }
    return weighed;
}

}  // namespace questions
