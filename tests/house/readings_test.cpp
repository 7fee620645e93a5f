#include <gtest/gtest.h>

#include "house/a_survey.hpp"
#include "house/bag.hpp"

namespace {

using namespace a_survey;
using house::DuctSide;
using house::ReadingKind;
using units::unit::cfm;
using units::unit::inch;
using units::unit::inch_wc;

// A register on a run, in the bath.
house::Survey with_a_register() {
    house::Survey survey = one_room();
    add_duct(survey, "run");
    add_outlet(survey, "bath register", "run");
    return survey;
}

template <class Q>
house::SurveyReading& add_reading(house::Survey& to, ReadingKind what, const char* where, Q value) {
    const int line = 3000 + 10 * static_cast<int>(to.readings.size());
    house::SurveyReading reading;
    reading.place = on_line(line);
    reading.what = at(line + 1, what);
    if (where) reading.at = at(line + 2, where);
    reading.value = {value, on_line(line + 3)};
    to.readings.push_back(reading);
    return to.readings.back();
}

TEST(Readings, are_taken_at_outlets_plenums_rooms_and_the_heater) {
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::airflow, "bath register", 60 * cfm);
    add_reading(survey, ReadingKind::static_pressure, "supply plenum", 0.21 * inch_wc);
    add_reading(survey, ReadingKind::temperature, "bath", units::unit::celsius(19));
    add_reading(survey, ReadingKind::temperature_rise, nullptr, units::TemperatureDifference(30));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const auto& readings = built.house.readings;
    ASSERT_EQ(readings.size(), 4u);
    EXPECT_EQ(std::get<house::OutletId>(readings[0].at), house::OutletId{0});
    EXPECT_EQ(std::get<units::Airflow>(readings[0].value), 60 * cfm);
    EXPECT_EQ(std::get<house::Plenum>(readings[1].at).side, DuctSide::supply);
    EXPECT_EQ(std::get<house::RoomId>(readings[2].at), house::RoomId{0});
    EXPECT_TRUE(std::holds_alternative<house::WholeHouse>(readings[3].at));
    EXPECT_EQ(readings[3].place, on_line(3030));
}

TEST(Readings, in_the_return_plenum_are_suction_with_or_without_a_sign) {
    for (double sign : {1.0, -1.0}) {
        house::Survey survey = with_a_register();
        add_reading(survey, ReadingKind::static_pressure, "return plenum", sign * 0.2 * inch_wc);
        const house::Built built = planned(survey);
        EXPECT_THAT(mistakes(built), IsEmpty());
        EXPECT_EQ(std::get<units::Pressure>(built.house.readings[0].value), -0.2 * inch_wc);
    }
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::static_pressure, "supply plenum", -0.2 * inch_wc);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("3003: the blower blows into the supply plenum, and draws nothing from it -> write "
                    "the pressure in it without a sign, or at = \"return plenum\""));
}

TEST(Readings, belong_to_the_house_as_found) {
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::airflow, "bath register", 60 * cfm);
    survey.ducts[0].state = at(1010, house::State::removed);
    survey.outlets[0].state = at(2010, house::State::removed);
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_EQ(found(survey).house.readings.size(), 1u);
    EXPECT_EQ(planned(survey).house.readings.size(), 0u);
    survey.ducts[0].state->value = survey.outlets[0].state->value = house::State::added;
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("3002: the outlet bath register is new: nothing can be read there yet -> readings "
                    "are those of the house as found, see 2010"));
}

TEST(Readings, at_nothing_there_is_name_the_nearest_three) {
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::airflow, "bath registr", 60 * cfm);
    add_reading(survey, ReadingKind::static_pressure, "bath register", 0.1 * inch_wc);
    add_reading(survey, ReadingKind::temperature, "attic", units::unit::celsius(19));
    add_reading(survey, ReadingKind::temperature_rise, "bath", units::TemperatureDifference(30));
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("3002: no airflow reading can be taken at 'bath registr' (did you mean 'bath register'?) "
                    "-> the nearest are 'bath register'",
                    "3012: no static reading can be taken at 'bath register' -> the nearest are 'return "
                    "plenum', 'supply plenum'",
                    "3022: no temperature reading can be taken at 'attic' -> the nearest are 'bath', 'bath "
                    "register', 'return plenum'",
                    "3032: a temperature rise is that of the heater -> leave 'at' out"));
}

TEST(Readings, say_what_where_and_how_much) {
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::airflow, nullptr, 60 * cfm).value.reset();
    add_reading(survey, ReadingKind::static_pressure, nullptr, 0.1 * inch_wc).what.reset();
    add_reading(survey, ReadingKind::bag, "bath register", units::Duration(3));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("3000: where this reading was taken is missing -> write at = \"bath register\"",
                            "3000: the value of this reading is missing -> write value = ... with its unit",
                            "3010: what was read is missing -> write what = \"bag\", or \"static\"",
                            "3020: the size of the bag is missing -> write bag = \"26 x 36 in\", laid flat"));
}

TEST(Readings, only_a_bag_has_a_size_and_only_one) {
    house::Survey survey = with_a_register();
    auto& first = add_reading(survey, ReadingKind::airflow, "bath register", 60 * cfm);
    first.volume = at(3004, units::Volume(0.1));
    auto& second = add_reading(survey, ReadingKind::bag, "bath register", units::Duration(3));
    second.volume = at(3014, units::Volume(0.1));
    second.bag = at(3015, house::Two(26 * inch, 36 * inch));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("3004: this reading has no bag -> write what = \"bag\", or leave the bag out",
                            "3014: the bag has both a size and a volume -> keep one of them, see 3015"));
}

TEST(Readings, a_name_that_a_room_and_an_outlet_share_tells_nothing) {
    house::Survey survey = with_a_register();
    survey.outlets[0].name->value = "bath";
    add_reading(survey, ReadingKind::temperature, "bath", units::unit::celsius(19));
    EXPECT_THAT(mistakes(survey), ElementsAre("3002: both a room and an outlet are called 'bath' -> give the "
                                              "outlet another name"));
}

TEST(Bag, becomes_an_airflow) {
    house::Survey survey = with_a_register();
    add_reading(survey, ReadingKind::bag, "bath register", units::Duration(3.1)).bag =
        at(3004, house::Two(36 * inch, 26 * inch));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const auto& bag = std::get<house::BagFilled>(built.house.readings[0].value);
    EXPECT_EQ(bag.time.si(), 3.1);
    EXPECT_EQ(bag.bag, house::filled_bag({26 * inch, 36 * inch}));
    EXPECT_NEAR(bag.airflow / cfm, 51, 1);
}

// A square bag of 1 m: 1 / pi - 0.142 x 0.9.
TEST(Bag, holds_less_than_the_cylinder_it_would_wrap) {
    EXPECT_NEAR(house::filled_bag({m(1), m(1)}).si(), 0.19051, 1e-5);
    EXPECT_LT(house::filled_bag({m(0.5), m(2)}).si(), 2 * 0.25 / 3.14159);
}

TEST(Bag, twice_as_large_takes_twice_as_long) {
    const units::Volume bag(0.08);
    EXPECT_NEAR(house::airflow_into_bag(bag, units::Duration(4)) / cfm,
                house::airflow_into_bag(2 * bag, units::Duration(8)) / cfm, 1e-9);
    EXPECT_GT(house::airflow_into_bag(bag, units::Duration(2)),
              house::airflow_into_bag(bag, units::Duration(3)));
}

}  // namespace
