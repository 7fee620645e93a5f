// Sums that close: printed with as many digits as it takes for the printed figures to give the printed
// result.
#pragma once

#include <functional>
#include <string>

#include "report/worked.hpp"

namespace report {

// "1,570 / (0.62 x 0.98 x (120 - 74)) = 52 cfm". `sum` makes the sum with `more` digits than usual (0, 1, 2
// ...); `result` writes a value as the answer prints it. The first sum that closes is taken; the one with
// most digits where none does.
std::string closing_sum(const std::function<Worked(int more)>& sum,
                        const std::function<std::string(double value)>& result);

}  // namespace report
