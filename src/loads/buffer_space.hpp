// How warm an unheated space beside the rooms is on the design night: its own heat balance.
//
//     temperature = (sum of A U t + C Q t outdoors + heat) / (sum of A U + C Q)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 5. Changed: C from the air at the site; the space's
// own heat counted.
// Symbols: A U and t of everything around it: each described room's surfaces that face it, at the room's
// temperature; roof and walls at the outdoors'; ground at the ground's; Q outdoor air through it.
// Where rooms are not described, the rest of an attic's, a basement's or a crawl space's floor area lies
// under or over them, at the house's temperature and at the mean U of the described ceilings or floors there
// (without those of rooms the work alters, where others are described). What undescribed rooms have beside a
// garage or a porch is not known and left out: the space is then warmer than said. So is the ground under
// garage and porch.
// Ground: basement walls and floor by loads/below_grade.hpp in usual soil, the wall's U less its outside
// film; the floor of a crawl space U 0.30 W/(m2 K) (estimate). A wall of a crawl space not told to stand in
// the ground stands above it. The heat goes out of the house: what a space gains from the rooms is theirs to
// lose. Range: steady cold. Accuracy: +-2 K where its air change is known within a half (derived); one space
// does not warm another.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

class KnownTransmittances;

inline constexpr Method buffer_space_method{
    "heat balance of an unheated space",
    "(sum of area x U x temperature + air x density x specific heat x outdoors + heat given off) / (sum of "
    "area x U + air x density x specific heat)",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 5"};

struct BalancePart {
    std::string name;  // "the bath", "roof", "outdoor air"
    units::HeatLossPerKelvin conductance;
    units::Temperature beyond;
};

struct SpaceBalance {
    house::Space space = house::Space::attic;
    std::vector<BalancePart> parts;
    units::Power heat;  // given off in it
    units::Temperature temperature;
};

// Every space's temperature, and how those in balance come to theirs.
struct SpacesInWinter {
    std::array<units::Temperature, 8> temperature;  // by house::Space
    std::vector<SpaceBalance> balances;
    units::Temperature of(house::Space space) const { return temperature[static_cast<std::size_t>(space)]; }
};

// Empty where nothing holds the space at any temperature.
std::optional<units::Temperature> balance_temperature(const std::vector<BalancePart>& parts,
                                                      units::Power heat);
SpacesInWinter spaces_in_winter(const house::House& house, KnownTransmittances& known);
SpacesInWinter spaces_in_winter(const house::House& house);

}  // namespace loads
