#include "report/step_building.hpp"

#include <fmt/format.h>

#include <cmath>

namespace report {

Step finished_step(std::string what, const loads::Method& method, const Worked& sum, double result,
                   std::string printed) {
    // Beside the printed digits only the last bits of double arithmetic.
    const double within = sum.within() + 1e-9 * (std::abs(result) + std::abs(sum.exact));
    return {std::move(what),    std::string(method.formula), sum.text, result, within,
            std::move(printed), std::string(method.source)};
}

Step plain_step(std::string what, const loads::Method& method, const Worked& sum, double result, int digits) {
    return finished_step(std::move(what), method, sum, result, units::decimal(result, digits));
}

std::string mass_text(units::MassFlow flow, units::System system) {
    const CountingUnit counted_in = unit_of(flow, system);
    return fmt::format("{} {}",
                       with_commas(units::decimal(count(flow, system), system == units::System::us ? 0 : 4)),
                       counted_in.name);
}

Worked plus_all(const std::vector<Worked>& parts) {
    if (parts.empty()) return given(0, "0");
    Worked sum = parts.front();
    for (std::size_t i = 1; i < parts.size(); ++i) sum = sum + parts[i];
    return sum;
}

}  // namespace report
