#include "questions/wrap_branch.hpp"

#include "ducts/airflow_that_holds.hpp"
#include "ducts/run_heat_loss.hpp"

namespace questions {
namespace {

// In heated rooms what a run loses is not lost.
bool is_bare_in_the_cold(const house::House& house, const ducts::SystemSection& section) {
    if (section.duct < 0) return false;
    const house::Duct& duct = house.ducts[static_cast<std::size_t>(section.duct)];
    return duct.state == house::State::added && duct.wrap.si() <= 0 &&
           section.surroundings < house.site.winter_indoor;
}

std::optional<OnItsWay> on_its_way(const BranchSetting& setting, const ducts::HeatWay& way) {
    const auto holding = ducts::airflow_that_holds(way, setting.supply, setting.asked);
    if (!holding || holding->flow <= units::MassFlow()) return std::nullopt;
    return OnItsWay{
        holding->arrival, holding->airflow,
        holding->flow * setting.supply.specific_heat * (setting.supply.temperature - holding->arrival)};
}

}  // namespace

std::optional<WrapEffect> wrap_effect(const house::House& house, const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    ducts::DuctSystem system = setting.system;
    if (sizing.to_size) ducts::give_shape(system, sizing.choice().pipe);
    const auto before = on_its_way(setting, ducts::heat_way(system.supply, setting.way));
    bool any = false;
    for (int at : setting.way) {
        ducts::SystemSection& section = system.supply[static_cast<std::size_t>(at)];
        if (!is_bare_in_the_cold(house, section)) continue;
        section.resistance =
            ducts::insulated_resistance(section.bare, stock_wrap, section.kind, section.section);
        any = true;
    }
    if (!any || !before) return std::nullopt;
    const auto after = on_its_way(setting, ducts::heat_way(system.supply, setting.way));
    if (!after) return std::nullopt;
    return WrapEffect{*before, *after};
}

}  // namespace questions
