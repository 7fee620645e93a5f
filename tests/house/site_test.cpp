#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::LeakageClass;

using Leakage = std::variant<LeakageClass, units::LeakageTest>;

TEST(Site, what_the_sheet_gives_is_taken_as_it_stands) {
    house::Survey survey = one_room();
    survey.house_name = at(22, "Tannery Row");
    survey.built = at(23, 1924);
    survey.site.elevation->value = m(1650);
    const house::House house = planned(survey).house;
    EXPECT_EQ(house.name, "Tannery Row");
    EXPECT_EQ(house.built, 1924);
    EXPECT_EQ(house.storeys, 1);
    EXPECT_EQ(house.site.elevation, m(1650));
    EXPECT_EQ(house.site.winter_outdoor, units::unit::celsius(-10));
    EXPECT_EQ(house.site.winter_indoor, units::unit::celsius(20));
}

TEST(Site, the_written_word_decides_how_leakage_is_shared_whatever_it_is_weighed_at) {
    const auto sharing = [](const Leakage& leakage, house::Level level) {
        house::Survey survey = one_room();
        survey.air_leakage = at(24, leakage);
        const auto weighed =
            house::Defaults().with(DefaultId::leakage_leaky, level).with(DefaultId::leakage_average, level);
        return planned(survey, weighed).house.leakage_sharing;
    };
    using house::LeakageSharing;
    for (const house::Level level : {house::Level::value, house::Level::low, house::Level::high}) {
        EXPECT_EQ(sharing(LeakageClass::leaky, level), LeakageSharing::by_surface);
        EXPECT_EQ(sharing(LeakageClass::average, level), LeakageSharing::by_volume);
    }
    const auto test = [](double ach50) { return units::LeakageTest{ach50 * units::unit::per_hour}; };
    EXPECT_EQ(sharing(test(14), house::Level::value), LeakageSharing::by_surface);
    EXPECT_EQ(sharing(test(13.9), house::Level::value), LeakageSharing::by_volume);
}

TEST(Site, storeys_and_outdoor_temperature_have_to_be_given) {
    house::Survey survey = one_room();
    survey.storeys.reset();
    survey.site.winter_outdoor.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("10: the winter design temperature outdoors is missing -> write winter_outdoor = \"3 F\" "
                    "under [site]: the local 99 % figure",
                    "20: the number of storeys of the house is missing -> write storeys = 2 under [house]"));
}

TEST(Site, outdoors_has_to_be_colder_than_indoors) {
    house::Survey survey = one_room();
    for (double celsius : {20.0, 25.0}) {
        survey.site.winter_outdoor->value = units::unit::celsius(celsius);
        EXPECT_THAT(
            mistakes(survey),
            ElementsAre(
                "11: outdoors is not colder than indoors on the design night -> give the 99 % heating "
                "temperature of the place"));
    }
}

TEST(Site, elevation_and_indoor_temperature_are_defaults_where_nobody_gave_them) {
    house::Survey survey = one_room();
    survey.site.elevation.reset();
    survey.site.winter_indoor.reset();
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::elevation), ElementsAre("the site"));
    EXPECT_THAT(taken_for(built, DefaultId::winter_indoor), ElementsAre("the house"));
    EXPECT_NEAR(built.house.site.elevation.si(), 152.4, 1e-9);
    EXPECT_NEAR(units::unit::in_fahrenheit(built.house.site.winter_indoor), 70, 1e-9);
}

TEST(Site, the_thermostats_room_gives_the_houses_temperature) {
    house::Survey survey = one_room();
    survey.site.winter_indoor.reset();
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(21));
    survey.thermostat_room = at(30, "bath");
    const house::Built built = planned(survey);
    EXPECT_EQ(built.house.site.winter_indoor, units::unit::celsius(21));
    EXPECT_THAT(taken_for(built, DefaultId::winter_indoor), IsEmpty());
}

TEST(Site, the_thermostat_hangs_in_a_room_of_the_sheet_or_in_the_rest) {
    house::Survey survey = one_room();
    survey.thermostat_room = at(30, "bth");
    EXPECT_THAT(mistakes(survey), ElementsAre("30: no room is called 'bth' (did you mean 'bath'?)"));
    survey.thermostat_room = at(30, "heated rooms");
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Site, a_blower_door_test_counts_before_any_class) {
    house::Survey survey = one_room();
    const units::LeakageTest test{9 * units::unit::per_hour};
    survey.air_leakage = house::Given<Leakage>{test, on_line(24)};
    const house::Built built = planned(survey);
    EXPECT_EQ(std::get<units::LeakageTest>(built.house.air_leakage).at_50_pascal, test.at_50_pascal);
    for (DefaultId id : {DefaultId::leakage_tight, DefaultId::leakage_average, DefaultId::leakage_leaky})
        EXPECT_THAT(taken_for(built, id), IsEmpty());
}

TEST(Site, each_class_of_leakage_has_its_row) {
    const std::pair<LeakageClass, DefaultId> rows[] = {
        {LeakageClass::tight, DefaultId::leakage_tight},
        {LeakageClass::good, DefaultId::leakage_good},
        {LeakageClass::average, DefaultId::leakage_average},
        {LeakageClass::leaky, DefaultId::leakage_leaky},
        {LeakageClass::very_leaky, DefaultId::leakage_very_leaky}};
    for (const auto& [leakage, id] : rows) {
        house::Survey survey = one_room();
        survey.air_leakage = house::Given<Leakage>{leakage, on_line(24)};
        const house::Built built = planned(survey);
        EXPECT_THAT(taken_for(built, id), ElementsAre("the house, as the sheet says"));
        EXPECT_EQ(std::get<double>(built.house.air_leakage), default_row(id).value);
    }
}

TEST(Site, without_a_word_on_leakage_the_year_tells) {
    house::Survey survey = one_room();
    EXPECT_THAT(taken_for(planned(survey), DefaultId::leakage_leaky),
                ElementsAre("the house, of unknown age"));
    survey.built = at(23, 1969);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::leakage_leaky),
                ElementsAre("the house, from the year it was built"));
    survey.built = at(23, 1970);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::leakage_average),
                ElementsAre("the house, from the year it was built"));
}

}  // namespace
