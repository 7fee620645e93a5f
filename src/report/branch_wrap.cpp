// What wrapping the new run would save.
#include <fmt/format.h>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

std::string arrives(const questions::OnItsWay& way, units::System system) {
    return fmt::format("arrives at {}", figure(way.arrival, system));
}

}  // namespace

Note wrap_note(const BranchView& view) {
    if (!view.answer.wrap) return {};
    const auto& [bare, wrapped] = *view.answer.wrap;
    const units::System system = view.system;
    const std::string wrap = figure(questions::stock_wrap, system);
    if (wrapped.arrival - bare.arrival < questions::hardly_warmer)
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

// In summer: whether the new run sweats.
std::string sweat_sentence(const BranchView& view) {
    const questions::BranchInSummer& summer = *view.answer.in_summer;
    const units::System system = view.system;
    const std::string duct = "the " + view.answer.house.ducts[static_cast<std::size_t>(summer.duct)].name;
    const std::string space = "the " + std::string(house::word(summer.space));
    const std::string air = fmt::format("in {} ({}, water beads on what is below {})", space,
                                        figure(summer.around, system), figure(summer.dew_point, system));
    if (!summer.sweats())
        return fmt::format("{} stays dry outside {}: its outside is at {}", duct, air,
                           figure(summer.outside, system));
    const std::string outside =
        fmt::format("{} sweats {}: its outside is at {}", duct, air, figure(summer.outside, system));
    if (!summer.needed) return outside + ", and no insulation keeps it dry";
    return fmt::format("{}; {} or more around it, with a sealed vapour barrier outside, keeps it dry",
                       outside, figure(*summer.needed, system));
}

}  // namespace report
