// The parts of a page about places, one file each; private to this folder.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "questions/answer_place.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

struct PlaceView {
    const questions::PlaceAnswer& answer;
    units::System system = units::System::us;

    const house::Room& room() const { return answer.house.room(answer.room); }
    const questions::Place& place(std::size_t index) const { return answer.places[index]; }
    // Those that can be built, in the answer's order: the table's rows, numbered from 1.
    std::vector<std::size_t> rows() const;
    std::size_t number_of(std::size_t index) const;
    bool is_chosen(std::size_t index) const { return answer.chosen == index; }
    // The window whose falling air is felt most; nullptr where none falls.
    const questions::FallingAir* felt_most() const { return questions::felt_most(answer.falling); }
};

// place_words.cpp
std::string where_words(const PlaceView& view, const registers::Location& location);     // in a table
std::string where_sentence(const PlaceView& view, const registers::Location& location);  // "in the floor ..."
// "4 in east of its centre"; empty where it stands in the middle.
std::string off_centre_words(const PlaceView& view, const registers::Location& location);
std::string stopped_words(const registers::Location& location);  // "joist 3 is in the way of the boot"
// As near as a plan tells it: to the inch or centimetre; to the foot or tenth of a metre.
std::string to_the_inch(units::Length length, units::System system);
std::string to_the_foot(units::Length length, units::System system);
std::string ruled_out_words(questions::RuledOut ruled_out);
std::string stands_at(const questions::FallingAir& falling, units::System system);  // "at the tub"

// place_verdict.cpp
std::string place_headline(const PlaceView& view);
std::string place_verdict(const PlaceView& view);

// place_table.cpp
Table place_table(const PlaceView& view);
Note told_apart_note(const PlaceView& view, const Table& table);  // what "same" means there
Note same_everywhere_note(const PlaceView& view);                 // what the table leaves out

// place_summer.cpp
Note summer_note(const PlaceView& view);

// place_glass.cpp, place_notes.cpp, place_carry.cpp
Note glass_note(const PlaceView& view);
Note ruled_out_note(const PlaceView& view);
Note not_possible_note(const PlaceView& view);
Note framing_note(const PlaceView& view);
Note now_note(const PlaceView& view);
Note wet_feet_note(const PlaceView& view);
Note on_the_way_note(const PlaceView& view);
Note outside_wall_note(const PlaceView& view);
Note trust_note(const PlaceView& view);
Note carry_over_note(const PlaceView& view);

}  // namespace report
