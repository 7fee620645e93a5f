#include "house/whole_system.hpp"

#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::BlowerKind;
using house::DefaultId;
using house::DeviceKind;
using house::DuctSealing;
using house::Extent;
using units::unit::cfm;
using units::unit::inch_wc;

house::Built whole(const house::Survey& survey, const house::Defaults& defaults = {}) {
    return build(survey, defaults, Stage::planned, Extent::whole_system);
}

house::Survey with_a_run() {
    house::Survey survey = one_room();
    add_duct(survey, "run");
    add_outlet(survey, "register", "run");
    return survey;
}

house::SurveyDuctLeakage& add_leakage(house::Survey& to) {
    to.duct_leakage = house::SurveyDuctLeakage{};
    to.duct_leakage->place = on_line(600);
    return *to.duct_leakage;
}

TEST(WholeSystem, is_there_and_assumed_only_for_a_question_about_all_of_it) {
    const house::Built branch = planned(with_a_run()), all = whole(with_a_run());
    EXPECT_FALSE(branch.house.whole_system);
    EXPECT_EQ(branch.extent, Extent::branch);
    EXPECT_THAT(taken_for(branch, DefaultId::supply_leakage), IsEmpty());
    EXPECT_THAT(taken_for(branch, DefaultId::undercut), IsEmpty());
    ASSERT_TRUE(all.house.whole_system);
    EXPECT_EQ(all.extent, Extent::whole_system);
    EXPECT_THAT(taken_for(all, DefaultId::supply_leakage), ElementsAre("the supply ducts"));
    EXPECT_THAT(taken_for(all, DefaultId::return_leakage), ElementsAre("the return ducts"));
    EXPECT_THAT(taken_for(all, DefaultId::blower_fall), ElementsAre("the blower, without its maker's table"));
    EXPECT_THAT(taken_for(all, DefaultId::undercut), ElementsAre("the door of the bath"));
    EXPECT_EQ(all.assumptions.size(), branch.assumptions.size() + 4);
}

TEST(WholeSystem, is_built_with_the_table_it_is_given) {
    const house::Defaults leaky = house::Defaults().with(DefaultId::return_leakage, house::Level::high);
    const auto shares =
        std::get<house::LeakageShares>(whole(with_a_run(), leaky).house.whole_system->leakage);
    EXPECT_EQ(shares.supply, 0.10);
    EXPECT_EQ(shares.return_side, 0.25);
}

TEST(WholeSystem, its_mistakes_count_for_every_question) {
    house::Survey survey = with_a_run();
    add_leakage(survey).at = at(601, units::Pressure(25));
    EXPECT_EQ(mistakes(planned(survey)), mistakes(whole(survey)));
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(DuctLeakage, is_a_word_or_shares_or_a_test) {
    house::Survey survey = with_a_run();
    add_leakage(survey).sealing = at(601, DuctSealing::joints);
    house::Built built = whole(survey);
    EXPECT_EQ(std::get<DuctSealing>(built.house.whole_system->leakage), DuctSealing::joints);
    EXPECT_THAT(taken_for(built, DefaultId::supply_leakage), IsEmpty());

    add_leakage(survey).supply = at(602, 0.2);
    built = whole(survey);
    const auto shares = std::get<house::LeakageShares>(built.house.whole_system->leakage);
    EXPECT_EQ(shares.supply, 0.2);
    EXPECT_EQ(shares.return_side, 0.12);
    EXPECT_THAT(taken_for(built, DefaultId::supply_leakage), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::return_leakage), ElementsAre("the return ducts"));

    add_leakage(survey).measured = at(603, 160 * cfm);
    survey.duct_leakage->at = at(604, units::Pressure(25));
    const auto test = std::get<house::DuctTest>(whole(survey).house.whole_system->leakage);
    EXPECT_EQ(test.flow, 160 * cfm);
    EXPECT_EQ(test.at.si(), 25);
}

TEST(DuctLeakage, is_written_in_one_way) {
    house::Survey survey = with_a_run();
    add_leakage(survey).sealing = at(601, DuctSealing::all);
    survey.duct_leakage->supply = at(602, 0.7);
    survey.duct_leakage->measured = at(603, 160 * cfm);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("600: how the ducts leak is written in more than one way -> keep one of: sealing, "
                    "supply with return, measured with at",
                    "600: the pressure of the test of the ducts is missing -> write at = \"25 Pa\""));
    add_leakage(survey).supply = at(602, 0.7);
    EXPECT_THAT(mistakes(survey), ElementsAre("602: no house is heated by supply ducts that lose so much -> "
                                              "write the share of the blower's airflow, up to 60 %"));
}

TEST(DuctLeakage, is_less_the_more_is_sealed_and_less_of_a_round_duct) {
    for (bool round : {false, true})
        for (int i = 1; i < 4; ++i)
            EXPECT_LT(house::leakage_class(static_cast<DuctSealing>(i), round),
                      house::leakage_class(static_cast<DuctSealing>(i - 1), round));
    EXPECT_EQ(house::leakage_class(DuctSealing::unsealed, false), 48);
    EXPECT_EQ(house::leakage_class(DuctSealing::unsealed, true), 30);
}

