#include "loads/internal_gain.hpp"

#include <algorithm>

#include "loads/infiltration.hpp"

namespace loads {
namespace {

units::Area whole_floor(const house::House& house) {
    const units::Area others = house.other_rooms ? house.other_rooms->floor_area : units::Area();
    return described_floor_area(house) + others;
}

units::Area floor_lived_in(const house::House& house) {
    units::Area sum;
    for (const house::Room& room : house.rooms)
        if (house::is_lived_in(room.use)) sum += room.floor_area();
    return sum;
}

}  // namespace

InternalGain internal_gain(units::Area floor, int people) {
    return {floor, people, units::Power(136 + 2.2 * floor.si() + 22 * people),
            units::Power(20 + 0.22 * floor.si() + 12 * people)};
}

InternalGain internal_gain(const house::House& house) {
    return internal_gain(whole_floor(house), house.summer->bedrooms + 1);
}

units::Area floor_that_shares(const house::House& house) {
    const units::Area lived_in = floor_lived_in(house);
    if (lived_in > units::Area() && house.other_rooms)
        return std::max(lived_in, house.summer->lived_in_share * whole_floor(house));
    if (lived_in > units::Area() || house.other_rooms) return lived_in;
    return described_floor_area(house);
}

double internal_share(const house::House& house, const house::Room& room) {
    const units::Area sharing = floor_that_shares(house);
    if (sharing <= units::Area()) return 0;
    if (floor_lived_in(house) > units::Area() && !house::is_lived_in(room.use)) return 0;
    return room.floor_area() / sharing;
}

}  // namespace loads
