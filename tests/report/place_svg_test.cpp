// The drawing of a room and its places: that it can be read by anything that reads SVG, shows every place,
// and needs no colour.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>

#include "report/a_place.hpp"
#include "report/drawings.hpp"
#include "units/unit.hpp"

namespace {

using namespace report_test;
using testing::HasSubstr;
using testing::Not;
using units::System;

std::string drawn(const questions::PlaceAnswer& answer) { return report::place_svg(answer, System::us); }

std::size_t count(const std::string& text, const std::string& pattern) {
    const std::regex expression(pattern);
    return static_cast<std::size_t>(
        std::distance(std::sregex_iterator(text.begin(), text.end(), expression), std::sregex_iterator()));
}

// Every tag that opens is shut in its order; what is between holds no sign of XML.
bool is_well_formed(const std::string& svg) {
    std::vector<std::string> open;
    for (std::size_t at = svg.find('<'); at != std::string::npos; at = svg.find('<', at + 1)) {
        const std::size_t end = svg.find('>', at);
        const std::size_t next = svg.find('<', at + 1);
        if (end == std::string::npos || (next != std::string::npos && next < end)) return false;
        const std::string tag = svg.substr(at + 1, end - at - 1);
        if (tag.back() == '/') continue;
        if (tag[0] != '/') {
            open.push_back(tag.substr(0, tag.find(' ')));
            continue;
        }
        if (open.empty() || open.back() != tag.substr(1)) return false;
        open.pop_back();
    }
    return open.empty();
}

TEST(PlaceSvg, is_well_formed_and_the_same_each_time) {
    for (const System system : {System::us, System::si}) {
        const std::string svg = report::place_svg(bath_places(), system);
        EXPECT_TRUE(is_well_formed(svg));
        EXPECT_EQ(svg, report::place_svg(bath_places(), system));
        EXPECT_THAT(svg, Not(HasSubstr("nan")));
        EXPECT_THAT(svg, Not(HasSubstr("inf")));
        EXPECT_THAT(svg, Not(HasSubstr("\"?\"")));
    }
}

TEST(PlaceSvg, shows_each_place_by_its_number_and_the_others_as_crosses) {
    const std::string svg = drawn(bath_places());
    for (int number = 1; number <= 4; ++number)
        EXPECT_EQ(count(svg, "<g id=\"place-" + std::to_string(number) + "\""), 1u) << number;
    EXPECT_THAT(svg, Not(HasSubstr("place-5")));
    EXPECT_EQ(count(svg, "class=\"chosen\""), 1u);
    EXPECT_THAT(svg, HasSubstr("<g id=\"place-1\" class=\"chosen\">"));
    const std::size_t start = svg.find("<g id=\"not-possible\">");
    EXPECT_EQ(count(svg.substr(start, svg.find("</g>", start) - start), "<line "), 10u);
}

TEST(PlaceSvg, is_to_scale) {
    // 9 ft by 7 ft 6 in on paper 490 wide: 65.33 px a foot; the tub is 30 by 60 in.
    EXPECT_THAT(drawn(bath_places()), HasSubstr("width=\"163.3\" height=\"326.7\""));
}

TEST(PlaceSvg, shows_the_studs_of_an_opened_wall_and_says_what_they_are) {
    EXPECT_THAT(drawn(bath_places()), Not(HasSubstr("stud of an opened wall")));
    questions::PlaceAnswer answer = bath_places();
    const std::size_t before = count(drawn(answer), "<rect");
    auto& wall = answer.house.rooms[static_cast<std::size_t>(answer.room.index)].plan->walls[0];
    wall.studs = {{1, units::Length(-0.02), units::Length(0.02)},
                  {2, units::Length(0.38), units::Length(0.42)}};
    const std::string svg = drawn(answer);
    EXPECT_THAT(svg, HasSubstr("stud of an opened wall"));
    EXPECT_EQ(count(svg, "<rect"), before + 3);  // two studs and the legend's
    EXPECT_TRUE(is_well_formed(svg));
}

TEST(PlaceSvg, names_windows_and_fixtures_and_numbers_joists) {
    const std::string svg = drawn(bath_places());
    for (const char* name : {">north window</text>", ">tub</text>", ">vanity</text>", ">toilet</text>",
                             ">3</text>", ">6</text>"})
        EXPECT_THAT(svg, HasSubstr(name));
}

TEST(PlaceSvg, needs_no_colour_and_no_small_print) {
    const std::string svg = drawn(bath_places());
    const std::regex colour("#([0-9a-f])([0-9a-f])([0-9a-f])\\b");
    for (auto at = std::sregex_iterator(svg.begin(), svg.end(), colour); at != std::sregex_iterator(); ++at) {
        EXPECT_EQ((*at)[1], (*at)[2]);
        EXPECT_EQ((*at)[2], (*at)[3]);
    }
    const std::regex size("font-size=\"([0-9.]+)\"");
    for (auto at = std::sregex_iterator(svg.begin(), svg.end(), size); at != std::sregex_iterator(); ++at)
        EXPECT_GE(std::stod((*at)[1]), 11);
}

TEST(PlaceSvg, writes_any_name) {
    questions::PlaceAnswer answer = bath_places();
    house::Room& room = answer.house.rooms[0];
    room.name = "kids' <bath> & \"den\" \x01\xff";
    room.plan->windows[0].name = "F\xc3\xbc\xc3\x9f</text>";
    room.plan->fixtures[1].name = "grandmother's chest of drawers & towels";
    const std::string svg = drawn(answer);
    EXPECT_TRUE(is_well_formed(svg));
    EXPECT_THAT(svg, HasSubstr("kids' &lt;bath&gt; &amp; &quot;den&quot;  ?: places for the register"));
    EXPECT_THAT(svg, HasSubstr("F\xc3\xbc\xc3\x9f&lt;/text&gt;"));
    EXPECT_THAT(svg, HasSubstr(">a</text>"));
    EXPECT_THAT(svg, HasSubstr("chest of drawers"));
}

TEST(PlaceSvg, draws_a_room_with_nothing_in_it) {
    questions::PlaceAnswer answer = bath_places();
    house::Plan& plan = *answer.house.rooms[0].plan;
    plan.windows[0].stretch.reset();
    plan.doors[0] = {house::WallSide::south, std::nullopt, std::nullopt, std::nullopt};
    plan.fixtures.clear();
    plan.floor.reset();
    answer.places.clear();
    answer.chosen.reset();
    EXPECT_TRUE(is_well_formed(drawn(answer)));
    answer.house.rooms[0].plan.reset();
    EXPECT_EQ(drawn(answer), "");
}

TEST(PlaceSvg, writes_no_number_over_another) {
    questions::PlaceAnswer answer = bath_places();
    const questions::Place place = answer.places[0];
    answer.places.clear();
    for (int i = 0; i < 8; ++i) {
        answer.places.push_back(place);
        registers::Location& location = answer.places.back().location;
        location.middle.east = (10 + 4 * i) * units::unit::inch;
        location.face.west = (5 + 4 * i) * units::unit::inch;
        location.face.east = (15 + 4 * i) * units::unit::inch;
    }
    const std::string svg = drawn(answer);
    const std::regex circle(
        "<g id=\"place-[^<]*<rect[^<]*<line[^<]*<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"");
    std::vector<std::pair<double, double>> middles;
    for (auto at = std::sregex_iterator(svg.begin(), svg.end(), circle); at != std::sregex_iterator(); ++at)
        middles.emplace_back(std::stod((*at)[1]), std::stod((*at)[2]));
    ASSERT_EQ(middles.size(), 8u);
    for (std::size_t i = 0; i < middles.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_GE(std::hypot(middles[i].first - middles[j].first, middles[i].second - middles[j].second),
                      22)
                << i << " and " << j;
}

}  // namespace