house::SurveyBlower& add_blower(house::Survey& to) {
    to.blower = house::SurveyBlower{};
    to.blower->place = on_line(900);
    return *to.blower;
}

TEST(BlowerKind, a_table_needs_no_guess_of_how_it_falls) {
    house::Survey survey = with_a_run();
    add_blower(survey).points = {at(901, house::BlowerPoint{0.2 * inch_wc, 1000 * cfm}),
                                 at(902, house::BlowerPoint{0.5 * inch_wc, 900 * cfm})};
    const house::Built built = whole(survey);
    EXPECT_EQ(built.house.blower.kind, BlowerKind::falling);
    EXPECT_EQ(built.house.whole_system->blower_fall, 0);
    EXPECT_THAT(taken_for(built, DefaultId::blower_fall), IsEmpty());
}

TEST(BlowerKind, a_motor_that_holds_its_airflow_does_so_up_to_a_pressure) {
    house::Survey survey = with_a_run();
    add_blower(survey).kind = at(901, BlowerKind::constant_airflow);
    house::Built built = whole(survey);
    EXPECT_EQ(built.house.blower.kind, BlowerKind::constant_airflow);
    EXPECT_NEAR(built.house.whole_system->constant_airflow_limit / inch_wc, 0.8, 1e-12);
    EXPECT_THAT(taken_for(built, DefaultId::constant_airflow_limit), ElementsAre("the blower"));
    EXPECT_EQ(built.house.whole_system->blower_fall, 0);
    survey.blower->up_to = at(902, 0.9 * inch_wc);
    EXPECT_NEAR(whole(survey).house.whole_system->constant_airflow_limit / inch_wc, 0.9, 1e-12);
    survey.blower->kind->value = BlowerKind::falling;
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("902: only a motor that holds its airflow does so up to a pressure -> write kind = "
                    "\"constant airflow\", or leave up_to out"));
}

house::SurveyDevice device(int line, DeviceKind kind) {
    house::SurveyDevice device;
    device.place = on_line(line);
    device.kind = at(line + 1, kind);
    return device;
}

TEST(Zones, their_devices_are_listed_and_lose_only_what_the_sheet_says) {
    house::Survey survey = with_a_run();
    survey.devices = {device(950, DeviceKind::zone_damper), device(960, DeviceKind::bypass),
                      device(970, DeviceKind::filter)};
    survey.devices[0].name = at(952, "upstairs damper");
    house::House house = planned(survey).house;
    ASSERT_EQ(house.zone_devices.size(), 2u);
    EXPECT_EQ(house.zone_devices[0].name, "upstairs damper");
    EXPECT_EQ(house.zone_devices[1].kind, DeviceKind::bypass);
    EXPECT_EQ(house.zone_devices[1].place, on_line(960));
    ASSERT_EQ(house.devices.size(), 1u);
    EXPECT_EQ(house.devices[0].name, "filter");
    survey.devices[0].drop = at(953, 0.05 * inch_wc);
    house = planned(survey).house;
    ASSERT_EQ(house.devices.size(), 2u);
    EXPECT_EQ(house.devices[0].name, "upstairs damper");
}

TEST(Zones, a_bypass_loses_nothing_and_no_table_holds_either) {
    house::Survey survey = with_a_run();
    survey.devices = {device(950, DeviceKind::bypass)};
    survey.devices[0].drop = at(952, 0.05 * inch_wc);
    add_blower(survey).includes = {at(901, DeviceKind::zone_damper)};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("901: no maker's table contains a zone damper -> describe it as a [[device]]",
                            "952: the air of a bypass goes round the ducts -> leave its drop out"));
}

TEST(Thermostat, is_in_a_room_of_the_sheet_or_in_one_nobody_described) {
    house::Survey survey = with_a_run();
    EXPECT_FALSE(planned(survey).house.thermostat);
    survey.thermostat_room = at(30, "bath");
    EXPECT_EQ(planned(survey).house.thermostat, house::RoomId{0});
    survey.thermostat_room = at(30, "heated rooms");
    EXPECT_FALSE(planned(survey).house.thermostat);
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.thermostat_room = at(30, "bsth");
    EXPECT_THAT(mistakes(survey), ElementsAre("30: no room is called 'bsth' (did you mean 'bath'?)"));
}

TEST(Dampers, are_open_where_the_sheet_is_silent) {
    house::Survey survey = with_a_run();
    EXPECT_EQ(planned(survey).house.ducts[0].damper, 0);
    EXPECT_EQ(planned(survey).house.outlets[0].damper, 0);
    survey.ducts[0].damper = at(1010, 30.0);
    survey.outlets[0].damper = at(2010, 45.0);
    EXPECT_EQ(planned(survey).house.ducts[0].damper, 30);
    EXPECT_EQ(planned(survey).house.outlets[0].damper, 45);
    EXPECT_EQ(found(survey).house.ducts[0].damper, 30);
}

}  // namespace
