#include "report/a_place.hpp"

#include "units/unit.hpp"

namespace report_test {
namespace {

using namespace units::unit;
using house::Mount;
using house::WallSide;
using questions::Place;
using registers::Location;
using registers::Stop;
using registers::Where;

house::Box box(double west, double south, double width, double depth) {
    return {west * inch, south * inch, (west + width) * inch, (south + depth) * inch};
}

house::Plan bath_plan() {
    house::Plan plan;
    plan.width = 90 * inch;
    plan.depth = 108 * inch;
    for (const WallSide side : {WallSide::north, WallSide::east, WallSide::south, WallSide::west}) {
        const bool along_east = side == WallSide::north || side == WallSide::south;
        house::PlanWall& wall = plan.walls[static_cast<std::size_t>(side)];
        wall.length = wall.faces_it = along_east ? plan.width : plan.depth;
        if (side == WallSide::north || side == WallSide::west) wall.beyond = house::Space::outdoors;
    }
    plan.windows = {{"north window", WallSide::north, house::Stretch{WallSide::north, 31 * inch, 59 * inch},
                     28 * inch, 42 * inch, 36 * inch}};
    plan.doors = {{WallSide::south, house::Stretch{WallSide::south, 33 * inch, 63 * inch},
                   house::DoorHanging::in, house::DoorSwing{33 * inch, 0 * inch, 30 * inch, true, true}}};
    plan.fixtures = {{house::FixtureKind::tub, "tub", box(0, 46, 30, 60)},
                     {house::FixtureKind::vanity, "vanity", box(69, 34, 21, 36)},
                     {house::FixtureKind::toilet, "toilet", box(62, 78, 28, 20)}};
    plan.floor = house::JoistFloor{house::JoistsRun::north_south,
                                   9.25 * inch,
                                   {{1, 6.5 * inch, 8.25 * inch},
                                    {2, 22.5 * inch, 24.25 * inch},
                                    {3, 38.5 * inch, 42 * inch},
                                    {4, 54.5 * inch, 56.25 * inch},
                                    {5, 70.5 * inch, 72.25 * inch},
                                    {6, 86.5 * inch, 88.25 * inch}}};
    return plan;
}

house::House bath_house() {
    house::House house;
    house.name = "Tannery Row";
    house.built = 1924;
    house::Room room;
    room.name = "bath";
    room.width = 90 * inch;
    room.depth = 108 * inch;
    room.ceiling = 98 * inch;
    room.plan = bath_plan();
    house.rooms = {room};
    house::Duct run;
    run.name = "new bath run";
    run.state = house::State::added;
    house.ducts = {run};
    return house;
}

Location location(Mount mount, Where where, std::optional<WallSide> wall, const house::Box& face) {
    Location made;
    made.mount = mount;
    made.where = where;
    made.wall = wall;
    made.face = face;
    made.middle = {(face.west + face.east) / 2, (face.south + face.north) / 2};
    if (wall)
        made.along =
            *wall == WallSide::north || *wall == WallSide::south ? made.middle.east : made.middle.north;
    return made;
}

struct Air {
    double gives, needs, arrives, reaches;  // cfm, F
};

questions::PlaceFigures figures(const Air& air, double run, int turns) {
    questions::PlaceFigures made;
    made.trial.pipe = house::Round{6 * inch};
    made.trial.needs = ducts::Holding{units::MassFlow(0.03), fahrenheit(air.arrives), air.needs * cfm};
    made.trial.gives = made.trial.carries = air.gives * cfm;
    made.trial.arrives = fahrenheit(air.arrives);
    made.trial.reaches = fahrenheit(air.reaches);
    made.run = made.led = run * foot;
    made.turns = turns;
    made.lost_on_the_way = 120 * watt;
    made.face_speed = 320 * foot_per_minute;
    made.warm.throw_length = 5 * foot;
    return made;
}

Place built(Location location, const questions::PlaceFigures& figures) {
    return {std::move(location), figures, questions::RuledOut::no};
}

Place stopped(Location location, const registers::Stopped& by) {
    location.stopped = by;
    return {std::move(location), std::nullopt, questions::RuledOut::stopped};
}

Place under_the_window() {
    Location under = location(Mount::floor, Where::under_window, WallSide::north, box(44, 102, 10, 4));
    under.name = "north window";
    under.off_centre = 4 * inch;
    questions::PlaceFigures made = figures({63, 52, 120, 77}, 17, 2);
    made.washes = true;
    made.warm.throw_length = 6.2 * foot;
    made.warm.at_glass = registers::AgainstTheSheet{units::Velocity(0.6),
                                                    units::Velocity(0.4),
                                                    registers::Momentum(0.02),
                                                    registers::Momentum(0.01),
                                                    0.8,
                                                    true};
    made.from_water = 14 * inch;
    made.water = "tub";
    return built(under, made);
}

Place toe_kick() {
    Location kick = location(Mount::toe_kick, Where::toe_kick, WallSide::east, box(69, 46, 2, 12));
    kick.name = "vanity";
    questions::PlaceFigures made = figures({64, 52, 121, 77}, 13, 2);
    made.from_water = 32 * inch;
    made.water = "toilet";
    return built(kick, made);
}

Place in_the_ceiling() {
    questions::PlaceFigures made = figures({55, 57, 114, 72}, 26, 3);
    made.warm.from_high_up = registers::FromHighUp{registers::WarmAir::stays_up, 9 * foot, 5 * foot};
    Place place = built(location(Mount::ceiling, Where::ceiling, std::nullopt, box(40, 51, 10, 6)), made);
    place.ruled_out = questions::RuledOut::stays_up;
    return place;
}

std::vector<Place> bath_locations() {
    Location west_of = location(Mount::floor, Where::beside_window, WallSide::north, box(19, 102, 10, 4));
    west_of.name = "north window";
    west_of.off_centre = -21 * inch;
    Location east_of = west_of;
    east_of.face = box(61, 102, 10, 4);
    east_of.middle = {66 * inch, 104 * inch};
    east_of.along = 66 * inch;
    east_of.off_centre = 21 * inch;
    return {under_the_window(),
            stopped(west_of, {Stop::fixture, "tub", 0}),
            stopped(east_of, {Stop::joist, "", 5}),
            stopped(location(Mount::floor, Where::outside_wall, WallSide::west, box(2, 18, 4, 10)),
                    {Stop::joist, "", 1}),
            stopped(location(Mount::low_wall, Where::outside_wall, WallSide::west, box(0, 18, 1, 10)),
                    {Stop::shallow_wall, "", 0}),
            toe_kick(),
            built(location(Mount::low_wall, Where::inside_wall, WallSide::east, box(89, 12, 1, 10)),
                  figures({66, 51, 122, 78}, 11, 1)),
            stopped(location(Mount::floor, Where::inside_wall, WallSide::south, box(43, 2, 10, 4)),
                    {Stop::door_swing, "", 0}),
            in_the_ceiling()};
}

questions::FallingAir falling(double glass, double sweats, double speed, double share) {
    questions::FallingAir air;
    air.window = "north window";
    air.glass = fahrenheit(glass);
    air.sweats_above = sweats;
    air.distance = 26 * inch;
    air.at = "tub";
    air.speed = speed * foot_per_minute;
    air.air = fahrenheit(66);
    air.dissatisfied = share;
    return air;
}

questions::Weighed weighed() {
    const auto asked = [](double gives, double needs) {
        return questions::Asked{{(gives * cfm).si(), (needs * cfm).si()}, "under the window"};
    };
    questions::Weighed made;
    made.weights = {{{house::DefaultId::filter_drop, {"the filter"}}, asked(66, 52), asked(58, 52)}};
    made.ranges = {{(58 * cfm).si(), (63 * cfm).si(), (66 * cfm).si()},
                   {(50 * cfm).si(), (52 * cfm).si(), (54 * cfm).si()}};
    return made;
}

}  // namespace

questions::PlaceAnswer bath_places() {
    questions::PlaceAnswer answer;
    answer.house = bath_house();
    answer.outlet.name = "new bath register";
    answer.outlet.state = house::State::added;
    answer.size = house::Round{6 * inch};
    answer.fittings = {
        {"side takeoff, straight", {}}, {"round elbow 90, adjustable", {}}, {"floor boot, end entry", {}}};
    answer.on_time = 0.82;
    answer.falling = {falling(50, 0.49, 32, 0.14)};
    answer.falling_before = {falling(38, 0.31, 45, 0.26)};
    answer.window_side = questions::WindowSide::useful;
    answer.window_side_before = questions::WindowSide::needed;
    answer.places = bath_locations();
    answer.chosen = answer.chosen_before = 0;
    house::Outlet old;
    old.name = "old bath outlet";
    old.mount = Mount::floor;
    answer.now = {{old.name, old, 31 * cfm, fahrenheit(112), fahrenheit(66)}};
    answer.weighed = weighed();
    return answer;
}

}  // namespace report_test
