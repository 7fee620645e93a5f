// A sheet with every word in it arrives whole in the survey: doors, dampers, leaks, the blower's kind and
// what was measured.
#include <variant>

#include "expect_given.hpp"

namespace {

using namespace units::unit;
using testing::ElementsAre;

TEST(Read, TheWayOutOfARoom) {
    const auto& room = survey().rooms[0];
    expect_two(room.transfer, two(12 * inch, 5 * inch), "\"12 x 5 in\"");
    expect_quantity(room.transfer_free_area, 44 * square_inch, "\"44 in2\"");
    ASSERT_EQ(room.doors.size(), 1u);
    expect_quantity(room.doors[0].undercut, 0.625 * inch, "\"5/8 in\"");
    expect_given(room.doors[0].shut, true, "true\nswings");
}

TEST(Read, TheBlowersKindAndHowTheDuctsLeak) {
    expect_given(survey().blower->kind, house::BlowerKind::constant_airflow, "\"constant airflow\"");
    expect_quantity(survey().blower->up_to, 0.85 * inch_wc, "\"0.85 in.wc\"");
    ASSERT_TRUE(survey().duct_leakage);
    const auto& leakage = *survey().duct_leakage;
    EXPECT_EQ(leakage.place, at("[duct_leakage]"));
    expect_given(leakage.sealing, house::DuctSealing::joints_and_seams, "\"joints and seams\"");
    EXPECT_NEAR(leakage.supply->value, 0.09, tolerance);
    EXPECT_NEAR(leakage.return_side->value, 0.13, tolerance);
    expect_quantity(leakage.measured, 160 * cfm, "\"160 cfm\"");
    expect_quantity(leakage.at, 25 * pascal, "\"25 Pa\"");
}

TEST(Read, Dampers) {
    EXPECT_EQ(survey().ducts[0].damper->value, 40);
    EXPECT_EQ(survey().ducts[0].damper->place, at("\"40 deg\""));
    expect_given(survey().outlets[0].damper, 45.0, "\"half\"");
    EXPECT_FALSE(survey().outlets[1].damper);
}

TEST(Read, Readings) {
    ASSERT_EQ(survey().readings.size(), 2u);
    const auto& bag = survey().readings[0];
    EXPECT_EQ(bag.place, at("[[reading]]\nwhat = \"bag\""));
    expect_given(bag.what, house::ReadingKind::bag, "\"bag\"");
    expect_given(bag.at, "register as read");
    ASSERT_TRUE(bag.value);
    EXPECT_NEAR(std::get<units::Duration>(bag.value->value) / second, 3.1, tolerance);
    EXPECT_EQ(bag.value->place, at("\"3.1 s\""));
    expect_two(bag.bag, two(25 * inch, 35 * inch), "\"25 x 35 in\"");
    expect_quantity(bag.volume, 28 * gallon, "\"28 gal\"");
    const auto& suction = survey().readings[1];
    EXPECT_NEAR(std::get<units::Pressure>(suction.value->value) / inch_wc, -0.19, tolerance);
}

TEST(Read, AValueIsReadAsWhatItSaysItIs) {
    const auto read = sheet::read(
                          "sheet = 1\n[[reading]]\nwhat = \"airflow\"\nvalue = \"60 cfm\"\n"
                          "[[reading]]\nwhat = \"temperature rise\"\nvalue = \"61 F\"\n"
                          "[[reading]]\nwhat = \"temperature\"\nvalue = \"61 F\"\n")
                          .survey.readings;
    ASSERT_EQ(read.size(), 3u);
    EXPECT_NEAR(std::get<units::Airflow>(read[0].value->value) / cfm, 60, tolerance);
    EXPECT_NEAR(std::get<units::TemperatureDifference>(read[1].value->value) / fahrenheit_degree, 61,
                tolerance);
    EXPECT_NEAR(in_fahrenheit(std::get<units::Temperature>(read[2].value->value)), 61, tolerance);
}

TEST(Read, ADamperIsOpenHalfShutOrAnAngle) {
    EXPECT_THAT(
        mistakes_after_first_line("[[duct]]\ndamper = \"120 deg\"\n"
                                  "[[duct]]\ndamper = \"120 %\"\n"
                                  "[[outlet]]\ndamper = \"closed\"\n"
                                  "[[outlet]]\ndamper = 30\n"),
        ElementsAre("3:10-19 | 'damper' in duct number 1 is 120 deg | a damper turns from 0 deg, open, "
                    "to 90 deg, shut | ",
                    "5:11-16 | 'damper' in duct number 2: \"120 %\" is a fraction, not an angle |  | "
                    "write open, half, shut, or its angle from open, as \"30 deg\"",
                    "7:10-18 | 'damper' in outlet number 1 cannot be 'closed' |  | write one of: open, "
                    "half, shut, or its angle from open: \"30 deg\"",
                    "9:10-12 | 'damper' in outlet number 2 has no unit | a number needs a unit and "
                    "quotes | write open, half, shut, or its angle from open, as \"30 deg\""));
}

TEST(Read, AReadingOfTheWrongKind) {
    EXPECT_THAT(
        mistakes_after_first_line("[[reading]]\nwhat = \"airflow\"\nvalue = \"3.1 s\"\n"
                                  "[[reading]]\nwhat = \"bag\"\nvalue = \"60 cfm\"\n"
                                  "[[reading]]\nwhat = \"airflow\"\nvalue = \"-60 cfm\"\n"),
        ElementsAre("4:10-15 | 'value' in reading number 1: \"3.1 s\" is a time, not an airflow |  | "
                    "write an airflow, as 120 cfm, 57 L/s or 200 m3/h",
                    "7:10-16 | 'value' in reading number 2: \"60 cfm\" is an airflow, not a time |  | "
                    "write a time, as 3.1 s or 2 min",
                    "10:10-13 | 'value' in reading number 3: an airflow takes no sign |  | write an "
                    "airflow, as 120 cfm, 57 L/s or 200 m3/h"));
}

}  // namespace
