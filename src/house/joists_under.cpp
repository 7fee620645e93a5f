// Floors of joists by the storey they lie under, and where their joists run under a room.
//
// The first joist is measured from the inside of the west wall (of the south wall where joists run
// east-west): of the rooms drawn on that storey, the face that lies farthest west. The others follow at the
// spacing, which old work keeps only roughly.
#include <algorithm>

#include "house/builders.hpp"
#include "house/framing_ranges.hpp"
#include "units/write.hpp"

namespace house {
namespace {

std::string the_floor(const SurveyFloor& floor) {
    return floor.name ? "the " + floor.name->value : std::string("this floor");
}

void blame_storey(Work& work, const SurveyFloor& floor) {
    const int top = work.house.storeys;
    if (work.survey.storeys && floor.under->value > top)
        work.ledger.blame(floor.under->place, the_floor(floor) + " lies under a storey the house has not",
                          "the house has " + std::to_string(top) + " (storeys, under [house])");
}

void blame_second_under_a_storey(Work& work, std::size_t index) {
    const auto& floors = work.survey.floors;
    for (std::size_t i = 0; i < index; ++i)
        if (floors[i].under && floors[i].under->value == floors[index].under->value) {
            work.ledger.blame(
                Mistake{"two floors lie under storey " + std::to_string(floors[index].under->value),
                        {},
                        "leave under out of one of them",
                        floors[index].under->place,
                        floors[i].under->place});
            return;
        }
}

// Whoever works a bay out of the floor asks for its joists already.
bool has_a_bay(const Survey& survey, const SurveyFloor& floor) {
    return floor.name && std::any_of(survey.bays.begin(), survey.bays.end(), [&](const SurveyBay& bay) {
               return bay.floor && !bay.clear && bay.floor->value == floor.name->value;
           });
}

void blame_missing_joists(Work& work, const SurveyFloor& floor) {
    if (has_a_bay(work.survey, floor)) return;
    work.ledger.required(floor.spacing, floor.place, "the spacing of the joists", "spacing = \"16 in\"");
    work.ledger.required(floor.joist, floor.place, "the thickness and depth of the joists",
                         "joist = [\"1-3/4 in\", \"9-1/2 in\"]");
}

void blame_first(Work& work, const SurveyFloor& floor) {
    constexpr units::Length tape{0.003};
    work.ledger.required(floor.joists_run, floor.place, "the direction of the joists of " + the_floor(floor),
                         "joists_run = \"north-south\", or \"east-west\"");
    blame_missing_joists(work, floor);
    if (!floor.spacing || !joist_spacing.holds(floor.spacing->value)) return;
    if (floor.first->value > floor.spacing->value + tape)
        work.ledger.blame(floor.first->place,
                          "the first joist of " + the_floor(floor) + " lies beyond a spacing",
                          "first is the centre of the joist nearest the west or south wall; the spacing is " +
                              units::write(floor.spacing->value, units::System::us).text());
}

void blame_sisters(Work& work, const SurveyFloor& floor) {
    const bool north_south = floor.joists_run->value == JoistsRun::north_south;
    for (const SurveySister& sister : floor.sisters)
        if (sister.side && runs_west_east(sister.side->value) == north_south)
            work.ledger.blame(sister.side->place,
                              "a joist that runs " + std::string(word(floor.joists_run->value)) + " has no " +
                                  std::string(word(sister.side->value)) + " face for a sister",
                              north_south ? "its faces are west and east" : "its faces are south and north");
}

// Along one axis, in the plan of the house.
struct Reach {
    units::Length from, to;
};

Reach reach_of(const SurveyRoom& written, JoistsRun run) {
    const bool north_south = run == JoistsRun::north_south;
    const auto along = [&](const Two& two) { return north_south ? two.first : two.second; };
    const units::Length from = along(written.corner->value);
    return {from, from + along(written.size->value)};
}

// Of all rooms drawn on the storey, as found: the wall that is measured from, and the one across.
Reach reach_of_storey(const Work& work, const SurveyRoom& one_of_it, int storey, JoistsRun run) {
    Reach reach = reach_of(one_of_it, run);
    for (const Room& room : work.house.rooms) {
        const SurveyRoom& written = work.survey.rooms[static_cast<std::size_t>(room.id.index)];
        if (room.storey != storey || !written.corner || !written.size) continue;
        const Reach other = reach_of(written, run);
        reach = {std::min(reach.from, other.from), std::max(reach.to, other.to)};
    }
    return reach;
}

units::Length sisters_of(const SurveyFloor& floor, int joist, bool on_first_side) {
    units::Length added;
    for (const SurveySister& sister : floor.sisters)
        if (sister.joist && sister.joist->value == joist && sister.side && sister.add &&
            is_first_side(sister.side->value) == on_first_side)
            added += sister.add->value;
    return added;
}

bool is_placed(const SurveyFloor& floor) {
    return floor.first && floor.spacing && floor.joist && joist_spacing.holds(floor.spacing->value) &&
           joist_thickness.holds(floor.joist->value.first);
}

std::vector<Joist> joists_under(const Work& work, const SurveyFloor& floor, const SurveyRoom& written,
                                const Room& room) {
    std::vector<Joist> joists;
    const JoistsRun run = floor.joists_run->value;
    const bool north_south = run == JoistsRun::north_south;
    const Reach storey = reach_of_storey(work, written, room.storey, run);
    const Two corner = corner_of(work, written);
    const units::Length start = north_south ? corner.first : corner.second,
                        length = north_south ? room.width : room.depth, half = floor.joist->value.first / 2;
    for (int number = 1; number <= most_joists_in_a_floor; ++number) {
        const units::Length centre = storey.from + floor.first->value + (number - 1) * floor.spacing->value;
        if (centre > storey.to) break;
        const units::Length from = centre - half - sisters_of(floor, number, true) - start,
                            to = centre + half + sisters_of(floor, number, false) - start;
        if (to > units::Length() && from < length) joists.push_back({number, from, to});
    }
    return joists;
}

}  // namespace

void blame_misplaced_floors(Work& work) {
    const auto& floors = work.survey.floors;
    for (std::size_t i = 0; i < floors.size(); ++i) {
        const SurveyFloor& floor = floors[i];
        if (floor.first) blame_first(work, floor);
        if (floor.joists_run) blame_sisters(work, floor);
        if (floor.under) {
            blame_storey(work, floor);
            blame_second_under_a_storey(work, i);
        } else if (floor.first || floor.joists_run) {
            work.ledger.blame_missing(floor.place, "the storey that " + the_floor(floor) + " lies under",
                                      "under = \"storey 2\"");
        }
    }
}

std::optional<JoistFloor> floor_under(const Work& work, const SurveyRoom& written, const Room& room) {
    const auto& floors = work.survey.floors;
    const auto floor = std::find_if(floors.begin(), floors.end(), [&](const SurveyFloor& f) {
        return f.under && f.under->value == room.storey && f.joists_run;
    });
    if (floor == floors.end()) return std::nullopt;
    JoistFloor under{floor->joists_run->value, {}, {}};
    if (floor->joist) under.depth = floor->joist->value.second;
    if (is_placed(*floor) && written.corner) under.joists = joists_under(work, *floor, written, room);
    return under;
}

}  // namespace house
