// What wrapping the new run would save.
#include <fmt/format.h>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

// Less than this is not felt at the register: within the accuracy of a bare duct's loss.
constexpr units::TemperatureDifference hardly{2 / 1.8};

std::string arrives(const questions::OnItsWay& way, units::System system) {
    return fmt::format("arrives at {}", figure(way.arrival, system));
}

}  // namespace

Note wrap_note(const BranchView& view) {
    if (!view.answer.wrap) return {};
    const auto& [bare, wrapped] = *view.answer.wrap;
    const units::System system = view.system;
    const std::string wrap = figure(questions::stock_wrap, system);
    if (wrapped.arrival - bare.arrival < hardly)
        return {"wrap",
                {fmt::format("not for the heat's sake: {} around the new run would bring the air hardly "
                             "warmer ({} less lost on the way while the heater is on)",
                             wrap, figure(bare.lost - wrapped.lost, system))}};
    return {
        "wrap",
        {fmt::format("bare, the air loses {} on its way while the heater is on, and {}; with {} around "
                     "the new run it loses {}, {}, and {} does what takes {} bare",
                     figure(bare.lost, system), arrives(bare, system), wrap, figure(wrapped.lost, system),
                     arrives(wrapped, system), figure(wrapped.needs, system), number(bare.needs, system))}};
}

}  // namespace report
