#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::DuctSide;
using house::State;

// A trunk of 5 m from the plenum, a run from it, a register.
house::Survey trunk_and_run() {
    house::Survey survey = one_room();
    add_duct(survey, "trunk");
    add_duct(survey, "run", "trunk");
    add_outlet(survey, "register", "run");
    return survey;
}

double diameter_in(const house::Built& built) {
    return std::get<house::Round>(*built.house.ducts.front().shape).diameter / units::unit::inch;
}

TEST(Ducts, a_duct_keeps_what_the_sheet_says) {
    const house::Built built = planned(trunk_and_run());
    EXPECT_THAT(mistakes(built), IsEmpty());
    ASSERT_EQ(built.house.ducts.size(), 2u);
    const house::Duct& run = built.house.ducts[1];
    EXPECT_EQ(run.id, house::DuctId{1});
    EXPECT_EQ(run.name, "run");
    EXPECT_EQ(run.place, on_line(1100));
    EXPECT_EQ(run.from, house::DuctId{0});
    EXPECT_EQ(run.length, m(5));
    EXPECT_EQ(run.fittings.at(0).text, "stackhead");
    EXPECT_FALSE(built.house.ducts[0].from);
}

TEST(Ducts, a_flexible_duct_is_stretched_as_usual_unless_it_says_so) {
    house::Survey survey = trunk_and_run();
    EXPECT_EQ(planned(survey).house.ducts[1].kind, house::DuctKind::metal);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::flex_stretch), IsEmpty());
    survey.ducts[1].kind = at(1108, house::DuctKind::flex);
    EXPECT_EQ(planned(survey).house.ducts[1].stretch, 0.85);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::flex_stretch), ElementsAre("the run"));
    survey.ducts[1].stretch = at(1109, 0.96);
    EXPECT_EQ(planned(survey).house.ducts[1].stretch, 0.96);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::flex_stretch), IsEmpty());
}

TEST(Ducts, only_a_round_flexible_duct_is_stretched) {
    house::Survey survey = trunk_and_run();
    survey.ducts[1].stretch = at(1109, 0.96);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1109: the duct run cannot be stretched -> write kind = \"flex\", "
                            "or leave stretch out"));
    survey.ducts[1].kind = at(1108, house::DuctKind::flex);
    survey.ducts[1].stretch = at(1109, 0.5);
    EXPECT_THAT(mistakes(survey), ElementsAre(testing::HasSubstr("pushed together to less than 55 %")));
    survey.ducts[1].stretch = at(1109, 0.9);
    survey.ducts[1].shape->value = house::Rectangular{m(0.2), m(0.3)};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1105: the flexible duct run is not round -> write shape = \"6 in\""));
}

TEST(Ducts, losses_of_fittings_are_doubted_once) {
    house::Survey survey = trunk_and_run();
    EXPECT_EQ(planned(survey).house.fitting_losses, 1);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::fitting_losses), ElementsAre("every fitting"));
    survey.ducts.clear();
    survey.outlets.clear();
    EXPECT_THAT(taken_for(planned(survey), DefaultId::fitting_losses), IsEmpty());
}

TEST(Ducts, a_branch_leaves_at_the_trunks_end_unless_it_says_where) {
    house::Survey survey = trunk_and_run();
    EXPECT_EQ(planned(survey).house.ducts[1].at, m(5));
    survey.ducts[1].at = at(1107, m(2));
    EXPECT_EQ(planned(survey).house.ducts[1].at, m(2));
}

TEST(Ducts, nothing_leaves_a_trunk_beyond_its_end) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].length->value = ft(16);
    survey.ducts[1].at = at(1107, ft(17));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1107: the duct run leaves the trunk beyond its end -> the trunk is 16 ft long"));
    survey.ducts[1].at->value = ft(16) + m(0.001);
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Ducts, name_side_length_end_and_shape_have_to_be_given) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].side.reset();
    survey.ducts[0].length.reset();
    survey.ducts[0].shape.reset();
    survey.ducts[0].from.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre(
            "1000: the side of the duct trunk is missing -> write side = \"supply\", or \"return\"",
            "1000: the shape of the duct trunk is missing -> write shape = \"6 in\", \"8 x 16 in\", or "
            "{ around = \"19 in\" }",
            "1000: the length of the duct trunk is missing -> write length = \"17 ft\"",
            "1000: what the duct trunk leaves is missing -> write from = \"plenum\", or the name of a "
            "duct"));
}

