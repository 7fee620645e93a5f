// The parts of a loads page, one file each; private to this folder.
#pragma once

#include <string>
#include <vector>

#include "questions/answer_loads.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

struct LoadsView {
    const questions::LoadsAnswer& answer;
    units::System system = units::System::us;

    const questions::HouseLoads& planned() const { return answer.planned; }
    units::Temperature night() const { return answer.planned.house.site.winter_outdoor; }
    questions::Range house_range() const { return answer.weighed.ranges[answer.house_loss_figure()]; }
    std::size_t only() const { return static_cast<std::size_t>(answer.only->index); }
    bool tells(std::size_t room) const { return !answer.only || only() == room; }
};

Table room_losses(const LoadsView& view, std::size_t room);  // loads_room.cpp
std::string loss_sentence(const LoadsView& view, std::size_t room,
                          const std::string& when);  // loads_room.cpp
std::string below_the_loss(const LoadsView& view,
                           std::size_t room);  // loads_room.cpp: its air, its cold surface
std::string coldest_sentence(const LoadsView& view, std::size_t room);  // loads_warmth.cpp
std::vector<Note> warmth_notes(const LoadsView& view);  // loads_warmth.cpp: warmer rooms, cold surfaces
std::vector<Note> house_notes(const LoadsView& view);   // loads_house.cpp
std::vector<Note> limits_notes(const LoadsView& view);  // loads_limits.cpp
// loads_summer.cpp, where there is cooling
std::string summer_sentence(const LoadsView& view);
Table room_gains(const LoadsView& view, std::size_t room);
Note summer_note(const LoadsView& view);

}  // namespace report
