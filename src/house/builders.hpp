// The steps of house/build.cpp, one file each; private to this folder.
#pragma once

#include <string>
#include <variant>

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
Sunlit sunlit(Work& work, const SurveyWindow& window, WallSide side, const std::string& whose);

// rooms.cpp: sizes and temperatures of every room, then its surfaces.
void build_rooms(Work& work);
units::Length wall_length(const Room& room, WallSide side);
units::Area wall_area(const Room& room, WallSide side);

// surfaces.cpp: walls that name what they face, ceiling and floor. openings.cpp: windows and doors in such a
// wall; gives their area. partitions.cpp: what lies between rooms, equal and opposite on both sides.
void build_walls(Work& work, const SurveyRoom& written, Room& room);
bool lies_inside(const Survey& survey, const SurveyRoom& written, WallSide side);
void build_ceiling_and_floor(Work& work, const SurveyRoom& written, Room& room);
units::Area build_openings(Work& work, const SurveyRoom& written, Room& room, WallSide side, Space beyond);
void build_partitions(Work& work);

// constructions.cpp
Assembly assembly_named(Work& work, const Given<std::string>& name);

// machine.cpp: heater, blower, devices. other_rooms.cpp. ducts.cpp. outlets.cpp
void build_other_rooms(Work& work);
void build_machine(Work& work);
void build_ducts(Work& work);
void build_outlets(Work& work);

// What a wall or a window is at this stage: what it becomes in the planned house, else what it is.
inline const Maybe<std::string>& at_stage(const Work& work, const Maybe<std::string>& is,
                                          const Maybe<std::string>& becomes) {
    return work.stage == Stage::planned && becomes ? becomes : is;
}

}  // namespace house
