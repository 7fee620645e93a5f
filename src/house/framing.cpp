// Bays between joists or studs: as measured, or worked out from a floor of joists; and the pipes in them.
//
// Clear width = spacing - joist thickness - what sisters add within the bay; depth is the joists'. Old work
// is seldom exact: a bay measured with a tape beats one worked out.
#include <algorithm>
#include <tuple>

#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/write.hpp"

namespace house {
namespace {

constexpr double tape = 1e-6;  // m; sizes that just touch are no mistake

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

bool is_first_side(WallSide side) { return side == WallSide::west || side == WallSide::south; }

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

Two clear(Work& work, const SurveyBay& written, const std::string& name) {
    if (written.clear) return written.clear->value;
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
    const Two result =
        clear_of_floor(work, written, work.survey.floors[static_cast<std::size_t>(*floor)], name);
    const bool given = written.between && work.survey.floors[static_cast<std::size_t>(*floor)].spacing &&
                       work.survey.floors[static_cast<std::size_t>(*floor)].joist;
    if (given && result.first.si() <= 0)
        work.ledger.blame(written.place, "nothing is left of " + name + " between joists and sisters",
                          "measure it: clear = [\"12-3/4 in\", \"9-1/2 in\"]");
    return result;
}

void set_heights(Work& work, const SurveyBayPipe& written, const Bay& bay, BayPipe& pipe) {
    if (written.top && written.bottom)
        work.ledger.blame(Mistake{"the " + pipe.name + " has its height twice",
                                  {},
                                  "keep top or bottom",
                                  written.bottom->place,
                                  written.top->place});
    if (written.top) {
        std::tie(pipe.top, pipe.other_top) = written.top->value;
    } else if (written.bottom) {
        pipe.top = bay.depth - written.bottom->value.first - pipe.outside;
        pipe.other_top = bay.depth - written.bottom->value.second - pipe.outside;
    } else {
        work.ledger.blame_missing(written.place, "how high the " + pipe.name + " lies in " + bay.name,
                                  "top = \"2 in\", below the subfloor; or bottom = \"1 in\"");
    }
}

BayPipe build_pipe(Work& work, const SurveyBayPipe& written, const Bay& bay) {
    Ledger& ledger = work.ledger;
    BayPipe pipe;
    pipe.name = written.name ? written.name->value : "pipe";
    pipe.across = written.across && written.across->value;
    pipe.outside =
        ledger.required(written.outside, written.place, "the outside of the " + pipe.name + " in " + bay.name,
                        "outside = \"3-1/2 in\": its widest, over the hub");
    const units::Length distance =
        pipe.across ? units::Length()
                    : ledger.required(written.distance, written.place,
                                      "where the " + pipe.name + " lies in " + bay.name,
                                      bay.from_west ? "from_west = \"1 in\"" : "from_south = \"1 in\"");
    const bool first = !written.from || is_first_side(written.from->value);
    pipe.from_side = first ? distance : bay.width - distance - pipe.outside;
    set_heights(work, written, bay, pipe);
    return pipe;
}

// One message for a pipe that does not lie within its bay.
void blame_outside(Work& work, const SurveyBayPipe& written, const Bay& bay, const BayPipe& pipe) {
    if (bay.width.si() <= 0 || bay.depth.si() <= 0 || !written.outside) return;
    const auto blame = [&](const std::string& what, const std::string& remedy) {
        work.ledger.blame(written.outside->place, what, remedy);
    };
    const std::string size = in_words(bay.width) + " wide and " + in_words(bay.depth) + " deep";
    if ((!pipe.across && pipe.outside > bay.width) || pipe.outside > bay.depth)
        return blame("the " + pipe.name + " is wider than " + bay.name, bay.name + " is " + size);
    const units::Length highest = std::min(pipe.top, pipe.other_top),
                        lowest = std::max(pipe.top, pipe.other_top);
    const bool too_far = !pipe.across && (pipe.from_side.si() < -tape ||
                                          (pipe.from_side + pipe.outside - bay.width).si() > tape);
    if (too_far || highest.si() < -tape || (lowest + pipe.outside - bay.depth).si() > tape)
        blame("the " + pipe.name + " does not lie within " + bay.name, bay.name + " is " + size);
}

// Pipes along the bay must not share their place at both ends.
bool overlap(const BayPipe& a, const BayPipe& b) {
    if (a.across || b.across) return false;
    const auto touch = [&](units::Length a_top, units::Length b_top) {
        const double dx = (a.from_side + a.outside / 2 - b.from_side - b.outside / 2).si();
        const double dy = (a_top + a.outside / 2 - b_top - b.outside / 2).si();
        const double apart = ((a.outside + b.outside) / 2).si() - tape;
        return apart > 0 && dx * dx + dy * dy < apart * apart;
    };
    return touch(a.top, b.top) || touch(a.other_top, b.other_top);
}

Bay build_bay(Work& work, const SurveyBay& written) {
    Bay bay;
    bay.name = work.ledger.required(written.name, written.place, "the name of this bay", "name = \"bay 3\"");
    if (written.framing) bay.framing = written.framing->value;
    for (const SurveyBayPipe& pipe : written.pipes)
        if (pipe.from)
            bay.from_west = pipe.from->value == WallSide::west || pipe.from->value == WallSide::east;
    std::tie(bay.width, bay.depth) = clear(work, written, bay.name);
    bay.clearance = units::Length(
        written.pipes.empty() && !written.clearance
            ? 0
            : work.ledger.or_default(written.clearance, DefaultId::pipe_clearance, bay.name).si());
    for (const SurveyBayPipe& pipe : written.pipes) {
        const bool west_east =
            pipe.from && (pipe.from->value == WallSide::west || pipe.from->value == WallSide::east);
        if (pipe.from && west_east != bay.from_west)
            work.ledger.blame(
                pipe.from->place, "the pipes of " + bay.name + " are measured across each other",
                "a bay that runs north-south is measured from west or east, the other from south or north");
        bay.pipes.push_back(build_pipe(work, pipe, bay));
        blame_outside(work, pipe, bay, bay.pipes.back());
        for (std::size_t i = 0; i + 1 < bay.pipes.size(); ++i)
            if (pipe.outside && written.pipes[i].outside && overlap(bay.pipes[i], bay.pipes.back()))
                work.ledger.blame(Mistake{"two pipes of " + bay.name + " lie in one place",
                                          {},
                                          "measure each from its own side",
                                          pipe.outside->place,
                                          written.pipes[i].outside->place});
    }
    return bay;
}

}  // namespace

void build_bays(Work& work) {
    for (const SurveyBay& bay : work.survey.bays) work.house.bays.push_back(build_bay(work, bay));
}

}  // namespace house
