#include "house/house.hpp"

namespace house {

const Duct* House::duct(DuctId id) const {
    for (const Duct& duct : ducts)
        if (duct.id == id) return &duct;
    return nullptr;
}

bool House::is_supply(const Outlet& outlet) const {
    const Duct* feeds = duct(outlet.duct);
    return feeds && feeds->side == DuctSide::supply;
}

}  // namespace house
