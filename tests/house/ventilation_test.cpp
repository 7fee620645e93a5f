#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using units::unit::cfm;

house::SurveyFan fan(double in_cfm, std::optional<house::FanRuns> runs) {
    house::SurveyFan fan;
    fan.place = on_line(150);
    fan.flow = at(151, in_cfm * cfm);
    if (runs) fan.runs = at(152, *runs);
    return fan;
}

TEST(Ventilation, a_silent_sheet_has_none) {
    const house::Ventilation none = planned(one_room()).house.ventilation;
    EXPECT_FALSE(none.runs());
    EXPECT_EQ(none.fans_at_times, 0);
}

TEST(Ventilation, is_that_of_the_house_and_of_fans_that_always_run) {
    house::Survey survey = one_room();
    survey.ventilation = house::SurveyVentilation{on_line(70), at(71, 60 * cfm), at(72, 40 * cfm), {}};
    survey.rooms[0].exhaust_fans = {fan(50, house::FanRuns::always), fan(80, house::FanRuns::at_times),
                                    fan(90, {})};
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_NEAR(built.house.ventilation.supply / cfm, 60, 1e-9);
    EXPECT_NEAR(built.house.ventilation.exhaust / cfm, 90, 1e-9);
    EXPECT_EQ(built.house.ventilation.fans_at_times, 2);
    ASSERT_EQ(built.house.exhaust_fans.size(), 3u);
    EXPECT_EQ(built.house.exhaust_fans[1].room, house::RoomId{0});
    EXPECT_EQ(built.house.exhaust_fans[1].flow, 80 * cfm);
    EXPECT_EQ(built.house.exhaust_fans[0].runs, house::FanRuns::always);
    EXPECT_EQ(built.house.exhaust_fans[2].runs, house::FanRuns::at_times);
}

TEST(Ventilation, heat_is_recovered_between_supply_and_exhaust_only) {
    house::Survey survey = one_room();
    survey.ventilation = house::SurveyVentilation{on_line(70), at(71, 60 * cfm), {}, at(73, 0.7)};
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("73: heat is recovered only between supply and exhaust -> give supply and exhaust "
                    "of the ventilation that recovers heat"));
    survey.ventilation->exhaust = at(72, 60 * cfm);
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_DOUBLE_EQ(planned(survey).house.ventilation.recovery, 0.7);
}

TEST(Ventilation, a_fan_that_always_runs_has_an_airflow_and_none_moves_more_than_a_house_holds) {
    house::Survey survey = one_room();
    survey.rooms[0].exhaust_fans = {fan(50, house::FanRuns::always)};
    survey.rooms[0].exhaust_fans[0].flow.reset();
    EXPECT_THAT(mistakes(survey), ElementsAre("150: the airflow of the exhaust fan of the bath is missing -> "
                                              "write flow = \"50 cfm\""));
    survey.rooms[0].exhaust_fans = {fan(20'000, house::FanRuns::always)};
    EXPECT_THAT(mistakes(survey), ElementsAre("151: that is more air than moves through any house -> at most "
                                              "10,000 cfm is taken; check the unit"));
}

}  // namespace
