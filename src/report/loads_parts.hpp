// The parts of a loads page, one file each; private to this folder.
#pragma once

#include "questions/answer_loads.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

struct LoadsView {
    const questions::LoadsAnswer& answer;
    units::System system = units::System::us;

    const questions::HouseLoads& planned() const { return answer.planned; }
    units::Temperature night() const { return answer.planned.house.site.winter_outdoor; }
    questions::Range house_range() const { return answer.weighed.ranges.back(); }
};

Table room_losses(const LoadsView& view, std::size_t room);  // loads_room.cpp
std::vector<Note> house_notes(const LoadsView& view);        // loads_house.cpp

}  // namespace report
