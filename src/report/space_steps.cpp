// The unheated spaces that have a heat balance of their own.
#include "report/step_building.hpp"

namespace report {

void add_spaces(std::vector<Step>& steps, const RoomWork& work) {
    const units::System system = work.system;
    for (const loads::SpaceBalance& balance : work.loss.spaces.balances) {
        if (balance.parts.empty()) continue;
        std::vector<Worked> flows, conductances;
        for (const loads::BalancePart& part : balance.parts) {
            conductances.push_back(in_sum(part.conductance, system));
            flows.push_back(conductances.back() * in_sum(part.beyond, system));
        }
        if (balance.heat.si() > 0) flows.push_back(in_sum(balance.heat, system));
        steps.push_back(step("the " + std::string(house::word(balance.space)) + ", its temperature",
                             loads::buffer_space_method, plus_all(flows) / plus_all(conductances),
                             balance.temperature, system));
    }
}

}  // namespace report
