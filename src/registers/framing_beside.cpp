#include "registers/framing_beside.hpp"

#include "registers/floor_space.hpp"

namespace registers {
namespace {

// Members in their order, and the stretch that lies between two of them.
FramingBeside beside(const std::vector<house::Member>& members, units::Length from, units::Length to) {
    const units::Length middle = 0.5 * (from + to);
    FramingBeside found;
    for (const house::Member& member : members) {
        const bool lies_before = 0.5 * (member.from + member.to) < middle;
        if (lies_before) found.before = member.number;
        if (!lies_before && found.after == 0) found.after = member.number;
    }
    return found;
}

}  // namespace

std::optional<FramingBeside> framing_beside(const house::Plan& plan, const Location& location) {
    const house::Box& face = location.face;
    const bool in_floor = location.mount == house::Mount::floor;
    const bool in_wall =
        location.mount == house::Mount::low_wall || location.mount == house::Mount::high_wall;
    if (in_floor && plan.floor && !plan.floor->joists.empty())
        return plan.floor->run == house::JoistsRun::north_south
                   ? beside(plan.floor->joists, face.west, face.east)
                   : beside(plan.floor->joists, face.south, face.north);
    if (!in_wall || !location.wall || plan.wall(*location.wall).studs.empty()) return std::nullopt;
    const auto& studs = plan.wall(*location.wall).studs;
    FramingBeside found = runs_east(*location.wall) ? beside(studs, face.west, face.east)
                                                    : beside(studs, face.south, face.north);
    found.studs = true;
    return found;
}

}  // namespace registers
