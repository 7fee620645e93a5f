// The parts of a trunk page, one file each; private to this folder.
#pragma once

#include <string>
#include <vector>

#include "questions/answer_trunk.hpp"
#include "report/cautions.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

struct TrunkView {
    const questions::TrunkAnswer& answer;
    units::System system = units::System::us;

    const house::House& house() const { return answer.house(); }
    std::string outlet() const { return answer.new_outlet().name; }
    std::string room() const { return house().room(answer.new_outlet().room).name; }
    std::string name_of(const std::optional<house::RoomId>& room) const;  // "eight others" where empty
    bool has_before() const { return answer.both.found_is_supplied; }
};

// trunk_verdict.cpp
std::string trunk_headline(const TrunkView& view);
std::string trunk_verdict(const TrunkView& view);

// trunk_machine.cpp: the three parts that are judged, and what the figures rest on.
Note ducts_part(const TrunkView& view);
Note blower_part(const TrunkView& view);
Note heater_part(const TrunkView& view);
Note how_it_was_solved(const TrunkView& view);

// trunk_rooms.cpp, trunk_trials.cpp
Table rooms_table(const TrunkView& view);
Note held_by_dampers(const TrunkView& view);
Note taps_note(const TrunkView& view);
Note old_outlet_note(const TrunkView& view);
Note door_note(const TrunkView& view);
Note readings_note(const TrunkView& view);

Note in_summer_note(const TrunkView& view);     // trunk_summer.cpp
FlowingAir flowing_air(const TrunkView& view);  // trunk_cautions.cpp

}  // namespace report