TEST(Ducts, a_duct_without_a_name_is_asked_for_it) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "other run", "trunk").name.reset();
    EXPECT_THAT(mistakes(survey),
                testing::Contains("1200: the name of this duct is missing -> write name = \"main "
                                  "trunk\""));
}

TEST(Ducts, a_return_duct_has_to_lead_somewhere) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "drop", nullptr, DuctSide::return_side).to.reset();
    add_outlet(survey, "grille", "drop");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1200: what the duct drop leads to is missing -> write to = \"blower\", "
                            "or the name of a duct"));
}

TEST(Ducts, an_unknown_duct_gets_the_nearest) {
    house::Survey survey = trunk_and_run();
    survey.ducts[1].from = at(1103, "trunc");
    add_outlet(survey, "another", "trunk");
    EXPECT_THAT(mistakes(survey), ElementsAre("1103: no duct is called 'trunc' (did you mean 'trunk'?)"));
}

TEST(Ducts, a_duct_that_leads_back_to_itself_is_blamed_once) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].from = at(1003, "run");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1000: the duct trunk leads back to itself -> follow it with a finger to "
                            "the plenum or the blower"));
    survey.ducts[0].from = at(1003, "trunk");
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(Ducts, supply_and_return_do_not_join) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "drop", "trunk", DuctSide::return_side);
    add_outlet(survey, "grille", "drop");
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre(
            "1203: the duct drop and the trunk are on different sides -> a supply duct leaves a supply "
            "duct, a return duct joins a return duct"));
}

TEST(Ducts, new_ones_are_not_found_and_removed_ones_not_planned) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "old run", "trunk").state = at(1207, State::removed);
    add_duct(survey, "new run", "trunk").state = at(1307, State::added);
    add_outlet(survey, "old register", "old run").state = at(2107, State::removed);
    add_outlet(survey, "new register", "new run").state = at(2207, State::added);
    const house::Built before = found(survey), after = planned(survey);
    EXPECT_THAT(mistakes(before), IsEmpty());
    EXPECT_THAT(mistakes(after), IsEmpty());
    ASSERT_EQ(before.house.ducts.size(), 3u);
    ASSERT_EQ(after.house.ducts.size(), 3u);
    EXPECT_EQ(before.house.ducts[2].name, "old run");
    EXPECT_EQ(before.house.ducts[2].id, house::DuctId{2});
    EXPECT_EQ(after.house.ducts[2].name, "new run");
    EXPECT_EQ(after.house.ducts[2].id, house::DuctId{3});
    EXPECT_EQ(before.house.ducts[1].id, after.house.ducts[1].id);
    EXPECT_EQ(before.house.outlets[1].id, house::OutletId{1});
    EXPECT_EQ(after.house.outlets[1].id, house::OutletId{2});
}

TEST(Ducts, nothing_hangs_on_what_is_not_there) {
    house::Survey survey = trunk_and_run();
    add_other_rooms(survey);
    survey.ducts[0].state = at(1007, State::removed);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1103: the duct run hangs on the trunk, which is not there -> one is "
                            "removed, the other stays, see 1007"));
    survey.ducts[0].state = at(1007, State::added);
    EXPECT_THAT(mistakes(found(survey)),
                ElementsAre("1103: the duct run hangs on the trunk, which is not there -> one "
                            "is found, the other new, see 1007"));
}

TEST(Ducts, only_a_new_duct_may_be_without_a_shape) {
    house::Survey survey = trunk_and_run();
    survey.ducts[1].shape.reset();
    survey.ducts[1].state = at(1107, State::added);
    survey.outlets[0].state = at(2007, State::added);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_FALSE(built.house.ducts[1].shape);
}

TEST(Ducts, a_new_return_duct_needs_its_shape) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "drop", nullptr, DuctSide::return_side).state = at(1207, State::added);
    survey.ducts[2].shape.reset();
    add_outlet(survey, "grille", "drop").state = at(2107, State::added);
    EXPECT_THAT(mistakes(survey), ElementsAre("1200: the shape of the duct drop is missing -> write shape = "
                                              "\"6 in\", \"8 x 16 in\", or { around = \"19 in\" }"));
}

TEST(Ducts, a_tape_round_a_pipe_gives_the_stock_pipe_under_the_seam) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].shape.reset();
    const std::pair<double, double> around_and_pipe[] = {{19, 6}, {16, 5}, {12.75, 4}, {22, 7}, {25.3, 8}};
    for (const auto& [around, pipe] : around_and_pipe) {
        survey.ducts[0].around = at(1008, around * units::unit::inch);
        EXPECT_DOUBLE_EQ(diameter_in(planned(survey)), pipe) << around;
    }
    survey.ducts[0].around = at(1008, 17.3 * units::unit::inch);
    EXPECT_NEAR(diameter_in(planned(survey)), 17.3 / 3.14159265358979, 1e-9);
}

