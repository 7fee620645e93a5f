#include "questions/answer_loads.hpp"

#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_loads;
using questions::HouseLoads;
using questions::LoadsAnswer;
using sheets::with;

LoadsAnswer answer(const std::string& sheet) { return answer_loads(sheets::survey(sheet)); }

std::string filled_wall() {
    return with(sheets::bath(), "construction = \"wall\"\n[[room.window]]",
                "construction = \"wall\"\nbecomes = \"filled\"\n[[room.window]]");
}

TEST(AnswerLoads, rooms_and_the_rest_add_up_to_the_house) {
    // the bath, warmer than the rest, gives its neighbours what does not leave the house
    const HouseLoads loads = answer(with(sheets::bath(), "winter_indoor = \"74 F\"\n", "")).planned;
    units::Power sum = loads.loss.other_rooms;
    for (const loads::RoomHeatLoss& room : loads.loss.rooms) sum += room.total;
    EXPECT_NEAR(loads.loss.total.si(), sum.si(), 1e-6);
}

TEST(AnswerLoads, there_is_a_before_only_where_the_sheet_plans_a_change) {
    EXPECT_TRUE(answer(sheets::bath()).found);
    const std::string sheet = sheets::pieces_of(sheets::bath()).top;
    EXPECT_FALSE(answer(sheet).found);
}

TEST(AnswerLoads, a_filled_wall_loses_less_and_untouched_rooms_the_same) {
    const LoadsAnswer loads = answer(filled_wall());
    ASSERT_TRUE(loads.found);
    EXPECT_LT(loads.planned.loss.rooms[0].total.si(), loads.found->loss.rooms[0].total.si());
    EXPECT_LT(loads.planned.loss.total.si(), loads.found->loss.total.si());
    EXPECT_NEAR(loads.planned.loss.rooms[1].total.si(), loads.found->loss.rooms[1].total.si(), 1e-9);
    EXPECT_LT(loads.planned.on_time.wanted, loads.found->on_time.wanted);
}

TEST(AnswerLoads, the_rooms_nobody_touches_lose_the_same_before_and_after) {
    const LoadsAnswer loads = answer(filled_wall());
    EXPECT_NEAR(loads.planned.loss.other_rooms.si(), loads.found->loss.other_rooms.si(), 1e-6);
}

TEST(AnswerLoads, a_new_duct_alone_changes_no_loss) {
    const LoadsAnswer loads = answer(sheets::bath());
    EXPECT_DOUBLE_EQ(loads.planned.loss.total.si(), loads.found->loss.total.si());
}

TEST(AnswerLoads, figures_are_the_rooms_and_then_the_house_with_ranges_in_order) {
    const LoadsAnswer loads = answer(sheets::bath());
    ASSERT_EQ(loads.weighed.ranges.size(), 3u);
    EXPECT_EQ(loads.weighed.ranges[0].value, loads.planned.loss.rooms[0].total.si());
    EXPECT_EQ(loads.weighed.ranges[2].value, loads.planned.loss.total.si());
    for (const questions::Range& range : loads.weighed.ranges) {
        EXPECT_LT(range.low, range.value);
        EXPECT_LT(range.value, range.high);
    }
}

TEST(AnswerLoads, the_air_of_a_room_brings_what_it_loses) {
    const HouseLoads loads = answer(sheets::bath()).planned;
    for (std::size_t i = 0; i < loads.loss.rooms.size(); ++i) {
        const loads::RoomHeatLoss& room = loads.loss.rooms[i];
        const loads::Air supply = loads::air_at(loads.supply, loads::site_pressure(loads.house.site));
        const double brought = loads.on_time.share * loads.air[i].flow.si() * supply.specific_heat.si() *
                               (loads.supply - room.inside).si();
        EXPECT_NEAR(brought, room.total.si(), 1e-9 * room.total.si());
        EXPECT_NEAR((loads.air[i].airflow * supply.density).si(), loads.air[i].flow.si(), 1e-12);
    }
}

TEST(AnswerLoads, one_room_alone_is_named_and_counted_as_ever) {
    const LoadsAnswer all = answer(sheets::bath());
    const LoadsAnswer bath = answer_loads(sheets::survey(sheets::bath()), "bath");
    EXPECT_FALSE(all.only);
    ASSERT_TRUE(bath.only);
    EXPECT_EQ(bath.planned.house.room(*bath.only).name, "bath");
    EXPECT_EQ(bath.planned.loss.total, all.planned.loss.total);
    EXPECT_EQ(bath.planned.loss.rooms.size(), all.planned.loss.rooms.size());
}

TEST(AnswerLoads, an_unknown_room_gets_the_nearest) {
    try {
        answer_loads(sheets::survey(sheets::bath()), "bsth");
        FAIL() << "no room is called so";
    } catch (const house::AskedWrongly& e) {
        EXPECT_STREQ(e.what(), "no room of the house is called 'bsth'; did you mean 'bath'?");
    }
    EXPECT_THROW(answer_loads(sheets::survey(sheets::bath()), "conservatory"), house::AskedWrongly);
}

