// What stands on the floor of a room: where, and whether it can stand there.
#include <algorithm>

#include "house/builders.hpp"
#include "units/write.hpp"

namespace house {
namespace {

constexpr units::Length tape{0.01};  // measuring slack, as between rooms

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

std::string called(const SurveyFixture& fixture) {
    return fixture.name ? fixture.name->value
                        : std::string(fixture.kind ? word(fixture.kind->value) : "fixture");
}

// Where it was measured, in the room as found.
Box as_written(const SurveyFixture& fixture) {
    const auto& [west, south] = fixture.corner->value;
    return {west, south, west + fixture.size->value.first, south + fixture.size->value.second};
}

bool is_complete(Work& work, const SurveyFixture& fixture, const Room& room) {
    const std::string whose = "the " + called(fixture) + " of the " + room.name;
    work.ledger.required(fixture.kind, fixture.place, "the kind of " + whose, "kind = \"tub\"");
    work.ledger.required(fixture.corner, fixture.place, "the corner of " + whose,
                         "corner = [\"0 ft\", \"2 ft 6 in\"]: from the room's south-west corner");
    work.ledger.required(fixture.size, fixture.place, "the size of " + whose,
                         "size = [\"2 ft 6 in\", \"5 ft\"]: west-east, then south-north");
    return fixture.kind && fixture.corner && fixture.size;
}

bool lies_within(Work& work, const SurveyFixture& fixture, const SurveyRoom& written, const Room& room) {
    const Box box = as_written(fixture);
    const auto& [width, depth] = written.size->value;
    const bool east = box.east > width + tape, north = box.north > depth + tape;
    if (!east && !north) return true;
    work.ledger.blame(Mistake{
        "the " + called(fixture) + " does not lie within the " + room.name,
        east ? "it ends " + in_words(box.east) + " from the west wall; the room is " + in_words(width)
             : "it ends " + in_words(box.north) + " from the south wall; the room is " + in_words(depth),
        "corner is its south-west corner, from that of the room; size is west-east, then south-north",
        fixture.corner->place, std::nullopt});
    return false;
}

struct Along {
    units::Length from, to;
};
// A wall that moves in pushes what stood at it.
Along pushed(units::Length from, units::Length length, units::Length room) {
    const units::Length start = std::max(std::min(from, room - length), units::Length());
    return {start, std::min(start + length, room)};
}

Fixture standing(const Work& work, const SurveyFixture& fixture, const SurveyRoom& written,
                 const Room& room) {
    const auto& [west, south] = fixture.corner->value;
    const auto& [width, depth] = fixture.size->value;
    const Along x = pushed(west + growth(work, written, WallSide::west), width, room.width),
                y = pushed(south + growth(work, written, WallSide::south), depth, room.depth);
    return {fixture.kind->value, called(fixture), {x.from, y.from, x.to, y.to}};
}

void blame_too_large_for_the_planned_room(Work& work, const SurveyFixture& fixture, const Room& room) {
    const auto& [width, depth] = fixture.size->value;
    const bool wide = width > room.width + tape;
    if (!wide && depth <= room.depth + tape) return;
    work.ledger.blame(Mistake{"the " + called(fixture) + " does not fit the " + room.name + " as planned",
                              "the room is then " + in_words(wide ? room.width : room.depth) +
                                  (wide ? " from west to east" : " from south to north"),
                              "see how far its walls move in: room_grows", fixture.size->place,
                              std::nullopt});
}

void blame_overlaps(Work& work, const std::vector<const SurveyFixture*>& fixtures, const Room& room) {
    for (std::size_t i = 0; i < fixtures.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (overlap(as_written(*fixtures[i]), as_written(*fixtures[j])))
                work.ledger.blame(Mistake{"the " + called(*fixtures[i]) + " and the " + called(*fixtures[j]) +
                                              " of the " + room.name + " stand in one place",
                                          {},
                                          "corner counts from the room's south-west corner; write a basin in "
                                          "a vanity as the vanity",
                                          fixtures[i]->corner->place,
                                          fixtures[j]->corner->place});
}

}  // namespace

std::vector<Fixture> build_fixtures(Work& work, const SurveyRoom& written, const Room& room) {
    std::vector<Fixture> fixtures;
    std::vector<const SurveyFixture*> placed;
    for (const SurveyFixture& fixture : written.fixtures) {
        if (!is_complete(work, fixture, room) || !lies_within(work, fixture, written, room)) continue;
        blame_too_large_for_the_planned_room(work, fixture, room);
        fixtures.push_back(standing(work, fixture, written, room));
        placed.push_back(&fixture);
    }
    blame_overlaps(work, placed, room);
    return fixtures;
}

}  // namespace house
