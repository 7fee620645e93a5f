// The parts of a sheet, each read into its part of the survey.
#pragma once

#include "house/survey.hpp"
#include "sheet/table_reader.hpp"

namespace sheet {

void read_house(TableReader& sheet, house::Survey& survey);     // house, site, thermostat, construction
void read_spaces(TableReader& sheet, house::Survey& survey);    // space, ventilation
void read_rooms(TableReader& sheet, house::Survey& survey);     // room, other_rooms
void read_machine(TableReader& sheet, house::Survey& survey);   // heater, blower, cooling, device
void read_ducts(TableReader& sheet, house::Survey& survey);     // duct
void read_framing(TableReader& sheet, house::Survey& survey);   // floor, bay
void read_outlets(TableReader& sheet, house::Survey& survey);   // outlet
void read_readings(TableReader& sheet, house::Survey& survey);  // reading

// The surfaces a room has by a list, read before its windows and doors, which name them.
void read_surfaces(TableReader& room, house::SurveyRoom& into);
house::SurveyGround read_ground(TableReader& table);        // depth of a wall
house::SurveyGround read_floor_ground(TableReader& table);  // and of a floor, or the edge of a slab
// How far a wall moves out; a length with a sign.
house::Maybe<units::Length> read_growth(TableReader& table);
// What a wall faces: one thing.
house::Maybe<std::string> read_faces(TableReader& table);

// What stands on a room's floor; how a door opens: "in, hinged west"; the storey a floor of joists lies
// under: "storey 2".
void read_fixtures(TableReader& room, house::SurveyRoom& into);
house::Maybe<house::SurveySwing> read_swing(TableReader& door);
house::Maybe<int> read_under(TableReader& floor);
inline constexpr WholeRange storeys{1, 4};

// "half" or "30 deg": degrees from open.
house::Maybe<double> read_damper(TableReader& table);
// "3 square" or "2 rounded".
house::Maybe<house::Turns> read_turns(TableReader& table, std::string_view word);

// Blames every name that an earlier room, duct, outlet or window of the same room already has.
void find_repeated_names(const house::Survey& survey, Mistakes& mistakes);

}  // namespace sheet