TEST(AnswerLoads, only_a_room_wanted_warmer_is_also_answered_at_the_houses_temperature) {
    const HouseLoads loads = answer(sheets::bath()).planned;
    ASSERT_TRUE(loads.as_the_house[0]);
    EXPECT_FALSE(loads.as_the_house[1]);
    EXPECT_EQ(loads.as_the_house[0]->inside, loads.house.site.winter_indoor);
    EXPECT_LT(loads.as_the_house[0]->loss, loads.loss.rooms[0].total);
    EXPECT_LT(loads.as_the_house[0]->air.flow, loads.air[0].flow);
    const HouseLoads cool =
        answer(with(sheets::bath(), "winter_indoor = \"74 F\"", "winter_indoor = \"70 F\"")).planned;
    EXPECT_FALSE(cool.as_the_house[0]);
    EXPECT_NEAR(cool.loss.rooms[0].total.si(), loads.as_the_house[0]->loss.si(), 1e-9);
    EXPECT_NEAR(cool.air[0].flow.si(), loads.as_the_house[0]->air.flow.si(), 1e-12);
}

TEST(AnswerLoads, the_electric_heater_makes_up_for_the_air_of_a_cooler_room) {
    const HouseLoads loads = answer(sheets::bath()).planned;
    const questions::RoomAsTheHouse& there = *loads.as_the_house[0];
    const loads::Air supply = loads::air_at(loads.supply, loads::site_pressure(loads.house.site));
    const units::Power brought = loads.on_time.share * (there.air.flow * supply.specific_heat *
                                                        (loads.supply - loads.loss.rooms[0].inside));
    EXPECT_GT(there.electric.si(), 0);
    EXPECT_NEAR((brought + there.electric).si(), loads.loss.rooms[0].total.si(), 1e-9);
    // What the loss grows by, and what the same air brings less to a warmer room.
    EXPECT_GT(there.electric, loads.loss.rooms[0].total - there.loss);
}

TEST(AnswerLoads, the_coldest_surface_of_the_bath_is_its_window) {
    const HouseLoads loads = answer(sheets::a_case("upstairs-bath")).planned;
    ASSERT_TRUE(loads.coldest[0]);
    EXPECT_EQ(loads.coldest[0]->surface.surface, "north window");
    // 74 F less 0.505 x 0.68 x 70 F
    EXPECT_NEAR(units::unit::in_fahrenheit(loads.coldest[0]->temperature), 49.9, 0.1);
    EXPECT_NEAR(loads.coldest[0]->sweats_above, 0.43, 0.005);
}

TEST(AnswerLoads, every_case_is_answered) {
    for (const char* name : {"least-sheet", "si-flat-at-1650-m", "upstairs-bath"}) {
        const LoadsAnswer loads = answer(sheets::a_case(name));
        EXPECT_GT(loads.planned.loss.total.si(), 1000) << name;
        EXPECT_TRUE(loads.found) << name;
        EXPECT_TRUE(loads.weighed.always_answered) << name;
    }
}

TEST(AnswerLoads, without_cooling_there_are_no_gains) {
    const LoadsAnswer loads = answer(sheets::bath());
    EXPECT_FALSE(loads.planned.gains);
    EXPECT_EQ(loads.weighed.ranges.size(), loads.house_loss_figure() + 1);
}

TEST(AnswerLoads, with_cooling_gains_follow_the_losses_and_have_ranges) {
    const LoadsAnswer loads = answer(sheets::a_case("hot-corner-room"));
    ASSERT_TRUE(loads.planned.gains);
    const loads::HouseHeatGain& gain = loads.planned.gains->gain;
    ASSERT_EQ(loads.weighed.ranges.size(), loads.moisture_figure() + 1);
    EXPECT_TRUE(loads.weighed.always_answered);
    for (std::size_t i = 0; i < gain.rooms.size(); ++i)
        EXPECT_EQ(loads.weighed.ranges[loads.gain_figure(i)].value, gain.rooms[i].total.si());
    EXPECT_EQ(loads.weighed.ranges[loads.house_gain_figure()].value, gain.sensible.si());
    EXPECT_EQ(loads.weighed.ranges[loads.moisture_figure()].value, gain.latent.si());
}

TEST(AnswerLoads, the_cool_air_of_a_room_takes_what_it_gains) {
    const HouseLoads loads = answer(sheets::a_case("hot-corner-room")).planned;
    const house::Summer& summer = *loads.house.summer;
    const loads::Air supply = loads::air_at(summer.supply, loads::site_pressure(loads.house.site));
    for (std::size_t i = 0; i < loads.gains->air.size(); ++i) {
        const double taken =
            loads.gains->air[i].flow.si() * supply.specific_heat.si() * (summer.indoor - summer.supply).si();
        EXPECT_NEAR(taken, loads.gains->gain.rooms[i].total.si(), 1e-6);
    }
}

TEST(AnswerLoads, summer_sizes_the_duct_of_the_hot_corner_and_winter_that_of_the_north_bedroom) {
    const HouseLoads loads = answer(sheets::a_case("hot-corner-room")).planned;
    EXPECT_TRUE(loads.cooling_governs(0));
    EXPECT_FALSE(loads.cooling_governs(1));
}

}  // namespace
