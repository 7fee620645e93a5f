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

units::Area footprint(const house::House& house) {
    return (described_floor_area(house) + house.other_rooms->floor_area) / house.storeys;
}

// A box 3 to 2 has sides 1.5 a and a, so a perimeter of 5 a.
units::Area walls_of_a_storey(const house::House& house) {
    return units::Length{5 * std::sqrt(footprint(house).si() / 1.5)} * mean_ceiling(house);
}

// Walls, top ceiling and any exposed floor.
units::Area of_box(const house::House& house) {
    return house.storeys * walls_of_a_storey(house) + footprint(house) * (1 + exposed_floor_share(house));
}

// Where only the others' heat loss is stated: as much surface as loses that heat where the described rooms,
// taken as a house by themselves, lose theirs. Their own leakage goes by their own surface, so nothing here
// depends on what is being sought.
units::Area that_loses(units::Power stated, const house::House& house) {
    house::House described = house;
    described.other_rooms.reset();
    described.ventilation = {};  // of the whole house
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

std::array<double, 4> box_surface_by_storey(const house::House& house) {
    std::array<double, 4> surface{};
    if (!house.other_rooms || house.other_rooms->floor_area <= units::Area()) return surface;
    const std::size_t storeys = std::clamp<std::size_t>(static_cast<std::size_t>(house.storeys), 1, 4);
    for (std::size_t i = 0; i < storeys; ++i) surface[i] = walls_of_a_storey(house).si();
    surface[0] += exposed_floor_share(house) * footprint(house).si();
    surface[storeys - 1] += footprint(house).si();
    return surface;
}

units::Area exposed_surface(const house::House& house) {
    const units::Area described = described_exposed_surface(house);
    return house.other_rooms ? described + of_other_rooms(house, described) : described;
}

}  // namespace loads
