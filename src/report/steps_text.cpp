#include <fmt/format.h>

#include "report/figures.hpp"
#include "report/ink.hpp"
#include "report/steps.hpp"
#include "report/wrap.hpp"

namespace report {

std::string steps_text(const std::vector<Step>& steps, Paper paper) {
    constexpr std::size_t indent = 4;
    const int width = width_of(paper);
    std::string drawn = "\n" + bold("The work, step by step", paper) + "\n";
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const Step& step = steps[i];
        drawn += wrapped({filled_to(fmt::format("{:>2}", i + 1), indent), indent},
                         step.what + ": " + step.formula, width);
        drawn += wrapped({spaces(indent), indent + 2}, step.numbers + " = " + step.printed, width);
        drawn += wrapped({spaces(indent), indent + 2}, "source: " + step.source, width);
    }
    return with_plain_spaces(std::move(drawn));
}

}  // namespace report
