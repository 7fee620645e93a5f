#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::DeviceKind;
using house::HeaterKind;
using units::unit::fahrenheit_degree;
using units::unit::inch_wc;

house::Survey with_heater() {
    house::Survey survey = one_room();
    survey.heater = house::SurveyHeater{};
    survey.heater->place = on_line(800);
    survey.heater->kind = at(801, HeaterKind::furnace);
    survey.heater->input = at(802, units::Power(20'000));
    survey.heater->efficiency = at(803, 0.9);
    survey.heater->rise = at(804, std::pair(40 * fahrenheit_degree, 70 * fahrenheit_degree));
    survey.heater->max_static = at(805, 0.8 * inch_wc);
    return survey;
}

house::Survey with_blower(const std::vector<std::pair<double, double>>& in_wc_and_cfm) {
    house::Survey survey = with_heater();
    survey.blower = house::SurveyBlower{};
    survey.blower->place = on_line(900);
    int line = 901;
    for (const auto& [pressure, flow] : in_wc_and_cfm)
        survey.blower->points.push_back(
            at(line++, house::BlowerPoint{pressure * inch_wc, flow * units::unit::cfm}));
    return survey;
}

house::SurveyDevice& add_device(house::Survey& to, DeviceKind kind, double drop_in_wc) {
    const int line = 950 + 10 * static_cast<int>(to.devices.size());
    house::SurveyDevice device;
    device.place = on_line(line);
    device.kind = at(line + 1, kind);
    device.drop = at(line + 2, drop_in_wc * inch_wc);
    to.devices.push_back(device);
    return to.devices.back();
}

double output(const house::Built& built) { return std::get<units::Power>(built.house.heater.capacity).si(); }

TEST(Machine, output_is_input_times_efficiency_or_as_stated) {
    house::Survey survey = with_heater();
    EXPECT_DOUBLE_EQ(output(planned(survey)), 18'000);
    survey.heater->output = at(806, units::Power(17'000));
    EXPECT_DOUBLE_EQ(output(planned(survey)), 17'000);
    survey.heater->output.reset();
    survey.heater->efficiency.reset();
    EXPECT_DOUBLE_EQ(output(planned(survey)), 16'000);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::heater_efficiency), ElementsAre("the heater"));
}

TEST(Machine, all_an_electric_heater_takes_becomes_heat) {
    house::Survey survey = with_heater();
    survey.heater->kind = at(807, HeaterKind::electric);
    survey.heater->efficiency.reset();
    EXPECT_DOUBLE_EQ(output(planned(survey)), 20'000);
    EXPECT_TRUE(taken_for(planned(survey), DefaultId::heater_efficiency).empty());
}

TEST(Machine, the_input_of_a_heat_pump_is_not_its_output) {
    house::Survey survey = with_heater();
    survey.heater->kind = at(807, HeaterKind::heat_pump);
    ASSERT_EQ(planned(survey).mistakes.size(), 1u);
    EXPECT_EQ(planned(survey).mistakes[0].text, "the input of a heat pump does not tell what it gives");
    survey.heater->output = at(806, units::Power(9'000));
    EXPECT_TRUE(planned(survey).mistakes.empty());
}

TEST(Machine, a_heat_pump_gives_less_in_the_cold_than_its_plate_says) {
    house::Survey survey = with_heater();
    survey.heater->kind = at(807, HeaterKind::heat_pump);
    survey.heater->output = at(806, units::Power(9'000));
    EXPECT_NEAR(planned(survey).house.heater.output_lost_per_kelvin, 0.024, 1e-12);
    EXPECT_EQ(taken_for(planned(survey), DefaultId::output_lost_per_kelvin).size(), 1u);
    survey.heater->cold_output = at(808, units::Power(5'000));
    EXPECT_DOUBLE_EQ(output(planned(survey)), 5'000);
    EXPECT_EQ(planned(survey).house.heater.output_lost_per_kelvin, 0);
    survey.heater->kind->value = HeaterKind::furnace;
    EXPECT_THAT(mistakes(survey),
                ElementsAre("808: only a heat pump gives less in the cold -> write output = "
                            "..., or kind = \"heat pump\""));
}

TEST(Machine, ducts_that_all_run_in_heated_rooms_lose_nothing_unless_said) {
    house::Survey survey = with_heater();
    EXPECT_DOUBLE_EQ(planned(survey).house.heater.duct_loss, 0.15);
    house::SurveyDuct duct;
    duct.runs_in = at(820, house::Space::heated_rooms);
    survey.ducts = {duct};
    EXPECT_EQ(planned(survey).house.heater.duct_loss, 0);
    survey.heater->duct_loss = at(809, 0.08);
    EXPECT_DOUBLE_EQ(planned(survey).house.heater.duct_loss, 0.08);
    survey.ducts.push_back({});
    survey.heater->duct_loss.reset();
    EXPECT_DOUBLE_EQ(planned(survey).house.heater.duct_loss, 0.15);
}

TEST(Machine, a_static_pressure_that_was_measured_is_not_assumed) {
    house::Survey survey = with_blower({{0.2, 1180}, {0.6, 950}});
    survey.blower->external_static = at(910, 0.45 * inch_wc);
    const house::Built built = planned(survey);
    EXPECT_TRUE(built.house.blower.static_measured);
    EXPECT_NEAR(std::get<units::Pressure>(built.house.blower.known_by) / inch_wc, 0.45, 1e-9);
    EXPECT_TRUE(taken_for(built, DefaultId::external_static).empty());
    survey.blower->external_static->value = units::Pressure(0);
    EXPECT_THAT(mistakes(survey), ElementsAre("910: a blower that runs makes some static pressure -> measure "
                                              "before and after the heater and its blower: static = \"0.55 "
                                              "in.wc\""));
}

TEST(Machine, where_nothing_of_the_heater_is_known_its_on_time_is_assumed) {
    const house::Built built = planned(one_room());
    EXPECT_EQ(built.house.heater.kind, HeaterKind::unknown);
    EXPECT_EQ(std::get<double>(built.house.heater.capacity), 0.6);
    EXPECT_THAT(taken_for(built, DefaultId::heater_on_time), ElementsAre("a heater of unknown output"));
}

TEST(Machine, a_heater_that_gives_nothing_is_blamed) {
    house::Survey survey = with_heater();
    survey.heater->input->value = units::Power(0);
    survey.heater->efficiency->value = 0;
    survey.heater->rise->value = {70 * fahrenheit_degree, 40 * fahrenheit_degree};
    survey.heater->max_static->value = units::Pressure(0);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre(
            "802: a heater gives more than nothing", "803: an efficiency is above zero",
            "804: the temperature rise is written the wrong way round -> write rise = [\"40 F\", \"70 "
            "F\"]: least, then most",
            "805: a nameplate static pressure is above zero -> as \"0.50 in.wc\""));
}

TEST(Machine, a_burner_loses_output_with_elevation_once_and_only_above_2000_ft) {
    house::Survey survey = with_heater();
    survey.site.elevation->value = ft(2000);
    EXPECT_EQ(planned(survey).house.heater.output_lost_per_metre, 0);
    survey.site.elevation->value = ft(5000);
    EXPECT_NEAR(planned(survey).house.heater.output_lost_per_metre, 0.04 / 304.8, 1e-12);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::output_lost_per_metre), ElementsAre("the heater"));
    survey.heater->adjusted_for_elevation = at(807, true);
    EXPECT_EQ(planned(survey).house.heater.output_lost_per_metre, 0);
    survey.heater->adjusted_for_elevation->value = false;
    survey.heater->kind->value = HeaterKind::electric;
    EXPECT_EQ(planned(survey).house.heater.output_lost_per_metre, 0);
}

TEST(Machine, a_rise_that_was_not_read_is_the_usual_one_of_its_kind) {
    house::Survey survey = with_heater();
    survey.heater->rise.reset();
    EXPECT_EQ(planned(survey).house.heater.least_rise, 40 * fahrenheit_degree);
    EXPECT_EQ(planned(survey).house.heater.most_rise, 70 * fahrenheit_degree);
    survey.heater->kind->value = HeaterKind::heat_pump;
    EXPECT_EQ(planned(survey).house.heater.least_rise, 20 * fahrenheit_degree);
    EXPECT_EQ(planned(survey).house.heater.most_rise, 35 * fahrenheit_degree);
}

TEST(Machine, what_shares_its_space_is_kept) {
    house::Survey survey = with_heater();
    survey.heater->shares_space_with = at(808, "gas water heater");
    EXPECT_EQ(planned(survey).house.heater.shares_space_with, "gas water heater");
}

TEST(Machine, a_blower_known_by_nothing_is_known_by_its_rise) {
    const house::Built built = planned(with_heater());
    EXPECT_NEAR(std::get<units::TemperatureDifference>(built.house.blower.known_by) / fahrenheit_degree, 55,
                1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::rise_position),
                ElementsAre("the airflow, from the nameplate's rise"));
    EXPECT_NEAR(built.house.blower.external_static / inch_wc, 0.8, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::external_static), ElementsAre("the blower, nameplate as read"));
}

TEST(Machine, a_blower_with_a_table_is_read_at_the_nameplates_pressure) {
    const house::Built built = planned(with_blower({{0.4, 1080}, {0.2, 1180}}));
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_NEAR(std::get<units::Pressure>(built.house.blower.known_by) / inch_wc, 0.8, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::rise_position), IsEmpty());
    ASSERT_EQ(built.house.blower.points.size(), 2u);
    EXPECT_LT(built.house.blower.points[0].external_static, built.house.blower.points[1].external_static);
}

TEST(Machine, a_measured_airflow_counts_before_table_and_rise) {
    house::Survey survey = with_blower({{0.2, 1180}, {0.4, 1080}});
    survey.blower->measured = at(920, 1010 * units::unit::cfm);
    house::Built built = planned(survey);
    EXPECT_EQ(std::get<units::Airflow>(built.house.blower.known_by), 1010 * units::unit::cfm);
    EXPECT_THAT(taken_for(built, DefaultId::external_static), IsEmpty());
    survey.blower->points.clear();
    built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::external_static), ElementsAre("the blower, nameplate as read"));
    EXPECT_THAT(taken_for(built, DefaultId::rise_position), IsEmpty());
}

TEST(Machine, a_blower_whose_air_rises_with_the_pressure_is_blamed) {
    const std::string text =
        "901: the blower's airflow rises with the pressure -> copy pairs of static pressure and airflow of "
        "one speed: "
        "more pressure, less air";
    EXPECT_THAT(mistakes(with_blower({{0.2, 1000}, {0.4, 1100}})), ElementsAre(text));
    EXPECT_THAT(mistakes(with_blower({{0.2, 1000}, {0.2, 900}})), ElementsAre(text));
}

TEST(Machine, a_blower_point_needs_air_and_no_suction) {
    const std::string text =
        ": a blower point needs an airflow above zero and a static pressure of zero or more";
    EXPECT_THAT(mistakes(with_blower({{-0.1, 1200}, {0.2, 1100}, {0.4, 0}})),
                ElementsAre("901" + text, "903" + text));
}

TEST(Machine, a_blower_that_measured_no_air_is_blamed) {
    house::Survey survey = with_blower({});
    survey.blower->measured = at(920, units::Airflow(0));
    EXPECT_THAT(mistakes(survey), ElementsAre("920: a blower moves more than no air"));
}

TEST(Machine, a_filter_is_always_there_and_a_coil_where_there_is_cooling) {
    house::Survey survey = with_heater();
    house::Built built = planned(survey);
    ASSERT_EQ(built.house.devices.size(), 1u);
    EXPECT_EQ(built.house.devices[0].name, "filter");
    EXPECT_NEAR(built.house.devices[0].drop / inch_wc, 0.10, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::filter_drop), ElementsAre("the filter"));
    EXPECT_FALSE(built.house.cooling);
    cool(survey);
    built = planned(survey);
    EXPECT_TRUE(built.house.cooling);
    ASSERT_EQ(built.house.devices.size(), 2u);
    EXPECT_EQ(built.house.devices[1].name, "coil");
    EXPECT_THAT(taken_for(built, DefaultId::coil_drop), ElementsAre("the coil"));
}

TEST(Machine, what_the_makers_figures_hold_is_neither_counted_nor_assumed) {
    house::Survey survey = with_blower({{0.2, 1180}, {0.4, 1080}});
    cool(survey);
    survey.blower->includes = {at(910, DeviceKind::filter), at(911, DeviceKind::coil)};
    add_device(survey, DeviceKind::filter, 0.1).drop.reset();
    const house::Built built = planned(survey);
    EXPECT_TRUE(built.house.devices.empty());
    EXPECT_THAT(taken_for(built, DefaultId::filter_drop), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::coil_drop), IsEmpty());
}

TEST(Machine, a_described_filter_takes_the_place_of_the_assumed_one) {
    house::Survey survey = with_heater();
    house::SurveyDevice& filter = add_device(survey, DeviceKind::filter, 0.22);
    filter.name = at(953, "pleated filter");
    filter.at = at(954, 1000 * units::unit::cfm);
    house::Built built = planned(survey);
    ASSERT_EQ(built.house.devices.size(), 1u);
    EXPECT_EQ(built.house.devices[0].name, "pleated filter");
    EXPECT_NEAR(built.house.devices[0].drop / inch_wc, 0.22, 1e-9);
    EXPECT_EQ(built.house.devices[0].at, 1000 * units::unit::cfm);
    EXPECT_THAT(taken_for(built, DefaultId::filter_drop), IsEmpty());
    survey.devices[0].drop.reset();
    built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::filter_drop), ElementsAre("pleated filter"));
}

TEST(Machine, a_device_of_no_known_kind_needs_its_drop) {
    house::Survey survey = with_heater();
    add_device(survey, DeviceKind::other, 0).name = at(953, "humidifier");
    survey.devices[0].drop.reset();
    add_device(survey, DeviceKind::other, 0);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("950: the pressure lost in humidifier is missing -> write drop = \"0.10 in.wc\"",
                            "962: a device loses some pressure -> leave it out if it loses none"));
}

}  // namespace
