// What is measured at a register against published figures.
#include <gtest/gtest.h>

#include "house/bag.hpp"
#include "published/csv.hpp"
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

}  // namespace
