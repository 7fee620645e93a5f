// The rooms nobody described, as one lump.
#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

// What their runs leave, where the sheet says it.
OthersLeave left_by_others(Work& work, const Given<std::string>& from) {
    if (from.value == "plenum") return UsualStart::plenum;
    const auto found = find_named(work.survey.ducts, from.value);
    if (!found) {
        blame_unknown(work.ledger, from, "duct", work.survey.ducts);
        return UsualStart::trunks;
    }
    const SurveyDuct& duct = work.survey.ducts[static_cast<std::size_t>(*found)];
    if (duct.side && duct.side->value == DuctSide::return_side)
        work.ledger.blame(from.place, "the " + from.value + " is a return duct",
                          "the other rooms' runs leave a supply duct, or \"plenum\"");
    if (!exists(work, duct.state))
        work.ledger.blame(from.place,
                          "the other rooms' runs leave the " + from.value + ", which is not there " +
                              (work.stage == Stage::found ? "yet" : "any more"),
                          "name a duct that stays, or \"plenum\"");
    return DuctId{*found};
}

}  // namespace

void build_other_rooms(Work& work) {
    if (!work.survey.other_rooms) return;
    const SurveyOtherRooms& written = *work.survey.other_rooms;
    Ledger& ledger = work.ledger;
    const std::string what = "the rooms not described";
    OtherRooms rooms;
    if (!written.floor_area && !written.heat_loss)
        ledger.blame_missing(written.place, "the floor area of " + what,
                             "floor_area = \"1150 ft2\", or heat_loss = \"31000 Btu/h\"");
    if (written.floor_area) rooms.floor_area = written.floor_area->value;
    if (written.heat_loss) rooms.heat_loss = written.heat_loss->value;
    if (!written.heat_loss) rooms.exposure = ledger.take(DefaultId::other_rooms_exposure, what);
    rooms.outlets = ledger.required(written.outlets, written.place, "the number of supply outlets of " + what,
                                    "outlets = 8");
    rooms.pipe = ledger.or_default(written.pipe, DefaultId::other_rooms_pipe, what);
    if (written.reach) {
        rooms.shortest_reach = written.reach->value.first;
        rooms.longest_reach = written.reach->value.second;
        if (rooms.shortest_reach > rooms.longest_reach)
            ledger.blame(written.reach->place, "the shortest run is longer than the longest",
                         "write reach = [shortest, longest]");
    } else {
        rooms.longest_reach = units::Length(ledger.take(DefaultId::other_rooms_reach, what));
        constexpr double nearest_to_farthest =
            0.2;  // estimate; the farthest outlet decides, the nearest hardly matters
        rooms.shortest_reach = nearest_to_farthest * rooms.longest_reach;
    }
    rooms.turns = written.turns
                      ? written.turns->value
                      : Turns{static_cast<int>(ledger.take(DefaultId::other_rooms_turns, what)), true};
    if (written.from) rooms.leave = left_by_others(work, *written.from);
    if (written.pipe && rooms.pipe.si() <= 0)
        ledger.blame(written.pipe->place, "a pipe has a diameter above zero");
    work.house.other_rooms = rooms;
}

}  // namespace house
