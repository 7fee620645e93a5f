// What of the house the wind and the cold can reach: see loads/infiltration.hpp.
#include <algorithm>
#include <cmath>

#include "loads/infiltration.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

bool lets_air_in(const house::Surface& surface) {
    const auto* space = std::get_if<house::Space>(&surface.beyond);
    return space && !surface.slab && *space != house::Space::heated_rooms &&
           *space != house::Space::basement && *space != house::Space::ground;
}

// Share of the described ground floor under which air moves; 0 where no room of the first storey is
// described.
double exposed_floor_share(const house::House& house) {
    units::Area floors, exposed;
    for (const house::Room& room : house.rooms) {
        if (room.storey != 1) continue;
        floors += room.floor_area();
        for (const house::Surface& surface : room.surfaces)
            if (surface.kind == house::SurfaceKind::floor && lets_air_in(surface)) exposed += surface.area;
    }
    return floors > units::Area() ? exposed / floors : 0;
}

// Walls, top ceiling and any exposed floor of a box 3 to 2: sides 1.5 a and a, so a perimeter of 5 a.
units::Area of_box(const house::House& house) {
    const units::Area floor = described_floor_area(house) + house.other_rooms->floor_area;
    const units::Area footprint = floor / house.storeys;
    const units::Length perimeter{5 * std::sqrt(footprint.si() / 1.5)};
    return house.storeys * (perimeter * mean_ceiling(house)) + footprint * (1 + exposed_floor_share(house));
}

// Where only the others' heat loss is stated: as much surface as loses that heat where the described rooms,
// taken as a house by themselves, lose theirs. Their own leakage goes by their own surface, so nothing here
// depends on what is being sought.
units::Area that_loses(units::Power stated, const house::House& house) {
    house::House described = house;
    described.other_rooms.reset();
    const HouseHeatLoss loss = house_heat_loss(described);
    if (loss.total <= units::Power()) return {};
    return (stated / loss.total) * loss.infiltration.exposed;
}

units::Area of_other_rooms(const house::House& house, units::Area described) {
    const house::OtherRooms& others = *house.other_rooms;
    units::Area estimate;
    if (others.floor_area > units::Area())
        estimate = of_box(house) - described;
    else if (others.heat_loss)
        estimate = that_loses(*others.heat_loss, house);
    return others.exposure * std::max(estimate, units::Area());
}

}  // namespace

units::Area described_floor_area(const house::House& house) {
    units::Area sum;
    for (const house::Room& room : house.rooms) sum += room.floor_area();
    return sum;
}

units::Length mean_ceiling(const house::House& house) {
    units::Volume volume;
    for (const house::Room& room : house.rooms) volume += room.floor_area() * room.ceiling;
    const units::Area floor = described_floor_area(house);
    return floor > units::Area() ? volume / floor : units::Length();
}

units::Area exposed_surface(const house::Room& room) {
    units::Area sum;
    for (const house::Surface& surface : room.surfaces)
        if (lets_air_in(surface)) sum += surface.area;
    return sum;
}

units::Area described_exposed_surface(const house::House& house) {
    units::Area sum;
    for (const house::Room& room : house.rooms) sum += exposed_surface(room);
    return sum;
}

units::Area exposed_surface(const house::House& house) {
    const units::Area described = described_exposed_surface(house);
    return house.other_rooms ? described + of_other_rooms(house, described) : described;
}

}  // namespace loads
