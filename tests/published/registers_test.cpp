// What is measured, heard and felt at a register against published figures.
#include <gtest/gtest.h>

#include <string>

#include "house/bag.hpp"
#include "published/csv.hpp"
#include "registers/draught.hpp"
#include "registers/sound.hpp"
#include "units/unit.hpp"

namespace {

using namespace units::unit;

TEST(PublishedRegisters, a_bag_that_fills) {
    const units::Volume bag = house::filled_bag({66 * centimetre, 91 * centimetre});
    for (const auto& row : published::read("registers_bag.csv")) {
        const double airflow = house::airflow_into_bag(bag, row.number("seconds") * second) / cfm;
        EXPECT_NEAR(airflow, row.number("cfm"), 0.05 * row.number("cfm")) << row.where();
    }
}

TEST(PublishedRegisters, people_who_feel_a_draught) {
    const auto table = published::read("registers_draught.csv");
    EXPECT_EQ(table.size(), 12u);
    for (const auto& row : table) {
        const auto felt = registers::draught(celsius(row.number("ta")), units::Velocity(row.number("v")),
                                             row.number("Tu") / 100);
        EXPECT_NEAR(100 * felt.dissatisfied, row.number("DR"), 0.05) << row.where();
        EXPECT_TRUE(felt.tested) << row.where();
    }
}

// Just inside both ends of each step of the criterion.
TEST(PublishedRegisters, sound_by_the_speed_at_the_face) {
    const auto table = published::read("registers_face_sound.csv");
    EXPECT_EQ(table.size(), 6u);
    for (const auto& row : table) {
        for (const double off : {0.01, -0.01}) {
            const std::string end = off > 0 ? "lo" : "hi";
            const auto speed = [&](const std::string& side) {
                return (row.number(side + "_" + end) + off) * foot_per_minute;
            };
            EXPECT_EQ(registers::in_words(registers::supply_sound(speed("supply"))), row.text("sound"))
                << row.where();
            EXPECT_EQ(registers::in_words(registers::return_sound(speed("return"))), row.text("sound"))
                << row.where();
        }
    }
}

}  // namespace
