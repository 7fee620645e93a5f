// Laws of answer_loads and of its sheet: rooms that are split, mirrored or many.
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "house/mirrored.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/check_sheet.hpp"
#include "questions/sheets.hpp"
#include "sheet/read.hpp"

namespace {

using questions::answer_loads;
using questions::LoadsAnswer;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000; }

constexpr const char* top = R"(sheet = 1
[house]
storeys = 1
air_leakage = "average"
[site]
elevation = "100 m"
winter_outdoor = "-12 C"
winter_indoor = "20 C"
[construction.wall]
u = "1.1 W/m2K"
[heater]
output = "9 kW"
)";

// A room in a row of them, its north wall outdoors with a window in it.
std::string room(const std::string& name, double x, double width, double window, double warm = 20) {
    return fmt::format(R"([[room]]
name = "{}"
corner = ["{:.17g} m", "0 m"]
size = ["{:.17g} m", "4 m"]
ceiling = "2.5 m"
winter_indoor = "{} C"
[room.wall.north]
faces = "outdoors"
construction = "wall"
[[room.window]]
name = "window"
wall = "north"
size = ["{:.17g} m", "1 m"]
u = "2.5 W/m2K"
)",
                       name, x, width, warm, window);
}

LoadsAnswer answer(const std::string& sheet) { return answer_loads(sheets::survey(sheet)); }

RC_GTEST_PROP(LoadsLaws, a_room_split_in_two_loses_the_same, ()) {
    const double width = between(3, 8), part = between(0.3, 0.7), window = between(0.4, 2);
    const LoadsAnswer whole = answer(top + room("den", 0, width, window));
    const LoadsAnswer split = answer(top + room("den", 0, part * width, part * window) +
                                     room("nook", part * width, (1 - part) * width, (1 - part) * window));
    const double sum = split.planned.loss.rooms[0].total.si() + split.planned.loss.rooms[1].total.si();
    RC_ASSERT(std::abs(whole.planned.loss.total.si() - sum) < 1e-7);
    RC_ASSERT(std::abs(whole.planned.loss.total.si() - split.planned.loss.total.si()) < 1e-7);
}

// The same room by its size and sides, or by its floor's area and a list of surfaces.
std::string listed_room(double width, double window) {
    return fmt::format(R"([[room]]
name = "den"
floor_area = "{:.17g} m2"
ceiling = "2.5 m"
winter_indoor = "23 C"
[[room.surface]]
name = "front"
faces = "outdoors"
length = "{:.17g} m"
construction = "wall"
[[room.surface]]
name = "the three inside"
faces = "heated rooms"
area = "{:.17g} m2"
[[room.surface]]
name = "lower ceiling"
kind = "ceiling"
faces = "attic"
area = "{:.17g} m2"
[[room.window]]
name = "window"
wall = "front"
size = ["{:.17g} m", "1 m"]
u = "2.5 W/m2K"
)",
                       4 * width, width, 2.5 * (width + 8), 0.4 * width, window);
}

RC_GTEST_PROP(LoadsLaws, a_room_by_its_size_and_the_same_room_by_a_list_lose_the_same, ()) {
    const double width = between(3, 8), window = between(0.4, 2);
    const auto by_size = answer(top + room("den", 0, width, window, 23)).planned.loss;
    const auto by_list = answer(top + listed_room(width, window)).planned.loss;
    const double loss = by_size.rooms[0].total.si();
    RC_ASSERT(std::abs(by_list.rooms[0].total.si() - loss) <= 1e-12 * loss);
    RC_ASSERT(std::abs(by_list.total.si() - by_size.total.si()) <= 1e-12 * by_size.total.si());
}

RC_GTEST_PROP(LoadsLaws, a_room_turned_a_quarter_loses_the_same, ()) {
    const double width = between(3, 8), window = between(0.4, 2);
    house::Survey survey = sheets::survey(top + room("den", 0, width, window));
    const double as_is = answer_loads(survey).planned.loss.total.si();
    house::SurveyRoom& den = survey.rooms[0];
    std::swap(den.size->value.first, den.size->value.second);
    den.walls[0].side = den.windows[0].wall->value = house::WallSide::east;
    RC_ASSERT(std::abs(answer_loads(survey).planned.loss.total.si() - as_is) <= 1e-12 * as_is);
}

