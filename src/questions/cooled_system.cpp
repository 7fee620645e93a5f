#include "questions/cooled_system.hpp"

namespace questions {

CooledSystem cooled_system(const HouseAtWork& at, const std::optional<house::Shape>& size) {
    const house::Summer& summer = *at.house.summer;
    network::Machine machine = at.machine;
    machine.returns = summer.indoor;
    const loads::Air return_air = loads::air_at(machine.returns, machine.pressure);
    if (summer.airflow.si() > 0) {
        const units::MassFlow flow = summer.airflow * return_air.density;
        machine.blower = network::HeldAirflow{flow, {}};
        machine.design_flow = flow;
    }
    machine.output = machine.design_flow * return_air.specific_heat * (summer.supply - summer.indoor);
    return {network::operating_point(at.house, network::planned_ducts(at.house, at.machine, size), machine),
            loads::air_at(summer.supply, machine.pressure).density};
}

}  // namespace questions
