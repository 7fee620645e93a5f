// Windows and doors in the outside walls of a room.
#include "house/builders.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace house {
namespace {

std::string window_name(const SurveyWindow& window) {
    return window.name ? window.name->value
                       : std::string(window.wall ? word(window.wall->value) : "") + " window";
}

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

constexpr units::Length tape{0.003};  // measuring slack

struct Span {  // along a wall, from its west or south end; or up it, from the floor
    units::Length from, to;
};

Span span_of(units::Length centre, units::Length width) { return {centre - width / 2, centre + width / 2}; }

bool overlap(Span a, Span b) { return a.from + tape < b.to && b.from + tape < a.to; }

// Whether a window or door so placed lies within its wall; blames where not.
bool fits(Work& work, const Room& room, WallSide side, const Given<units::Length>& centre,
          units::Length width, const std::string& name) {
    const Span span = span_of(centre.value, width);
    const units::Length wall = wall_length(room, side);
    if (wall.si() <= 0) return true;  // the room's size is to blame
    if (span.from >= -tape && span.to <= wall + tape) return true;
    const bool past = span.to > wall + tape;
    work.ledger.blame(Mistake{"the " + name + " of the " + room.name + " does not fit its wall",
                              in_words(width) + " wide, it " +
                                  (past ? "ends at " + in_words(span.to) + "; the wall is " + in_words(wall)
                                        : "begins " + in_words(-span.from) + " before the wall"),
                              "measure from the wall's west or south end to the middle", centre.place,
                              std::nullopt});
    return false;
}

// A transom stands over its window: only sills that are both known tell them apart.
bool one_above_the_other(const SurveyWindow& a, const SurveyWindow& b) {
    if (!a.sill || !b.sill) return false;
    return !overlap({a.sill->value, a.sill->value + a.size->value.second},
                    {b.sill->value, b.sill->value + b.size->value.second});
}

void blame_overlapping_windows(Work& work, const SurveyRoom& written, const Room& room, WallSide side) {
    const auto& windows = written.windows;
    for (std::size_t i = 0; i < windows.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto &a = windows[i], &b = windows[j];
            if (!a.wall || !b.wall || a.wall->value != side || b.wall->value != side) continue;
            if (!a.centre || !b.centre || !a.size || !b.size) continue;
            if (overlap(span_of(a.centre->value, a.size->value.first),
                        span_of(b.centre->value, b.size->value.first)) &&
                !one_above_the_other(a, b))
                work.ledger.blame(Mistake{"two windows of the " + room.name + " lie over each other",
                                          {},
                                          "measure each from the wall's west or south end to its middle",
                                          a.centre->place,
                                          b.centre->place});
        }
}

Assembly glass_of(Work& work, const SurveyWindow& window, const std::string& whose) {
    const auto& glass = at_stage(work, window.glass, window.becomes);
    const bool changed = work.stage == Stage::planned && window.becomes.has_value();
    if (window.u && !changed) return window.u->value;
    if (glass) return CatalogueName{glass->value, glass->place};
    return units::Transmittance(work.ledger.take(DefaultId::window, whose));
}

units::Area build_window(Work& work, const SurveyWindow& window, Room& room, WallSide side, Space beyond) {
    const std::string name = window_name(window), whose = name + " of the " + room.name;
    const Two size = work.ledger.required(window.size, window.place, "the size of the " + whose,
                                          "size = [\"2 ft 4 in\", \"3 ft 6 in\"]: width, then height");
    if (window.centre) fits(work, room, side, *window.centre, size.first, name);
    const units::Length top = (window.sill ? window.sill->value : units::Length()) + size.second;
    const bool wall_known = wall_area(room, side).si() > 0;
    if (window.size && wall_known &&
        (top > room.ceiling + tape || size.first > wall_length(room, side) + tape))
        work.ledger.blame(window.size->place, "the " + whose + " is larger than its wall",
                          "the wall is " + in_words(wall_length(room, side)) + " long and " +
                              in_words(room.ceiling) + " high");
    const units::Area area = size.first * size.second;
    room.surfaces.push_back({SurfaceKind::window, name, area, beyond, glass_of(work, window, whose)});
    if (work.house.summer && beyond == Space::outdoors)
        room.surfaces.back().sun = sunlit(work, window, side, whose);
    return area;
}

units::Area build_door(Work& work, const SurveyDoor& door, Room& room, WallSide side, Space beyond) {
    const std::string name = std::string(word(side)) + " door", whose = name + " of the " + room.name;
    constexpr units::Length usual_height = 80 * units::unit::inch;  // a stock door, 6 ft 8 in
    const units::Length width =
        work.ledger.required(door.width, door.place, "the width of the " + whose, "width = \"2 ft 8 in\"");
    if (door.centre) fits(work, room, side, *door.centre, width, name);
    if (door.height && door.height->value > room.ceiling + tape)
        work.ledger.blame(door.height->place, "the " + whose + " is higher than its wall",
                          "the wall is " + in_words(room.ceiling) + " high");
    const units::Area area = width * (door.height ? door.height->value : usual_height);
    const units::Transmittance u =
        door.u ? door.u->value : units::Transmittance(work.ledger.take(DefaultId::door, whose));
    room.surfaces.push_back({SurfaceKind::door, name, area, beyond, u});
    return area;
}

}  // namespace

units::Area build_openings(Work& work, const SurveyRoom& written, Room& room, WallSide side, Space beyond) {
    units::Area open;
    for (const SurveyWindow& window : written.windows)
        if (window.wall && window.wall->value == side) open += build_window(work, window, room, side, beyond);
    for (const SurveyDoor& door : written.doors)
        if (door.wall && door.wall->value == side) open += build_door(work, door, room, side, beyond);
    blame_overlapping_windows(work, written, room, side);
    return open;
}

}  // namespace house
