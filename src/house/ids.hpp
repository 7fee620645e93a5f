// Positions in the sheet, the same in the found and the planned house.
#pragma once

#include <compare>

namespace house {

struct RoomId {
    int index = 0;
    auto operator<=>(const RoomId&) const = default;
};
struct DuctId {
    int index = 0;
    auto operator<=>(const DuctId&) const = default;
};
struct OutletId {
    int index = 0;
    auto operator<=>(const OutletId&) const = default;
};

}  // namespace house
