// The steps of house/build.cpp, one file each; private to this folder.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "house/house.hpp"
#include "house/ledger.hpp"
#include "house/survey.hpp"

namespace house {

// What every step reads and writes.
struct Work {
    const Survey& survey;
    Stage stage;
    Ledger& ledger;
    House& house;
};

void build_site(Work& work);  // site.cpp: site, storeys, air leakage

// spaces.cpp: the unheated spaces. One is asked for where something faces it or runs in it, and only then is
// anything assumed of it; once all rooms are there, those in heat balance are built. ventilation.cpp
void ask_for_space(Work& work, Space space, const std::string& used_for);
void build_spaces(Work& work);
void blame_too_much_air(Ledger& ledger, units::Airflow flow, Place place);
void build_ventilation(Work& work);

// summer.cpp: the cooling season, where there is cooling; after the rooms the roof over them.
void build_summer(Work& work);
void build_roof(Work& work);
// looks: degrees clockwise from the plan's north.
Sunlit sunlit(Work& work, const SurveyWindow& window, double looks, const std::string& whose);

// rooms.cpp: sizes and temperatures of every room, then its surfaces. growth: how far the inside face of a
// side moves outwards by this stage; corner_of needs a room that has one.
void build_rooms(Work& work);
units::Length growth(const Work& work, const SurveyRoom& written, WallSide side);
Two corner_of(const Work& work, const SurveyRoom& written);
units::Length wall_length(const Room& room, WallSide side);
units::Area wall_area(const Room& room, WallSide side);

// What a wall, slope, ceiling or floor faces; a face of a room, in which windows and doors may be.
std::optional<Space> space_named(std::string_view text);
void blame_facing(Work& work, const Given<std::string>& faces);
struct Face {
    std::optional<WallSide> side;           // of a wall named by its side
    const SurveySurface* listed = nullptr;  // or a surface of the list
    SurfaceKind kind = SurfaceKind::wall;
    std::string name;
    Place place;
    units::Length length, height;  // 0: not known
    units::Area area;              // openings included
    Space beyond = Space::outdoors;
};

// surfaces.cpp: walls that name what they face, ceiling and floor. listed_surfaces.cpp: those of a list.
// openings.cpp: windows and doors in a face; gives their area. partitions.cpp: what lies between rooms, equal
// and opposite on both sides. add_face: what is left of it beside its openings, as a surface.
void build_walls(Work& work, const SurveyRoom& written, Room& room);
bool lies_inside(const Survey& survey, const SurveyRoom& written, WallSide side);
struct Make {  // refers to the survey
    const Maybe<std::string>& construction;
    DefaultId usual;
    const SurveyGround& ground;
};
void add_face(Work& work, const SurveyRoom& written, Room& room, const Face& face, const Make& make);
DefaultId usual_wall(const Work& work);  // of unknown make, by the year the house was built
void build_ceiling_and_floor(Work& work, const SurveyRoom& written, Room& room);
units::Area build_openings(Work& work, const SurveyRoom& written, Room& room, const Face& face);
std::string window_name(const SurveyWindow& window);
// How far the end that a wall is measured from moves outwards by this stage.
units::Length moved_along(const Work& work, const SurveyRoom& written, WallSide side);
void fit_inside_doors(Work& work, const SurveyRoom& written, const Room& room);
void build_listed_surfaces(Work& work, const SurveyRoom& written, Room& room);
units::Area listed_area(const Room& room, const SurveySurface& surface);  // 0 where the sheet does not tell
SurfaceKind kind_of(const SurveySurface& surface);
// Of the room's ceilings or floors, those that a list describes: its own, or that of the room beyond.
units::Area listed_flat(const Work& work, const SurveyRoom& written, SurfaceKind kind);
void build_partitions(Work& work);

// room_plans.cpp: the plan of each room, after all rooms. fixtures.cpp: what stands on its floor.
// joists_under.cpp: floors of joists by their storey, and what of one lies under a room.
void build_plans(Work& work);
std::vector<Fixture> build_fixtures(Work& work, const SurveyRoom& written, const Room& room);
void blame_misplaced_floors(Work& work);
std::optional<JoistFloor> floor_under(const Work& work, const SurveyRoom& written, const Room& room);
// studs_in.cpp: where the studs of an opened wall stand.
void blame_misplaced_studs(Work& work, const SurveyRoom& written, const Room& room);
void place_studs(const Work& work, const SurveyRoom& written, const SurveyStuds& studs, WallSide side,
                 PlanWall& wall);

// ground.cpp: what lies in the ground or on it, and how cold it is.
units::Temperature ground_temperature(Work& work, const std::string& used_for);
void add_in_the_ground(Work& work, const SurveyRoom& written, Room& room, const Face& face, const Make& make);
void blame_words_of_the_ground(Work& work, const SurveyGround& written, const std::string& what,
                               const Room& room);

// constructions.cpp: is_known: not missing, and not "don't know".
bool is_known(const Maybe<std::string>& name);
Assembly assembly_named(Work& work, const Given<std::string>& name);
Assembly assembly_or(Work& work, const Maybe<std::string>& name, DefaultId usual, const std::string& whose);

// machine.cpp: heater, blower, devices. other_rooms.cpp. ducts.cpp. outlets.cpp
void build_other_rooms(Work& work);
void build_machine(Work& work);
void build_ducts(Work& work);
void build_bays(Work& work);                                           // framing.cpp
void build_bay_pipes(Work& work, const SurveyBay& written, Bay& bay);  // bay_pipes.cpp
inline bool runs_west_east(WallSide side) { return side == WallSide::north || side == WallSide::south; }
inline bool is_first_side(WallSide side) { return side == WallSide::west || side == WallSide::south; }
void build_outlets(Work& work);  // outlets.cpp
void blame_more_free_than_face(Work& work, Place place, const std::string& what, units::Area face);

// readings.cpp. whole_system.cpp: how the ducts leak and the blower yields. ways_out.cpp: by RoomId.
void build_readings(Work& work);
void build_whole_system(Work& work);
std::vector<std::optional<WayOut>> build_ways_out(Work& work);

inline State state_of(const Maybe<State>& written) { return written ? written->value : State::found; }
// Whether a duct or an outlet is there at this stage.
inline bool exists(const Work& work, const Maybe<State>& state) {
    return state_of(state) != (work.stage == Stage::found ? State::added : State::removed);
}

// What a wall or a window is at this stage: what it becomes in the planned house, else what it is.
inline const Maybe<std::string>& at_stage(const Work& work, const Maybe<std::string>& is,
                                          const Maybe<std::string>& becomes) {
    return work.stage == Stage::planned && becomes ? becomes : is;
}

}  // namespace house
