// Outlets of this stage: registers and return grilles, the duct that feeds each, and where they sit.
#include <algorithm>

#include "house/builders.hpp"
#include "house/names.hpp"

namespace house {
namespace {

const Duct* duct_here(const House& house, int index) {
    for (const Duct& duct : house.ducts)
        if (duct.id.index == index) return &duct;
    return nullptr;
}

Spot spot_of(Work& work, const SurveyOutlet& written, const Outlet& outlet) {
    if (written.under && outlet.room.index < static_cast<int>(work.survey.rooms.size())) {
        const auto& windows = work.survey.rooms[static_cast<std::size_t>(outlet.room.index)].windows;
        if (!find_named(windows, written.under->value))
            blame_unknown(work.ledger, *written.under, "window of that room", windows);
        return UnderWindow{written.under->value};
    }
    if (written.wall)
        return OnWall{written.wall->value, written.centre ? written.centre->value : units::Length()};
    if (written.point) return AtPoint{written.point->value.first, written.point->value.second};
    return Nowhere{};
}

void connect(Work& work, const SurveyOutlet& written, Outlet& outlet) {
    if (!written.duct)
        return work.ledger.blame_missing(written.place, "the duct of the outlet " + outlet.name,
                                         "duct = \"main trunk\"");
    const auto index = find_named(work.survey.ducts, written.duct->value);
    if (!index) return blame_unknown(work.ledger, *written.duct, "duct", work.survey.ducts);
    outlet.duct = DuctId{*index};
    if (duct_here(work.house, *index)) return;
    const auto& state = work.survey.ducts[static_cast<std::size_t>(*index)].state;
    work.ledger.blame(
        Mistake{"the outlet " + outlet.name + " sits on the " + written.duct->value + ", which is not there",
                {},
                "give both the same state: found, new or removed",
                written.duct->place,
                state ? std::optional<Place>(state->place) : std::nullopt});
}

Outlet build_outlet(Work& work, const SurveyOutlet& written, int index) {
    Ledger& ledger = work.ledger;
    Outlet outlet;
    outlet.id = OutletId{index};
    outlet.place = written.place;
    outlet.state = written.state ? written.state->value : State::found;
    outlet.name =
        ledger.required(written.name, written.place, "the name of this outlet", "name = \"bath register\"");
    connect(work, written, outlet);
    const auto room = written.room ? find_named(work.survey.rooms, written.room->value) : std::nullopt;
    if (room)
        outlet.room = RoomId{*room};
    else if (written.room)
        blame_unknown(ledger, *written.room, "room", work.survey.rooms);
    else
        ledger.blame_missing(written.place, "the room of the outlet " + outlet.name, "room = \"bath\"");
    if (written.face) outlet.face = Rectangular{written.face->value.first, written.face->value.second};
    if (written.face && (written.face->value.first.si() <= 0 || written.face->value.second.si() <= 0))
        ledger.blame(written.face->place, "the outlet " + outlet.name + " has no face");
    if (written.mount) outlet.mount = written.mount->value;
    outlet.spot = spot_of(work, written, outlet);
    return outlet;
}

// Air that enters a duct has to come out somewhere.
void blame_dead_ends(Work& work) {
    for (const Duct& duct : work.house.ducts) {
        const auto& ducts = work.house.ducts;
        const auto& outlets = work.house.outlets;
        const bool feeds =
            std::any_of(ducts.begin(), ducts.end(), [&](const Duct& d) { return d.from == duct.id; }) ||
            std::any_of(outlets.begin(), outlets.end(), [&](const Outlet& o) { return o.duct == duct.id; });
        const bool trunk_of_the_lump =
            work.house.other_rooms && work.house.other_rooms->outlets > 0 && !duct.from;
        if (!feeds && !trunk_of_the_lump)
            work.ledger.blame(duct.place, "the duct " + duct.name + " ends nowhere",
                              "give it an [[outlet]], or leave it out");
    }
}

// Registers and grilles whose face nobody described share one default each.
void build_terminal_drops(Work& work) {
    House& house = work.house;
    const auto side_of = [&](const Outlet& outlet) {
        const Duct* duct = duct_here(house, outlet.duct.index);
        return duct ? duct->side : DuctSide::supply;
    };
    bool grille_described = false;
    for (const Outlet& outlet : house.outlets)
        grille_described = grille_described || (side_of(outlet) == DuctSide::return_side && outlet.face);
    house.register_drop =
        units::Pressure(work.ledger.take(DefaultId::register_drop, "every supply register"));
    if (!grille_described)
        house.grille_drop = units::Pressure(work.ledger.take(DefaultId::grille_drop, "the return grille"));
}

}  // namespace

void build_outlets(Work& work) {
    const auto& written = work.survey.outlets;
    for (std::size_t i = 0; i < written.size(); ++i) {
        const State state = written[i].state ? written[i].state->value : State::found;
        if (state == (work.stage == Stage::found ? State::added : State::removed)) continue;
        work.house.outlets.push_back(build_outlet(work, written[i], static_cast<int>(i)));
    }
    blame_dead_ends(work);
    build_terminal_drops(work);
}

}  // namespace house
