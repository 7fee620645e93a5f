// The pipes in a bay: how wide each is, where it lies, and that no two are in one place.
#include <algorithm>
#include <tuple>

#include "house/builders.hpp"
#include "house/framing_ranges.hpp"
#include "house/pipe_sizes.hpp"
#include "units/nearest_word.hpp"
#include "units/write.hpp"

namespace house {
namespace {

constexpr double tape = 1e-6;  // m; sizes that just touch are no mistake

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

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

// By tape, or by its trade name.
units::Length outside_of(Ledger& ledger, const SurveyBayPipe& written, const std::string& whose) {
    if (written.outside && written.size)
        ledger.blame(Mistake{"the " + whose + " has its size twice",
                             {},
                             "keep outside, as measured",
                             written.size->place,
                             written.outside->place});
    if (written.outside) return written.outside->value;
    if (!written.size)
        return ledger.required(written.outside, written.place, "the outside of the " + whose,
                               "outside = \"3-1/2 in\": its widest, over the hub; or size = \"3 in PVC\"");
    if (const PipeSize* known = pipe_size_named(written.size->value)) return known->outside;
    const auto nearest = units::nearest_words(written.size->value, pipe_size_names(), 3);
    ledger.blame(written.size->place, "no pipe is called '" + written.size->value + "'",
                 "the nearest are '" + nearest[0] + "', '" + nearest[1] + "' and '" + nearest[2] +
                     "'; or measure it: outside = \"3-1/2 in\"");
    return {};
}

std::string name_of(const SurveyBayPipe& written) {
    if (written.name) return written.name->value;
    return written.size ? written.size->value : "pipe";
}

BayPipe build_pipe(Work& work, const SurveyBayPipe& written, const Bay& bay) {
    Ledger& ledger = work.ledger;
    BayPipe pipe;
    pipe.name = name_of(written);
    pipe.across = written.across && written.across->value;
    pipe.outside = outside_of(ledger, written, pipe.name + " in " + bay.name);
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

Place place_of_size(const SurveyBayPipe& written) {
    if (written.outside) return written.outside->place;
    return written.size ? written.size->place : written.place;
}

// One message for a pipe that does not lie within its bay.
void blame_outside(Work& work, const SurveyBayPipe& written, const Bay& bay, const BayPipe& pipe) {
    if (bay.width.si() <= 0 || bay.depth.si() <= 0 || pipe.outside.si() <= 0) return;
    const auto blame = [&](const std::string& what, const std::string& remedy) {
        work.ledger.blame(place_of_size(written), what, remedy);
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

// Where a pipe lies is known once nothing of it is missing.
bool is_known(const SurveyBayPipe& written, const BayPipe& pipe) {
    return pipe.outside.si() > 0 && (pipe.across || written.distance) && (written.top || written.bottom);
}

// One message for a pipe that runs through an earlier one.
void blame_run_through(Work& work, const SurveyBay& written, const Bay& bay) {
    if (bay.width.si() <= 0) return;
    const std::size_t last = bay.pipes.size() - 1;
    const BayPipe& later = bay.pipes[last];
    if (!is_known(written.pipes[last], later)) return;
    for (std::size_t i = 0; i < last; ++i) {
        const BayPipe& earlier = bay.pipes[i];
        if (!is_known(written.pipes[i], earlier) || !run_through_each_other(earlier, later, bay.width))
            continue;
        return work.ledger.blame(
            Mistake{earlier.name != later.name
                        ? "the " + later.name + " runs through the " + earlier.name + " in " + bay.name
                        : "two pipes of " + bay.name + " run through each other",
                    {},
                    earlier.across || later.across
                        ? "one passes over the other: measure both heights where they cross"
                        : "measure each from its own side, and how high it lies at both ends",
                    place_of_size(written.pipes[last]),
                    place_of_size(written.pipes[i])});
    }
}

void blame_too_many(Ledger& ledger, const SurveyBay& written, const Bay& bay) {
    if (written.pipes.size() > most_pipes_in_a_bay)
        ledger.blame(written.pipes[most_pipes_in_a_bay].place,
                     bay.name + " has " + std::to_string(written.pipes.size()) + " pipes, " +
                         std::to_string(most_pipes_in_a_bay) + " at most are looked at",
                     "leave out those that lie close behind others, and cables");
}

bool runs_north_south(const SurveyBayPipe& pipe) {
    return pipe.from->value == WallSide::west || pipe.from->value == WallSide::east;
}

}  // namespace

void build_bay_pipes(Work& work, const SurveyBay& written, Bay& bay) {
    for (const SurveyBayPipe& pipe : written.pipes)
        if (pipe.from) bay.from_west = runs_north_south(pipe);
    blame_too_many(work.ledger, written, bay);
    for (const SurveyBayPipe& pipe : written.pipes) {
        if (bay.pipes.size() == most_pipes_in_a_bay) return;
        if (pipe.from && runs_north_south(pipe) != bay.from_west)
            work.ledger.blame(
                pipe.from->place, "the pipes of " + bay.name + " are measured across each other",
                "a bay that runs north-south is measured from west or east, the other from south or north");
        bay.pipes.push_back(build_pipe(work, pipe, bay));
        blame_outside(work, pipe, bay, bay.pipes.back());
        blame_run_through(work, written, bay);
    }
}

}  // namespace house