RC_GTEST_PROP(LoadsLaws, a_room_that_grows_loses_as_one_that_was_so_large, ()) {
    const double width = between(3, 8), grows = between(-0.2, 0.2);
    const std::string wall = "[room.wall.north]\n";
    const std::string growing =
        sheets::with(top + room("den", 0, width, 1), wall,
                     fmt::format("[room.wall.east]\nroom_grows = \"{:.17g} m\"\n", grows) + wall);
    const double larger = answer(top + room("den", 0, width + grows, 1)).planned.loss.total.si();
    const LoadsAnswer grown = answer(growing);
    RC_ASSERT(std::abs(grown.planned.loss.total.si() - larger) <= 1e-12 * larger);
    RC_ASSERT(grown.found.has_value());
}

TEST(LoadsLaws, better_glass_never_loses_more) {
    double before = 1e9;
    for (const char* glass : {"single", "single + storm", "double, low-e", "triple, low-e"}) {
        const std::string sheet = sheets::with(top + room("den", 0, 4, 1), "u = \"2.5 W/m2K\"",
                                               fmt::format("glass = \"{}\"", glass));
        const double loss = answer(sheet).planned.loss.total.si();
        EXPECT_LT(loss, before) << glass;
        before = loss;
    }
}

RC_GTEST_PROP(LoadsLaws, warming_one_room_takes_from_the_next_what_the_next_is_given, ()) {
    const double warm = between(20, 26);
    const auto loss = answer(top + room("bath", 0, 3, 1, warm) + room("hall", 3, 3, 1)).planned.loss;
    const auto to_neighbours = [&](const loads::RoomHeatLoss& of) {
        double sum = 0;
        for (const loads::SurfaceLoss& surface : of.surfaces)
            if (surface.to_neighbour && surface.beyond_name != "heated rooms") sum += surface.loss.si();
        return sum;
    };
    RC_ASSERT(std::abs(to_neighbours(loss.rooms[0]) + to_neighbours(loss.rooms[1])) < 1e-9);
}

TEST(LoadsLaws, a_house_of_twelve_rooms_adds_up) {
    std::string sheet = top;
    for (int i = 0; i < 12; ++i) sheet += room(fmt::format("room {}", i + 1), 3.0 * i, 3, 0.5 + 0.1 * i);
    const LoadsAnswer loads = answer(sheet);
    double sum = 0;
    for (const loads::RoomHeatLoss& lost : loads.planned.loss.rooms) sum += lost.total.si();
    EXPECT_EQ(loads.planned.loss.rooms.size(), 12u);
    EXPECT_NEAR(loads.planned.loss.total.si(), sum, 1e-6);
    EXPECT_EQ(loads.weighed.ranges.size(), 13u);
}

TEST(LoadsLaws, a_mirrored_house_loses_the_same) {
    for (const char* name : {"least-sheet", "upstairs-bath", "si-flat-at-1650-m", "attic-bedroom"}) {
        const house::Survey survey = sheets::survey(sheets::a_case(name));
        const LoadsAnswer as_is = answer_loads(survey);
        for (const house::Survey& image :
             {a_survey::mirrored_east_west(survey), a_survey::mirrored_north_south(survey)}) {
            const LoadsAnswer mirrored = answer_loads(image);
            ASSERT_EQ(mirrored.weighed.ranges.size(), as_is.weighed.ranges.size());
            for (std::size_t i = 0; i < as_is.weighed.ranges.size(); ++i) {
                EXPECT_NEAR(mirrored.weighed.ranges[i].value, as_is.weighed.ranges[i].value, 1e-7) << name;
                EXPECT_NEAR(mirrored.weighed.ranges[i].high, as_is.weighed.ranges[i].high, 1e-7) << name;
            }
        }
    }
}

TEST(LoadsLaws, as_warm_outdoors_as_indoors_is_refused_politely) {
    const std::string sheet = sheets::with(top + room("den", 0, 4, 1), "\"-12 C\"", "\"20 C\"");
    const auto read = sheet::read(sheet);
    const auto check = questions::check_sheet(read.survey, read.mistakes);
    ASSERT_EQ(check.mistakes.size(), 1u);
    EXPECT_EQ(check.mistakes[0].text, "outdoors is not colder than indoors on the design night");
    EXPECT_EQ(check.mistakes[0].place.line, 7);
    EXPECT_FALSE(check.mistakes[0].remedy.empty());
}

}  // namespace
