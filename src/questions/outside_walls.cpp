#include <algorithm>

#include "questions/place.hpp"

namespace questions {
namespace {

bool is_in_an_outside_wall(const registers::Location& location) {
    return location.wall && location.where == registers::Where::outside_wall &&
           (location.mount == house::Mount::low_wall || location.mount == house::Mount::high_wall);
}

}  // namespace

std::optional<loads::OutsideTheBay> outside_of(const house::Room& room, const registers::Location& location) {
    if (!is_in_an_outside_wall(location)) return std::nullopt;
    const std::string name = std::string(house::word(*location.wall)) + " wall";
    const auto wall = std::find_if(room.surfaces.begin(), room.surfaces.end(), [&](const house::Surface& s) {
        return s.kind == house::SurfaceKind::wall && s.name == name;
    });
    std::optional<loads::OutsideTheBay> outside;
    if (wall != room.surfaces.end()) outside = loads::outside_the_bay(*wall);
    if (!outside) outside = loads::usual_outside_the_bay();
    const units::Length studs = room.plan->wall(*location.wall).stud_depth;
    if (studs.si() > 0) outside->bay = studs;
    return outside;
}

void stop_in_shallow_walls(const house::Room& room, std::vector<registers::Location>& locations) {
    for (registers::Location& location : locations)
        if (const auto outside = outside_of(room, location);
            outside && !location.stopped && !registers::holds_a_stack(*outside))
            location.stopped = registers::Stopped{registers::Stop::shallow_wall, {}, 0};
}

}  // namespace questions
