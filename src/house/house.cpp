#include "house/house.hpp"

#include <algorithm>

namespace house {

const Duct* House::duct(DuctId id) const {
    for (const Duct& duct : ducts)
        if (duct.id == id) return &duct;
    return nullptr;
}

const BufferSpace* House::buffer_space(Space space) const {
    for (const BufferSpace& buffer : buffer_spaces)
        if (buffer.space == space) return &buffer;
    return nullptr;
}

bool House::is_supply(const Outlet& outlet) const {
    const Duct* feeds = duct(outlet.duct);
    return feeds && feeds->side == DuctSide::supply;
}

bool House::lacks_a_storey() const {
    if (other_rooms) return false;
    for (int storey = 1; storey <= storeys; ++storey)
        if (std::none_of(rooms.begin(), rooms.end(), [&](const Room& room) { return room.storey == storey; }))
            return true;
    return false;
}

}  // namespace house