TEST(Ducts, a_duct_has_one_shape_and_a_width) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].around = at(1008, 19 * units::unit::inch);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1008: the duct trunk has two shapes -> write one of them, see 1005"));
    survey.ducts[0].shape.reset();
    survey.ducts[0].around->value = m(0);
    survey.ducts[1].shape->value = house::Rectangular{m(0.2), m(0)};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1008: the duct trunk has no width", "1105: the duct run has no width"));
    survey.ducts[1].shape->value = house::Round{m(0)};
    EXPECT_EQ(mistakes(survey).size(), 2u);
}

TEST(Ducts, turns_stand_for_fittings_nobody_can_name) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].turns = at(1009, house::Turns{2, false});
    const house::Built built = planned(survey);
    ASSERT_EQ(built.house.ducts[0].fittings.size(), 3u);
    EXPECT_EQ(built.house.ducts[0].fittings[1].text, "rounded turn");
    EXPECT_EQ(built.house.ducts[0].fittings[2].place, on_line(1009));
    EXPECT_THAT(taken_for(built, DefaultId::turns_not_given), IsEmpty());
}

TEST(Ducts, a_duct_without_fittings_or_turns_has_the_usual_square_turns) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].fittings.clear();
    house::Built built = planned(survey);
    ASSERT_EQ(built.house.ducts[0].fittings.size(), 3u);
    EXPECT_EQ(built.house.ducts[0].fittings[0].text, "square turn");
    EXPECT_THAT(taken_for(built, DefaultId::turns_not_given), ElementsAre("the trunk"));
    survey.ducts[0].turns = at(1009, house::Turns{0, true});
    built = planned(survey);
    EXPECT_TRUE(built.house.ducts[0].fittings.empty());
    EXPECT_THAT(taken_for(built, DefaultId::turns_not_given), IsEmpty());
}

TEST(Ducts, the_air_around_a_supply_duct_is_where_it_runs_or_assumed) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].runs_in = at(1010, house::Space::crawl);
    const house::Built built = planned(survey);
    EXPECT_EQ(std::get<house::Space>(built.house.ducts[0].surroundings), house::Space::crawl);
    EXPECT_NEAR(units::unit::in_celsius(built.house.winter(house::Space::crawl)), 5, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::crawl_warmth), ElementsAre("air around the trunk"));
    EXPECT_NEAR(units::unit::in_celsius(std::get<units::Temperature>(built.house.ducts[1].surroundings)),
                -10 + 0.85 * 30, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::duct_surroundings), ElementsAre("the run"));
}

TEST(Ducts, a_return_is_taken_to_run_in_the_warm) {
    house::Survey survey = trunk_and_run();
    add_duct(survey, "drop", nullptr, DuctSide::return_side);
    add_outlet(survey, "grille", "drop");
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_EQ(std::get<units::Temperature>(built.house.ducts[2].surroundings), units::unit::celsius(20));
    EXPECT_THAT(taken_for(built, DefaultId::return_length), IsEmpty());
    EXPECT_EQ(built.house.return_length, m(0));
}

TEST(Ducts, a_wrap_adds_to_the_bare_wall) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].wrap = at(1011, 8 * units::unit::r_value_us);
    const house::Built built = planned(survey);
    EXPECT_NEAR(built.house.ducts[0].resistance / units::unit::r_value_us, 8.85, 1e-9);
    EXPECT_NEAR(built.house.ducts[1].resistance / units::unit::r_value_us, 0.85, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::bare_duct), ElementsAre("supply ducts"));
}

TEST(Ducts, only_a_hidden_duct_has_a_doubtful_loss) {
    house::Survey survey = trunk_and_run();
    survey.ducts[0].hidden = at(1012, false);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::hidden_loss), IsEmpty());
    survey.ducts[0].hidden->value = true;
    EXPECT_THAT(taken_for(planned(survey), DefaultId::hidden_loss), ElementsAre("the trunk"));
    const house::Defaults high = house::Defaults().with(DefaultId::hidden_loss, house::Level::high);
    EXPECT_EQ(planned(survey, high).house.ducts[0].loss_factor, 3);
    EXPECT_EQ(planned(survey, high).house.ducts[1].loss_factor, 1);
}

}  // namespace
