// Surfaces a room has by a list: what its four sides, one ceiling and one floor cannot describe. Those that
// face another described room are partitions.cpp's.
#include <algorithm>

#include "house/builders.hpp"
#include "house/names.hpp"

namespace house {
namespace {

bool says_area_twice(const SurveySurface& surface) {
    return surface.area && surface.length && surface.height;
}

units::Area area_of(Work& work, const Room& room, const SurveySurface& surface, const std::string& whose) {
    if (says_area_twice(surface))
        work.ledger.blame(Mistake{"the " + whose + " has its area written twice",
                                  {},
                                  "give the area, or the length and the height",
                                  surface.area->place,
                                  surface.height->place});
    const units::Area area = listed_area(room, surface);
    if (area <= units::Area())
        work.ledger.blame_missing(surface.place, "the area of the " + whose,
                                  kind_of(surface) == SurfaceKind::wall
                                      ? "length = \"8 ft\", or area = \"52 ft2\""
                                      : "area = \"52 ft2\", or its length and its height");
    return area;
}

DefaultId usual_make(const Work& work, SurfaceKind kind, Space beyond) {
    if (beyond == Space::heated_rooms) return DefaultId::partition;
    if (kind == SurfaceKind::slope) return DefaultId::roof_slope;
    if (kind == SurfaceKind::ceiling) return DefaultId::attic_ceiling;
    if (kind == SurfaceKind::floor) return DefaultId::floor_over_unheated;
    return beyond == Space::attic ? DefaultId::knee_wall : usual_wall(work);
}

// Towards the rooms nobody described heat goes only where temperatures differ.
void add_inside(Work& work, Room& room, const Face& face, const Make& make) {
    if (room.winter_indoor == work.house.site.winter_indoor) return;
    const std::string whose = face.name + " of the " + room.name;
    room.surfaces.push_back({SurfaceKind::partition, face.name, face.area, face.beyond,
                             assembly_or(work, make.construction, make.usual, whose)});
}

void build_listed(Work& work, const SurveyRoom& written, Room& room, const SurveySurface& surface) {
    const std::string name =
        work.ledger.required(surface.name, surface.place, "the name of this surface of the " + room.name,
                             "name = \"west knee wall\"");
    const std::string whose = name + " of the " + room.name;
    if (!surface.faces)
        return work.ledger.blame_missing(surface.place, "what the " + whose + " faces",
                                         "faces = \"outdoors\", or faces = \"attic\"");
    const auto space = space_named(surface.faces->value);
    if (!space && !find_named(work.survey.rooms, surface.faces->value))
        return blame_facing(work, *surface.faces);
    Face face;
    face.listed = &surface;
    face.kind = kind_of(surface);
    face.name = name;
    face.place = surface.place;
    face.area = area_of(work, room, surface, whose);
    if (surface.length) face.length = surface.length->value;
    if (surface.height)
        face.height = surface.height->value;
    else if (face.kind == SurfaceKind::wall && !surface.area)
        face.height = room.ceiling;
    if (!space || face.area <= units::Area()) return;  // partitions.cpp, or blamed
    face.beyond = *space;
    const Make make{at_stage(work, surface.construction, surface.becomes),
                    usual_make(work, face.kind, face.beyond), surface.ground};
    if (face.beyond == Space::heated_rooms) return add_inside(work, room, face, make);
    add_face(work, written, room, face, make);
}

// A side that is described as a whole and a surface of the list called alike.
void blame_sides_described_twice(Work& work, const SurveyRoom& written, const Room& room) {
    for (const SurveyWall& wall : written.walls)
        for (const SurveySurface& surface : written.surfaces) {
            if (name_of(surface) != std::string(word(wall.side)) + " wall") continue;
            work.ledger.blame(Mistake{
                "the " + std::string(name_of(surface)) + " of the " + room.name + " is described twice",
                {},
                "describe it under [room.wall." + std::string(word(wall.side)) +
                    "], or its parts as [[room.surface]], each with a name of its own",
                surface.name->place,
                wall.place});
        }
}

}  // namespace

SurfaceKind kind_of(const SurveySurface& surface) {
    return surface.kind ? surface.kind->value : SurfaceKind::wall;
}

units::Area listed_area(const Room& room, const SurveySurface& surface) {
    if (surface.area) return surface.area->value;
    if (!surface.length) return {};
    if (surface.height) return surface.length->value * surface.height->value;
    return kind_of(surface) == SurfaceKind::wall ? surface.length->value * room.ceiling : units::Area();
}

units::Area listed_flat(const Work& work, const SurveyRoom& written, SurfaceKind kind) {
    const SurfaceKind seen_from_there =
        kind == SurfaceKind::floor ? SurfaceKind::ceiling : SurfaceKind::floor;
    units::Area sum;
    std::vector<std::string_view> towards;
    for (const SurveySurface& surface : written.surfaces)
        if (kind_of(surface) == kind) {
            sum += listed_area({}, surface);
            if (surface.faces) towards.push_back(surface.faces->value);
        }
    for (const SurveyRoom& other : work.survey.rooms) {
        if (&other == &written || std::count(towards.begin(), towards.end(), name_of(other)) > 0) continue;
        for (const SurveySurface& surface : other.surfaces)
            if (kind_of(surface) == seen_from_there && surface.faces && written.name &&
                surface.faces->value == written.name->value)
                sum += listed_area({}, surface);
    }
    return sum;
}

void build_listed_surfaces(Work& work, const SurveyRoom& written, Room& room) {
    for (const SurveySurface& surface : written.surfaces) build_listed(work, written, room, surface);
    blame_sides_described_twice(work, written, room);
}

}  // namespace house
