// "Where should the register go?": every place in the room, its figures side by side, and the choice.
//
// The run that the sheet plans to the room (or, without one, the one that is there) is led to each place by
// the plain way (routes/plain_way.hpp): longer or shorter than the sheet's by the difference of both ways, an
// elbow more or less, the boot that the mount asks for. Flow, need, arrival and what the room reaches are
// then asked for as `branch` does, so that a place carried over to the sheet gives the same air.
//
// The choice has no score. What cannot be built, what brings too little air, what leaves its warm air under
// the ceiling, what leaves too little insulation in an outside wall, and what is loud is ruled out. Of the
// rest, where the falling air of a window is felt (registers/ falling_air.hpp and draught.hpp: more than 20 %
// of people needed, 10 to 20 % useful; our own proposal), the places that wash it come first; then more air
// beyond the need, then the shorter run, each only as far as it is told apart. Equals are said to be equals.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "house/survey.hpp"
#include "questions/place.hpp"
#include "questions/weigh_assumptions.hpp"

namespace questions {

struct OutletNow {
    std::string name;
    house::Outlet outlet;
    units::Airflow airflow;
    units::Temperature arrives, reaches;
};

struct PlaceAnswer {
    house::House house;  // as planned, with the run
    house::RoomId room;
    house::Outlet outlet;          // that is led to the places
    bool run_of_the_sheet = true;  // false: the run that is there, led on
    house::Shape size;
    std::vector<house::CatalogueName> fittings;  // of the chosen run, to paste
    double on_time = 0;
    std::vector<FallingAir> falling;         // by window, as planned
    std::vector<FallingAir> falling_before;  // as found
    WindowSide window_side = WindowSide::indifferent, window_side_before = WindowSide::indifferent;
    std::vector<Place> places;
    std::optional<std::size_t> chosen;         // empty: every place is ruled out
    std::vector<std::size_t> as_good;          // others that figures do not tell apart from it
    std::optional<std::size_t> chosen_before;  // with walls and windows as found; may be the same
    std::vector<OutletNow> now;                // as found
    std::optional<PlaceInSummer> summer;
    std::vector<std::string> centred;  // windows that stand in the middle of their walls for want of a word
    std::optional<SillTaken> sill_taken;
    Weighed weighed;  // supply air, need of the chosen place, m3/s
    const Place& choice() const { return places[*chosen]; }
};

struct PlaceQuestion {
    std::string room;
    std::string window;                 // only at this one
    std::optional<house::Mount> mount;  // only these; a high wall only so
};

// Throws house::CannotAnswer where the room has no plan or no run could be led to it, and house::AskedWrongly
// for an unknown room or window. The survey must be free of mistakes (questions/check_sheet).
PlaceAnswer compare_places(const house::Survey& survey, const PlaceQuestion& question);
// The same with every assumption weighed.
PlaceAnswer answer_place(const house::Survey& survey, const PlaceQuestion& question);

}  // namespace questions
