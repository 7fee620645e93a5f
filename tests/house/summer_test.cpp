#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::WallSide;

house::Survey cooled_room() {
    house::Survey survey = one_room();
    cool(survey);
    add_wall(survey.rooms[0], 110, WallSide::west, "outdoors");
    add_window(survey.rooms[0], 120, WallSide::west, m(1.5), {m(1), m(1.2)});
    return survey;
}

const house::Sunlit& sun_of(const house::Built& built) {
    return *find_surface(built.house.rooms[0], "window")->sun;
}

TEST(Summer, is_known_only_where_there_is_cooling) {
    house::Survey survey = cooled_room();
    EXPECT_TRUE(planned(survey).house.summer);
    survey.cooling.reset();
    const house::Built built = planned(survey);
    EXPECT_FALSE(built.house.summer);
    EXPECT_FALSE(find_surface(built.house.rooms[0], "window")->sun);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::daily_range), IsEmpty());
}

TEST(Summer, cooling_needs_latitude_and_outdoor_temperature) {
    house::Survey survey = cooled_room();
    survey.site.latitude.reset();
    survey.site.summer_outdoor.reset();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("10: the latitude, which cooling needs, is missing -> write latitude = \"42.1 "
                            "deg\" under [site]",
                            "10: the summer design temperature outdoors, which cooling needs, is missing -> "
                            "write summer_outdoor = \"88 F\" under [site]: the local 1 % figure"));
}

TEST(Summer, a_latitude_lies_on_earth_and_where_the_method_holds) {
    house::Survey survey = cooled_room();
    survey.site.latitude->value.degrees = 95;
    EXPECT_THAT(mistakes(survey), ElementsAre("14: latitude lies between -90 and 90 -> write degrees north "
                                              "of the equator, south below zero"));
    survey.site.latitude->value.degrees = 61;
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("14: heat gain is worked out from 20 to 60 degrees of latitude, north or south -> "
                    "write the nearest of these, or kind = \"none\" under [cooling]"));
    survey.cooling.reset();
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.site.latitude->value.degrees = -95;
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(Summer, temperatures_have_to_make_sense) {
    house::Survey survey = cooled_room();
    survey.site.summer_outdoor->value = units::unit::celsius(-10);
    EXPECT_THAT(mistakes(survey), ElementsAre("15: summer is not warmer than winter -> give the 1 % cooling "
                                              "temperature of the place"));
    survey.site.summer_outdoor->value = units::unit::celsius(30);
    survey.site.summer_wet_bulb = at(16, units::unit::celsius(31));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("16: the wet bulb is warmer than the air -> give the wet bulb that goes with the "
                            "summer design temperature"));
    survey.site.summer_wet_bulb.reset();
    survey.site.summer_indoor = at(17, units::unit::fahrenheit(57));
    EXPECT_THAT(mistakes(survey), ElementsAre("17: no coil cools a house to this temperature -> as "
                                              "summer_indoor = \"75 F\""));
}

TEST(Summer, what_nobody_said_is_assumed) {
    const house::Built built = planned(cooled_room());
    for (const DefaultId id : {DefaultId::summer_indoor, DefaultId::daily_range, DefaultId::north,
                               DefaultId::bedrooms, DefaultId::roof_absorptance, DefaultId::solar_gain,
                               DefaultId::summer_moisture, DefaultId::cooling_supply})
        EXPECT_EQ(taken_for(built, id).size(), 1u) << house::default_row(id).what;
    EXPECT_THAT(taken_for(built, DefaultId::shade_closed), IsEmpty());
}

TEST(Summer, a_window_faces_where_its_wall_does) {
    house::Survey survey = cooled_room();
    EXPECT_EQ(sun_of(planned(survey)).azimuth, 270);
    survey.north = at(24, units::Angle{15});
    EXPECT_EQ(sun_of(planned(survey)).azimuth, 285);
    EXPECT_EQ(sun_of(planned(survey)).height, m(1.2));
}

TEST(Summer, new_glass_takes_nothing_from_the_old) {
    house::Survey survey = cooled_room();
    house::SurveyWindow& window = survey.rooms[0].windows[0];
    window.glass = at(121, "single");
    window.becomes = at(122, "double, low-e");
    window.shgc = at(123, 0.6);
    EXPECT_EQ(sun_of(found(survey)).shgc, 0.6);
    EXPECT_EQ(sun_of(planned(survey)).shgc, 0);
    EXPECT_EQ(sun_of(planned(survey)).glass->text, "double, low-e");
}

TEST(Summer, a_shade_closed_or_an_overhang_above_needs_its_shade_or_overhang) {
    house::Survey survey = cooled_room();
    survey.rooms[0].windows[0].shade_closed = at(124, 0.3);
    survey.rooms[0].windows[0].overhang_above = at(125, m(0.1));
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("124: the shade of the window of the bath is missing -> write shade = \"roller, white\"",
                    "125: the overhang over the window of the bath is missing -> write overhang = \"1 ft "
                    "6 in\", its depth"));
    survey.rooms[0].windows[0].shade = at(126, "roller, white");
    survey.rooms[0].windows[0].overhang = at(127, m(0.5));
    const house::Built built = planned(survey);
    EXPECT_EQ(sun_of(built).shade_closed, 0.3);
    EXPECT_EQ(sun_of(built).overhang, m(0.5));
}

}  // namespace
