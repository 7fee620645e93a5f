// The whole house in summer, the rooms nobody described included: see loads/room_heat_gain.hpp.
#include "house/cannot_answer.hpp"
#include "loads/room_heat_gain.hpp"

namespace loads {
namespace {

struct Likeness {
    units::Area exposed;
    units::Power gain;
};
Likeness likeness(const house::House& house, const std::vector<RoomHeatGain>& rooms, bool altered_too) {
    Likeness like;
    for (const RoomHeatGain& room : rooms) {
        if (house.room(room.room).altered && !altered_too) continue;
        like.exposed += exposed_surface(house.room(room.room));
        like.gain += room.total - room.internal - room.leakage_gain;
    }
    return like;
}

units::Power other_rooms_gain(const house::House& house, const HouseHeatGain& gain,
                              const Infiltration& winter) {
    if (!house.other_rooms) return {};
    Likeness like = likeness(house, gain.rooms, false);
    if (like.exposed <= units::Area()) like = likeness(house, gain.rooms, true);
    if (like.exposed <= units::Area())
        throw house::CannotAnswer({},
                                  "the other rooms' heat gain is judged by the described rooms that face "
                                  "outdoors, and there is none: describe one");
    const units::Area others = winter.exposed - described_exposed_surface(house);
    units::Power left = gain.internal.sensible + gain.leakage.sensible();
    for (const RoomHeatGain& room : gain.rooms) left -= room.internal + room.leakage_gain;
    return (others / like.exposed) * like.gain + left;
}

}  // namespace

HouseHeatGain house_heat_gain(const house::House& house, const Infiltration& winter) {
    HouseHeatGain gain;
    gain.leakage = summer_leakage(house, winter);
    gain.internal = internal_gain(house);
    for (const house::Room& room : house.rooms) {
        gain.rooms.push_back(room_heat_gain(house, gain, winter, room.id));
        gain.sensible += gain.rooms.back().total;
    }
    gain.other_rooms = other_rooms_gain(house, gain, winter);
    gain.sensible += gain.other_rooms;
    gain.latent = gain.leakage.latent + gain.internal.latent;
    return gain;
}

}  // namespace loads
