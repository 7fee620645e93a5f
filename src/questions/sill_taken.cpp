#include <algorithm>

#include "questions/place.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

house::PlanWindow* window_named(HouseAtWork& at, house::RoomId room, const std::string& name) {
    auto& windows = at.house.rooms[static_cast<std::size_t>(room.index)].plan->windows;
    const auto found = std::find_if(windows.begin(), windows.end(),
                                    [&](const house::PlanWindow& window) { return window.name == name; });
    return found == windows.end() ? nullptr : &*found;
}

std::optional<std::size_t> chosen_with(const RunToRoom& run, const HouseAtWork& at,
                                       const std::vector<Place>& places,
                                       const std::vector<FallingAir>& falling) {
    RunToRoom there{at, run.outlet, run.from, run.base, run.size, run.to_size, run.longest};
    std::vector<Washes> washes;
    for (const Place& place : places)
        washes.push_back(place.figures ? washes_by(place_figures(there, place.location, falling))
                                       : Washes::no);
    return choose_place(places, window_side(falling), washes).chosen;
}

}  // namespace

std::optional<SillTaken> sill_taken(const RunToRoom& run, const std::vector<Place>& places,
                                    const std::vector<FallingAir>& falling,
                                    std::optional<std::size_t> chosen) {
    const FallingAir* most = felt_most(falling);
    if (!most) return std::nullopt;
    HouseAtWork other = run.planned;
    const house::RoomId room = other.house.outlets[static_cast<std::size_t>(run.outlet)].room;
    house::PlanWindow* window = window_named(other, room, most->window);
    if (!window || window->sill) return std::nullopt;
    SillTaken taken{window->name, sill_of(*window), {}};
    for (const units::Length sill : {lowest_usual_sill, highest_usual_sill}) {
        window->sill = sill;
        if (chosen_with(run, other, places, falling) != chosen) taken.moves_the_choice.push_back(sill);
    }
    return taken;
}

}  // namespace questions
