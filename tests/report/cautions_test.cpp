#include "report/cautions.hpp"

#include <gmock/gmock.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/houses.hpp"
#include "units/unit.hpp"

namespace {

using report::cautions;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

TEST(Cautions, of_a_plain_house_are_only_that_codes_decide) {
    house::House house;
    house.heater.kind = house::HeaterKind::electric;
    EXPECT_THAT(cautions(house), testing::ElementsAre(HasSubstr("local codes")));
}

TEST(Cautions, name_what_burns_beside_the_heater) {
    house::House house;
    house.heater.kind = house::HeaterKind::heat_pump;
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("combustion air"))));
    house.heater.shares_space_with = "gas water heater";
    EXPECT_THAT(cautions(house),
                Contains(HasSubstr("the gas water heater beside the heater needs air to burn")));
    house.heater.kind = house::HeaterKind::furnace;
    EXPECT_THAT(cautions(house),
                Contains(HasSubstr("the heater and the gas water heater in its space need air")));
}

// Only where something burns, and only of what really draws.
TEST(Cautions, name_what_draws_on_a_flue_and_a_plate_exceeded) {
    house::House house;
    house.heater.kind = house::HeaterKind::furnace;
    const report::FlowingAir air{{"the exhaust fans draw 50 cfm"}, "temperature rise comes to 80 F"};
    EXPECT_THAT(cautions(house, air),
                Contains(HasSubstr("The exhaust fans draw 50 cfm: flue gas can follow")));
    EXPECT_THAT(cautions(house, air), Contains(HasSubstr("nameplate: temperature rise comes to 80 F")));
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("flue"))));
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("nameplate"))));
    house.heater.kind = house::HeaterKind::electric;
    EXPECT_THAT(cautions(house, air), Not(Contains(HasSubstr("flue"))));
}

TEST(Cautions, speak_of_studs_where_the_duct_runs_between_studs) {
    house::House house;
    house.ducts.resize(1);
    house.ducts[0].state = house::State::added;
    house.ducts[0].through = 0;
    house.bays.resize(1);
    house.bays[0].framing = house::Framing::studs;
    house.bays[0].depth = 3.5 * units::unit::inch;
    // International Residential Code R602.6: a bearing stud is notched by 25 %, bored by 40 % of its width.
    EXPECT_THAT(
        report::with_plain_spaces(cautions(house).front()),
        HasSubstr("in a bearing stud 3-1/2 in deep, no hole over 1-3/8 in and no notch deeper than 7/8 in"));
}

TEST(Cautions, warn_of_cutting_wood_for_a_new_duct) {
    house::House house;
    house.ducts.resize(1);
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("structure"))));
    house.ducts[0].state = house::State::added;
    EXPECT_THAT(cautions(house), Contains(HasSubstr("no joist")));
}

TEST(Cautions, warn_of_a_return_in_a_damp_room) {
    house::House house;
    house.rooms.resize(1);
    house.rooms[0].name = "upstairs bath";
    house.ducts.resize(1);
    house.outlets.resize(1);
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("moisture"))));
    house.ducts[0].side = house::DuctSide::return_side;
    EXPECT_THAT(cautions(house), Contains(HasSubstr("moisture: the return in the upstairs bath")));
    house.rooms[0].name = "den";
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("moisture"))));
    house.rooms[0].use = house::RoomUse::kitchen;
    EXPECT_THAT(cautions(house), Contains(HasSubstr("moisture")));
}

TEST(Cautions, warn_of_what_old_houses_hold) {
    house::House house;
    house.built = 1995;
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("asbestos"))));
    house.built = 1979;
    EXPECT_THAT(cautions(house), Contains(HasSubstr("asbestos")));
    EXPECT_THAT(cautions(house), Not(Contains(HasSubstr("lead"))));
    house.built = 1924;
    EXPECT_THAT(cautions(house), Contains(HasSubstr("lead")));
}

TEST(Cautions, stand_once_each_and_codes_last) {
    for (const auto& house : report_test::sheets()) {
        auto list = cautions(report_test::check_of(house.sheet).planned);
        EXPECT_THAT(list.back(), HasSubstr("local codes"));
        std::sort(list.begin(), list.end());
        EXPECT_EQ(std::adjacent_find(list.begin(), list.end()), list.end());
    }
}

}  // namespace
