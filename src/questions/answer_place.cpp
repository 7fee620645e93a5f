#include "questions/answer_place.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"
#include "house/lone_windows.hpp"
#include "house/run_to_room.hpp"
#include "questions/asked_outlet.hpp"
#include "questions/asked_room.hpp"
#include "questions/register_face.hpp"
#include "questions/try_outlet.hpp"
#include "units/nearest_word.hpp"

namespace questions {
namespace {

void check_windows(const house::Room& room, const std::string& asked) {
    std::vector<std::string_view> names;
    for (const house::PlanWindow& window : room.plan->windows) {
        if (!window.stretch)
            throw house::CannotAnswer({}, "the sheet does not say where the " + window.name +
                                              " is: write its centre along the wall");
        names.push_back(window.name);
    }
    if (asked.empty() || std::find(names.begin(), names.end(), asked) != names.end()) return;
    const std::string nearest = units::nearest_word(asked, names);
    throw house::AskedWrongly({}, "no window of the " + room.name + " is called '" + asked + "'" +
                                      (nearest.empty() ? "" : "; did you mean '" + nearest + "'?"));
}

int position_of(const house::House& house, house::OutletId id) {
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == id) return static_cast<int>(i);
    return -1;
}

// A floor register lies with its long side along the wall.
house::Rectangular long_side_first(const house::Rectangular& face) {
    return {std::max(face.width, face.height), std::min(face.width, face.height)};
}

struct SpotInPlan {
    const house::Plan& plan;
    const house::Rectangular& face;

    registers::Spot operator()(const house::Nowhere&) const { return {0.5 * plan.width, 0.5 * plan.depth}; }
    registers::Spot operator()(const house::AtPoint& point) const {
        return {point.from_west, point.from_south};
    }
    registers::Spot operator()(const house::OnWall& on) const {
        return registers::at_wall(plan, on.wall, on.centre, face);
    }
    registers::Spot operator()(const house::UnderWindow& under) const {
        for (const house::PlanWindow& window : plan.windows)
            if (window.name == under.window && window.stretch)
                return registers::at_wall(plan, window.wall,
                                          0.5 * (window.stretch->from + window.stretch->to), face);
        return (*this)(house::Nowhere{});
    }
};

std::vector<FallingAir> falling_in(const HouseAtWork& at, house::RoomId room) {
    if (!at.house.room(room).plan) return {};
    return falling_at_windows(at.house, at.loss.rooms[static_cast<std::size_t>(room.index)]);
}

std::vector<Place> places_of(const RunToRoom& run, const std::vector<registers::Location>& locations,
                             const std::vector<FallingAir>& falling) {
    std::vector<Place> places;
    for (const registers::Location& location : locations) {
        Place place{location, {}, RuledOut::no};
        if (!location.stopped) place.figures = place_figures(run, location, falling);
        place.ruled_out = ruled_out(place);
        places.push_back(std::move(place));
    }
    return places;
}

std::vector<Washes> washed(const std::vector<Place>& places) {
    std::vector<Washes> washes;
    for (const Place& place : places)
        washes.push_back(place.figures ? washes_by(*place.figures) : Washes::no);
    return washes;
}

// The same jets against the air that falls off the glass as it was found.
std::vector<Washes> washed_before(const std::vector<Place>& places, const std::vector<FallingAir>& falling,
                                  const RunToRoom& run) {
    std::vector<Washes> washes;
    for (const Place& place : places)
        washes.push_back(place.figures ? washes_by(place_figures(run, place.location, falling)) : Washes::no);
    return washes;
}

std::vector<OutletNow> outlets_now(const BothHouses& both, house::RoomId room) {
    std::vector<OutletNow> now;
    if (!both.found_is_supplied) return now;
    const AtWork work = at_work(both.found, std::nullopt);
    const house::House& house = both.found.house;
    for (std::size_t i = 0; i < house.outlets.size(); ++i) {
        const house::Outlet& outlet = house.outlets[i];
        if (outlet.room != room || !house.is_supply(outlet)) continue;
        now.push_back({outlet.name, outlet, airflow_of(both.found, work, static_cast<int>(i)),
                       work.night.arrivals[i], work.night.rooms[static_cast<std::size_t>(room.index)]});
    }
    return now;
}

// Air and need at the chosen place, and which place would be chosen.
Asked asked(const std::vector<Place>& places, std::size_t at, WindowSide side) {
    const BranchTrial& trial = places[at].figures->trial;
    const Choice choice = choose_place(places, side, washed(places));
    return {{trial.gives.si(), trial.needs ? trial.needs->airflow.si() : 0},
            choice.chosen ? std::to_string(*choice.chosen) : std::string("none"),
            {}};
}

void choose(PlaceAnswer& answer, const RunToRoom& run) {
    const Choice choice = choose_place(answer.places, answer.window_side, washed(answer.places));
    answer.chosen = choice.chosen;
    answer.as_good = choice.as_good;
    answer.chosen_before = choice.chosen;
    if (!answer.falling_before.empty() && answer.window_side_before != answer.window_side)
        answer.chosen_before = choose_place(answer.places, answer.window_side_before,
                                            washed_before(answer.places, answer.falling_before, run))
                                   .chosen;
    if (!answer.chosen) return;
    const house::House led = led_to(run, answer.choice().location);
    answer.fittings = led.duct(answer.outlet.duct)->fittings;
}

// What is the same for every place.
struct Ground {
    house::SurveyWithRun run;
    std::vector<std::string> centred;  // windows
    BothHouses both;
    house::RoomId room;
    house::Outlet outlet;
    house::Shape size;
    bool to_size = true;
    double on_time = 0;
    std::vector<registers::Location> locations;

