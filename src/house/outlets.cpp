// Outlets of this stage: registers and return grilles, the duct that feeds each, and where they sit.
#include <algorithm>

#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace house {
namespace {

const SurveyRoom* room_named(const Survey& survey, std::string_view name) {
    for (const SurveyRoom& room : survey.rooms)
        if (name_of(room) == name) return &room;
    return nullptr;
}

// `room`: the outlet's; nullptr where the sheet names none that exists.
Spot spot_of(Work& work, const SurveyOutlet& written, const SurveyRoom* room) {
    if (written.under && room) {
        const auto& windows = room->windows;
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
    if (work.house.duct(outlet.duct)) return;
    const auto& state = work.survey.ducts[static_cast<std::size_t>(*index)].state;
    work.ledger.blame(
        Mistake{"the outlet " + outlet.name + " sits on the " + written.duct->value + ", which is not there",
                {},
                "give both the same state: found, new or removed",
                written.duct->place,
                state ? std::optional<Place>(state->place) : std::nullopt,
                true});
}

void add_free_area(Work& work, const SurveyOutlet& written, Outlet& outlet) {
    if (!written.free_area) return;
    const Place place = written.free_area->place;
    if (!outlet.face)
        return work.ledger.blame(place, "the outlet " + outlet.name + " has a free area but no face",
                                 "write its face too, as face = \"14 x 8 in\"");
    const units::Area face = outlet.face->width * outlet.face->height;
    if (written.free_area->value > face)
        return blame_more_free_than_face(work, place, "the outlet " + outlet.name, face);
    if (written.free_area->value.si() <= 0)
        return work.ledger.blame(place, "the outlet " + outlet.name + " has no free area",
                                 "leave it out where it is not known");
    outlet.free_area = written.free_area->value;
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
    const SurveyRoom* room = written.room ? room_named(work.survey, written.room->value) : nullptr;
    // Where the return air is taken from hardly matters yet: a grille may sit in a room nobody described.
    const Duct* duct = work.house.duct(outlet.duct);
    const bool any_room = duct && duct->side == DuctSide::return_side &&
                          (!written.room || written.room->value == word(Space::heated_rooms));
    if (room)
        outlet.room = RoomId{static_cast<int>(room - work.survey.rooms.data())};
    else if (written.room && !any_room)
        blame_unknown(ledger, *written.room, "room", work.survey.rooms);
    else if (!any_room)
        ledger.blame_missing(written.place, "the room of the outlet " + outlet.name, "room = \"bath\"");
    if (written.face) outlet.face = Rectangular{written.face->value.first, written.face->value.second};
    if (written.face && (written.face->value.first.si() <= 0 || written.face->value.second.si() <= 0))
        ledger.blame(written.face->place, "the outlet " + outlet.name + " has no face");
    add_free_area(work, written, outlet);
    if (written.mount) outlet.mount = written.mount->value;
    outlet.spot = spot_of(work, written, room);
    if (written.damper) outlet.damper = written.damper->value;
    return outlet;
}

// Whether the sheet hangs something on the duct that is only there at the other stage.
bool feeds_at_the_other_stage(const Work& work, std::string_view duct) {
    const auto elsewhere = [&](const auto& thing) { return !exists(work, thing.state); };
    const auto leads_here = [&](const SurveyDuct& d) {
        return elsewhere(d) && ((d.from && d.from->value == duct) || (d.to && d.to->value == duct));
    };
    const auto sits_here = [&](const SurveyOutlet& o) {
        return elsewhere(o) && o.duct && o.duct->value == duct;
    };
    return std::any_of(work.survey.ducts.begin(), work.survey.ducts.end(), leads_here) ||
           std::any_of(work.survey.outlets.begin(), work.survey.outlets.end(), sits_here);
}

Mistake dead_end(const Work& work, const Duct& duct) {
    Mistake mistake{"the duct " + duct.name + " ends nowhere",
                    {},
                    "give it an [[outlet]], or leave it out",
                    duct.place,
                    std::nullopt,
                    true};
    if (!feeds_at_the_other_stage(work, duct.name)) return mistake;
    const bool found = work.stage == Stage::found;
    const std::string state = found ? "new" : "removed";
    mistake.text += std::string(" in the house as ") + (found ? "found" : "planned");
    mistake.remedy = "all that hangs on it is " + state + ": give it state = \"" + state + "\" too";
    return mistake;
}

// Air that enters a duct has to come out somewhere.
void blame_dead_ends(Work& work) {
    const auto& ducts = work.house.ducts;
    const auto& outlets = work.house.outlets;
    for (const Duct& duct : ducts) {
        const bool feeds =
            std::any_of(ducts.begin(), ducts.end(), [&](const Duct& d) { return d.from == duct.id; }) ||
            std::any_of(outlets.begin(), outlets.end(), [&](const Outlet& o) { return o.duct == duct.id; });
        const bool trunk_of_the_lump = work.house.other_rooms && work.house.other_rooms->outlets > 0 &&
                                       duct.side == DuctSide::supply && !duct.from;
        if (!feeds && !trunk_of_the_lump) work.ledger.blame(dead_end(work, duct));
    }
}

// Registers and grilles whose face nobody described share one default each.
void build_terminal_drops(Work& work) {
    House& house = work.house;
    bool grille_described = false;
    for (const Outlet& outlet : house.outlets)
        grille_described = grille_described || (!house.is_supply(outlet) && outlet.face);
    house.register_drop =
        units::Pressure(work.ledger.take(DefaultId::register_drop, "every supply register"));
    if (!grille_described)
        house.grille_drop = units::Pressure(work.ledger.take(DefaultId::grille_drop, "the return grille"));
}

}  // namespace

void blame_more_free_than_face(Work& work, Place place, const std::string& what, units::Area face) {
    work.ledger.blame(place, what + " has more free area than face",
                      "its face is " + units::decimal(face / units::unit::square_inch, 0) +
                          " in2; free is what is open between the bars");
}

void build_outlets(Work& work) {
    const auto& written = work.survey.outlets;
    work.house.outlets.reserve(written.size());
    for (std::size_t i = 0; i < written.size(); ++i) {
        if (!exists(work, written[i].state)) continue;
        work.house.outlets.push_back(build_outlet(work, written[i], static_cast<int>(i)));
    }
    blame_dead_ends(work);
    build_terminal_drops(work);
}

}  // namespace house
