// Windows and doors in the outside walls of a room.
#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace house {

std::string window_name(const SurveyWindow& window) {
    return window.name      ? window.name->value
           : window.surface ? window.surface->value + " window"
                            : std::string(window.wall ? word(window.wall->value) : "") + " window";
}

units::Length moved_along(const Work& work, const SurveyRoom& written, WallSide side) {
    return growth(work, written, runs_west_east(side) ? WallSide::west : WallSide::south);
}

namespace {

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

constexpr units::Length tape{0.003};  // measuring slack

struct Span {  // along a wall, from its west or south end; or up it, from the floor
    units::Length from, to;
};

Span span_of(units::Length centre, units::Length width) { return {centre - width / 2, centre + width / 2}; }

bool overlap(Span a, Span b) { return a.from + tape < b.to && b.from + tape < a.to; }

struct Opening {
    std::string name;
    units::Length width;
    units::Length moved;  // its centre, where the room grows at the end it is measured from
};

// Whether a window or door so placed lies within its wall; blames where not.
bool fits(Work& work, const Room& room, const Face& face, const Given<units::Length>& centre,
          const Opening& opening) {
    const Span span = span_of(centre.value + opening.moved, opening.width);
    const units::Length wall = face.length;
    if (wall.si() <= 0) return true;  // not known, or the room's size is to blame
    if (span.from >= -tape && span.to <= wall + tape) return true;
    const bool past = span.to > wall + tape;
    work.ledger.blame(Mistake{"the " + opening.name + " of the " + room.name + " does not fit its wall",
                              in_words(opening.width) + " wide, it " +
                                  (past ? "ends at " + in_words(span.to) + "; the wall is " + in_words(wall)
                                        : "begins " + in_words(-span.from) + " before the wall"),
                              face.side ? "measure from the wall's west or south end to the middle"
                                        : "measure from the end of the wall its length begins at",
                              centre.place, std::nullopt});
    return false;
}

// A transom stands over its window: only sills that are both known tell them apart.
bool one_above_the_other(const SurveyWindow& a, const SurveyWindow& b) {
    if (!a.sill || !b.sill) return false;
    return !overlap({a.sill->value, a.sill->value + a.size->value.second},
                    {b.sill->value, b.sill->value + b.size->value.second});
}

template <class Thing>
bool is_in(const Thing& opening, const Face& face) {
    if (face.listed) return opening.surface && name_of(*face.listed) == opening.surface->value;
    return opening.wall && face.side == opening.wall->value;
}

void blame_overlapping_windows(Work& work, const SurveyRoom& written, const Room& room, const Face& face) {
    const auto& windows = written.windows;
    for (std::size_t i = 0; i < windows.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto &a = windows[i], &b = windows[j];
            if (!is_in(a, face) || !is_in(b, face)) continue;
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
    if (is_known(glass)) return CatalogueName{glass->value, glass->place};
    return units::Transmittance(work.ledger.take(DefaultId::window, whose));
}

// Which way a face looks, clockwise from the plan's north; asked only where the sun matters.
double looks(Work& work, const Face& face, const Room& room) {
    constexpr double quarter_turn = 90;  // sides are numbered clockwise from the plan's north
    if (face.side) return quarter_turn * static_cast<int>(*face.side);
    return work.ledger
        .required(face.listed->looks, face.place,
                  "which way the " + face.name + " of the " + room.name + " looks, which cooling needs,",
                  "looks = \"southwest\" or looks = \"225 deg\"")
        .degrees;
}

units::Area build_window(Work& work, const SurveyWindow& window, Room& room, const Face& face,
                         units::Length moved) {
    const std::string name = window_name(window), whose = name + " of the " + room.name;
    const Two size = work.ledger.required(window.size, window.place, "the size of the " + whose,
                                          "size = [\"2 ft 4 in\", \"3 ft 6 in\"]: width, then height");
    if (window.centre) fits(work, room, face, *window.centre, {name, size.first, moved});
    const units::Length top = (window.sill ? window.sill->value : units::Length()) + size.second;
    const bool wall_known = face.length.si() > 0 && face.height.si() > 0;
    if (window.size && wall_known && (top > face.height + tape || size.first > face.length + tape))
        work.ledger.blame(
            window.size->place, "the " + whose + " is larger than its wall",
            "the wall is " + in_words(face.length) + " long and " + in_words(face.height) + " high");
    const units::Area area = size.first * size.second;
    room.surfaces.push_back({SurfaceKind::window, name, area, face.beyond, glass_of(work, window, whose)});
    const bool flat = face.kind != SurfaceKind::wall;
    if (work.house.summer && face.beyond == Space::outdoors) {
        room.surfaces.back().sun = sunlit(work, window, flat ? 0 : looks(work, face, room), whose);
        room.surfaces.back().sun->flat = flat;
    }
    return area;
}

units::Area build_door(Work& work, const SurveyDoor& door, Room& room, const Face& face,
                       units::Length moved) {
    const std::string name = (face.side ? std::string(word(*face.side)) : face.name) + " door",
                      whose = name + " of the " + room.name;
    constexpr units::Length usual_height = 80 * units::unit::inch;  // a stock door, 6 ft 8 in
    const units::Length width =
        work.ledger.required(door.width, door.place, "the width of the " + whose, "width = \"2 ft 8 in\"");
    if (door.centre) fits(work, room, face, *door.centre, {name, width, moved});
    if (door.height && face.height.si() > 0 && door.height->value > face.height + tape)
        work.ledger.blame(door.height->place, "the " + whose + " is higher than its wall",
                          "the wall is " + in_words(face.height) + " high");
    const units::Area area = width * (door.height ? door.height->value : usual_height);
    const units::Transmittance u =
        door.u ? door.u->value : units::Transmittance(work.ledger.take(DefaultId::door, whose));
    room.surfaces.push_back({SurfaceKind::door, name, area, face.beyond, u});
    return area;
}

}  // namespace

units::Area build_openings(Work& work, const SurveyRoom& written, Room& room, const Face& face) {
    const units::Length shift = face.side ? moved_along(work, written, *face.side) : units::Length();
    units::Area open;
    for (const SurveyWindow& window : written.windows)
        if (is_in(window, face)) open += build_window(work, window, room, face, shift);
    for (const SurveyDoor& door : written.doors)
        if (is_in(door, face)) open += build_door(work, door, room, face, shift);
    blame_overlapping_windows(work, written, room, face);
    return open;
}

void fit_inside_doors(Work& work, const SurveyRoom& written, const Room& room) {
    for (const SurveyDoor& door : written.doors) {
        if (!door.wall || !door.centre || !door.width) continue;
        const WallSide side = door.wall->value;
        if (!lies_inside(work.survey, written, side)) continue;  // fitted with its wall
        Face face;
        face.side = side;
        face.length = wall_length(room, side);
        fits(work, room, face, *door.centre,
             {std::string(word(side)) + " door", door.width->value, moved_along(work, written, side)});
    }
}

}  // namespace house
