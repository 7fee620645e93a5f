// Bays between joists or studs: as measured, or worked out from a floor of joists.
//
// Clear width = spacing - joist thickness - what sisters add within the bay; depth is the joists'. Old work
// is seldom exact: a bay measured with a tape beats one worked out.
#include <tuple>

#include "house/builders.hpp"
#include "house/framing_ranges.hpp"
#include "house/names.hpp"

namespace house {
namespace {

// What stands in the bay of the sisters on its two joists: on the near one towards the second side, on the
// far one towards the first.
units::Length sisters_within(Work& work, const SurveyFloor& floor, int near, int far) {
    units::Length within;
    for (const SurveySister& sister : floor.sisters) {
        if (!sister.joist || !sister.side) {
            work.ledger.blame_missing(floor.place, "the joist and the side of a sister",
                                      "sisters = [{ joist = 3, side = \"east\", add = \"1-1/2 in\" }]");
            continue;
        }
        const bool faces_bay = (sister.joist->value == near && !is_first_side(sister.side->value)) ||
                               (sister.joist->value == far && is_first_side(sister.side->value));
        const units::Length add =
            work.ledger.required(sister.add, floor.place, "how much a sister adds", "add = \"1-1/2 in\"");
        if (faces_bay) within += add;
    }
    return within;
}

Two clear_of_floor(Work& work, const SurveyBay& written, const SurveyFloor& floor, const std::string& name) {
    Ledger& ledger = work.ledger;
    const auto [near, far] =
        ledger.required(written.between, written.place, "the two joists of " + name, "between = [2, 3]");
    const units::Length spacing =
        ledger.required(floor.spacing, floor.place, "the spacing of the joists", "spacing = \"16 in\"");
    const Two joist = ledger.required(floor.joist, floor.place, "the thickness and depth of the joists",
                                      "joist = [\"1-3/4 in\", \"9-1/2 in\"]");
    if (written.between && far != near + 1) {
        ledger.blame(written.between->place, "a bay lies between two joists side by side",
                     "write between = [2, 3], the lower first");
        return {spacing, joist.second};
    }
    return {spacing - joist.first - sisters_within(work, floor, near, far), joist.second};
}

bool is_sane(const SurveyFloor& floor) {
    return (!floor.spacing || joist_spacing.holds(floor.spacing->value)) &&
           (!floor.joist || (joist_thickness.holds(floor.joist->value.first) &&
                             joist_depth.holds(floor.joist->value.second)));
}

// A floor is blamed once, however many bays it has.
void blame_out_of_range(Ledger& ledger, const SurveyFloor& floor) {
    const std::string of_floor = " of the joists" + (floor.name ? " of " + floor.name->value : std::string());
    if (floor.spacing)
        within(ledger, floor.spacing->place, floor.spacing->value, joist_spacing, "the spacing" + of_floor);
    if (!floor.joist) return;
    const auto& [thick, deep] = floor.joist->value;
    within(ledger, floor.joist->place, thick, joist_thickness, "the thickness" + of_floor);
    within(ledger, floor.joist->place, deep, joist_depth, "the depth" + of_floor);
}

// Both sides of a measured bay; none where one is out of range, so that its pipes are not blamed too.
Two measured_clear(Ledger& ledger, const Given<Two>& clear, const std::string& name) {
    const bool wide = within(ledger, clear.place, clear.value.first, bay_clear, "the clear width of " + name);
    return wide && within(ledger, clear.place, clear.value.second, bay_clear, "the clear depth of " + name)
               ? clear.value
               : Two{};
}

Two clear(Work& work, const SurveyBay& written, const std::string& name) {
    if (written.clear) return measured_clear(work.ledger, *written.clear, name);
    if (!written.floor) {
        work.ledger.blame_missing(
            written.place, "the clear width and depth of " + name,
            "clear = [\"12-3/4 in\", \"9-1/2 in\"]; or floor = ... and between = [2, 3]");
        return {};
    }
    const auto floor = find_named(work.survey.floors, written.floor->value);
    if (!floor) {
        blame_unknown(work.ledger, *written.floor, "floor", work.survey.floors);
        return {};
    }
    const SurveyFloor& joists = work.survey.floors[static_cast<std::size_t>(*floor)];
    if (!is_sane(joists)) return {};
    const Two result = clear_of_floor(work, written, joists, name);
    const bool given = written.between && joists.spacing && joists.joist;
    if (given && result.first.si() <= 0)
        work.ledger.blame(written.place, "nothing is left of " + name + " between joists and sisters",
                          "measure it: clear = [\"12-3/4 in\", \"9-1/2 in\"]");
    return result;
}

Bay build_bay(Work& work, const SurveyBay& written) {
    Bay bay;
    bay.name = work.ledger.required(written.name, written.place, "the name of this bay", "name = \"bay 3\"");
    if (written.framing) bay.framing = written.framing->value;
    std::tie(bay.width, bay.depth) = clear(work, written, bay.name);
    bay.clearance = units::Length(
        written.pipes.empty() && !written.clearance
            ? 0
            : work.ledger.or_default(written.clearance, DefaultId::pipe_clearance, bay.name).si());
    if (written.clearance)
        within(work.ledger, written.clearance->place, bay.clearance, clearance_to_pipe,
               "the clearance in " + bay.name);
    build_bay_pipes(work, written, bay);
    return bay;
}

}  // namespace

void build_bays(Work& work) {
    for (const SurveyFloor& floor : work.survey.floors) blame_out_of_range(work.ledger, floor);
    for (const SurveyBay& bay : work.survey.bays) work.house.bays.push_back(build_bay(work, bay));
}

}  // namespace house