    house::Rectangular face;  // of a floor register, long side first
    units::Length longest;    // that it may be

    RunToRoom led(const HouseAtWork& planned) const {
        const house::Plan& plan = *planned.house.room(room).plan;
        return {planned,
                position_of(planned.house, outlet.id),
                registers::inner_corner(plan),
                std::visit(SpotInPlan{plan, face}, outlet.spot),
                size,
                to_size,
                longest};
    }
};

Ground ground_of(house::Survey survey, const PlaceQuestion& question) {
    Ground ground;
    ground.centred = house::centre_lone_windows(survey, question.room);
    const house::House asked_of = house::build(survey, {}, house::Stage::planned).house;
    const house::RoomId id = asked_room(asked_of, question.room);
    const house::Room& room = asked_of.room(id);
    if (!room.plan)
        throw house::CannotAnswer(
            {}, "the " + room.name + " has no plan: give its corner, its size and walls by their sides");
    check_windows(room, question.window);
    ground.room = id;
    ground.run = house::with_run_to(std::move(survey), question.room);
    ground.both = both_houses(ground.run.survey, {}, first_try);
    const house::House& house = ground.both.planned.house;
    ground.outlet = asked_outlet(house, ground.run.outlet);
    const BranchSizing sizing = size_branch(house, ground.outlet.id, ducts::Stock::us,
                                            std::make_shared<const HouseAtWork>(ground.both.planned));
    ground.size = sizing.choice().pipe;
    ground.to_size = sizing.to_size;
    ground.on_time = sizing.setting.on_time.share;
    ground.longest = registers::longest_between_joists(*room.plan);
    const RunEnd end = run_end(house, ground.outlet, sizing.choice());
    ground.face =
        long_side_first(register_face(ground.outlet, house::Mount::floor, end, ground.longest).face);
    const house::Rectangular wall_face =
        register_face(ground.outlet, house::Mount::low_wall, on_a_stack(end)).face;
    ground.locations = registers::locations(
        room, {ground.face, wall_face, question.mount, question.window, registers::inner_corner(*room.plan)});
    stop_in_shallow_walls(house.room(id), ground.locations);
    return ground;
}

PlaceAnswer compared(const Ground& ground) {
    const BothHouses& both = ground.both;
    PlaceAnswer answer;
    answer.house = both.planned.house;
    answer.room = ground.room;
    answer.outlet = ground.outlet;
    answer.run_of_the_sheet = ground.run.of_the_sheet;
    answer.size = ground.size;
    answer.on_time = ground.on_time;
    answer.falling = falling_in(both.planned, answer.room);
    answer.window_side = answer.window_side_before = window_side(answer.falling);
    if (both.found_is_supplied) {
        answer.falling_before = falling_in(both.found, answer.room);
        answer.window_side_before = window_side(answer.falling_before);
    }
    const RunToRoom run = ground.led(both.planned);
    answer.places = places_of(run, ground.locations, answer.falling);
    choose(answer, run);
    answer.summer = place_in_summer(run, answer.places);
    answer.centred = ground.centred;
    answer.sill_taken = sill_taken(run, answer.places, answer.falling, answer.chosen);
    answer.now = outlets_now(both, answer.room);
    return answer;
}

}  // namespace

PlaceAnswer compare_places(const house::Survey& survey, const PlaceQuestion& question) {
    return compared(ground_of(survey, question));
}

PlaceAnswer answer_place(const house::Survey& survey, const PlaceQuestion& question) {
    const Ground ground = ground_of(survey, question);
    PlaceAnswer answer = compared(ground);
    if (!answer.chosen) return answer;
    answer.weighed = weigh_assumptions(
        ground.both.assumptions, asked(answer.places, *answer.chosen, answer.window_side),
        [&](const house::Defaults& defaults) -> std::optional<Asked> {
            const BothHouses there = both_houses(ground.run.survey, defaults, first_try);
            const std::vector<FallingAir> falling = falling_in(there.planned, ground.room);
            const std::vector<Place> places = places_of(ground.led(there.planned), ground.locations, falling);
            return asked(places, *answer.chosen, window_side(falling));
        });
    return answer;
}

}  // namespace questions
