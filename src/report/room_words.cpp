#include "report/room_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"

namespace report {
namespace {

struct Neighbours {
    std::string temperature;
    std::vector<std::string> names;
    units::Power loss;
};

void add_neighbour(std::vector<Neighbours>& all, const loads::SurfaceLoss& surface, units::System system) {
    const std::string temperature = figure(surface.beyond, system);
    auto at = std::find_if(all.begin(), all.end(),
                           [&](const Neighbours& n) { return n.temperature == temperature; });
    if (at == all.end()) at = all.insert(all.end(), Neighbours{temperature, {}, {}});
    if (std::find(at->names.begin(), at->names.end(), surface.beyond_name) == at->names.end())
        at->names.push_back(surface.beyond_name);
    at->loss += surface.loss;
}

// A slab loses by the length of its edge, not by its area.
std::string with_its_edge(const loads::SurfaceLoss& surface, units::System system) {
    if (!surface.on_slab) return surface.surface;
    return surface.surface + " by " + figure(surface.edge, system) + " of slab edge";
}

}  // namespace

bool prints_as_nothing(units::Power loss, units::System system) {
    return units::write(abs(loss), system).number == "0";
}

std::vector<LossPart> loss_parts(const house::House& house, const loads::RoomHeatLoss& room,
                                 units::System system) {
    std::vector<LossPart> parts{{outdoor_air_words(house), room.leakage_loss}};
    std::vector<Neighbours> neighbours;
    for (const loads::SurfaceLoss& surface : room.surfaces) {
        if (surface.to_neighbour)
            add_neighbour(neighbours, surface, system);
        else
            parts.push_back({with_its_edge(surface, system), surface.loss});
    }
    for (const Neighbours& n : neighbours) {
        const char* way = n.loss.si() < 0 ? "from the " : "to the ";
        parts.push_back({way + n.temperature + " " + listed(n.names), n.loss});
    }
    std::erase_if(parts, [&](const LossPart& part) { return prints_as_nothing(part.loss, system); });
    std::stable_sort(parts.begin(), parts.end(),
                     [](const LossPart& a, const LossPart& b) { return a.loss > b.loss; });
    return parts;
}

units::Power out_of_the_house(const loads::RoomHeatLoss& room) {
    units::Power loss = room.leakage_loss;
    for (const loads::SurfaceLoss& surface : room.surfaces)
        if (!surface.to_neighbour) loss += surface.loss;
    return loss;
}

std::string rooms_forgotten(const house::House& house) {
    return fmt::format(
        "the sheet says {} storeys, but describes no room on one of them and has no "
        "[other_rooms]: the rooms described are taken for the whole house, and the heater is "
        "judged by them alone",
        house.storeys);
}

std::string outdoor_air_words(const house::House& house) {
    return house.ventilation.runs() ? "air leakage and ventilation" : "air leakage";
}

std::string the_room(const house::House& house, house::RoomId room) { return "the " + house.room(room).name; }

}  // namespace report
