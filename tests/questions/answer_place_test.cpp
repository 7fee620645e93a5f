#include "questions/answer_place.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "house/cannot_answer.hpp"
#include "house/mirrored.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_place;
using questions::Place;
using questions::PlaceAnswer;
using questions::RuledOut;
using questions::WindowSide;
using registers::Stop;
using registers::Where;
using sheets::with;
using testing::HasSubstr;

PlaceAnswer placed(const std::string& sheet, const std::string& room = "bath") {
    return answer_place(sheets::survey(sheet), {room, {}, {}});
}

// Without its guesses weighed.
PlaceAnswer compared(const std::string& sheet) {
    return questions::compare_places(sheets::survey(sheet), {"bath", {}, {}});
}

TEST(AnswerPlace, under_old_single_glass_the_advice_wins) {
    const PlaceAnswer answer = placed(sheets::a_case("under-the-window"));
    EXPECT_EQ(answer.window_side, WindowSide::needed);
    ASSERT_TRUE(answer.chosen);
    EXPECT_EQ(answer.choice().location.where, Where::under_window);
    EXPECT_TRUE(answer.choice().figures->washes);
    const bool centred_stopped =
        std::any_of(answer.places.begin(), answer.places.end(), [](const Place& place) {
            return place.location.stopped && place.location.stopped->by == Stop::joist &&
                   place.location.off_centre.si() == 0;
        });
    EXPECT_TRUE(centred_stopped);
}

TEST(AnswerPlace, with_good_glass_it_no_longer_matters_and_before_it_did) {
    const PlaceAnswer answer = placed(sheets::a_case("good-glass"));
    EXPECT_EQ(answer.window_side, WindowSide::indifferent);
    EXPECT_NE(answer.window_side_before, WindowSide::indifferent);
    ASSERT_TRUE(answer.chosen && answer.chosen_before);
    EXPECT_NE(*answer.chosen, *answer.chosen_before);
}

TEST(AnswerPlace, a_tub_under_the_window_stops_the_advice) {
    const PlaceAnswer answer = placed(sheets::a_case("tub-under-window"));
    for (const Place& place : answer.places) {
        if (place.location.where != Where::under_window) continue;
        ASSERT_TRUE(place.location.stopped);
        EXPECT_FALSE(place.figures);
        EXPECT_EQ(place.ruled_out, RuledOut::stopped);
    }
    ASSERT_TRUE(answer.chosen);
    EXPECT_FALSE(answer.choice().location.stopped);
}

TEST(AnswerPlace, without_a_new_run_the_one_that_is_there_is_led_on_and_stands_beside) {
    const PlaceAnswer answer = placed(sheets::a_case("corner-bedroom"), "corner bedroom");
    EXPECT_FALSE(answer.run_of_the_sheet);
    ASSERT_EQ(answer.now.size(), 1u);
    EXPECT_EQ(answer.now[0].name, "bedroom register");
    EXPECT_GT(answer.now[0].airflow / units::unit::cfm, 20);
    EXPECT_EQ(answer.falling.size(), 2u);
}

// What is carried over to the sheet gives branch the same air.
TEST(AnswerPlace, a_place_carried_over_gives_branch_the_same_air) {
    const std::string sheet = sheets::a_case("good-glass");
    const PlaceAnswer answer = placed(sheet);
    int compared = 0;
    for (const Place& place : answer.places) {
        if (!place.figures || place.location.mount != house::Mount::floor) continue;
        const double feet = place.figures->run / units::unit::foot;
        std::ostringstream length;
        length.precision(9);
        length << "length   = \"" << feet << " ft\"";
        std::string carried = with(sheet, "length   = \"18 ft\"", length.str());
        // The elbows it was given or spared.
        const int turns = place.figures->turns;
        const std::string elbow = "\"round elbow 90, adjustable\", ";
        std::string elbows;
        for (int i = 0; i < turns; ++i) elbows += elbow;
        carried = with(carried, elbow + elbow + "\"floor boot", elbows + "\"floor boot");
        const auto branch = questions::answer_branch(sheets::survey(carried));
        const auto trial = std::find_if(
            branch.sizing.trials.begin(), branch.sizing.trials.end(),
            [&](const questions::BranchTrial& one) { return one.pipe == place.figures->trial.pipe; });
        ASSERT_NE(trial, branch.sizing.trials.end());
        EXPECT_NEAR(trial->gives / place.figures->trial.gives, 1, 1e-6);
        ASSERT_TRUE(trial->needs && place.figures->trial.needs);
        EXPECT_NEAR(trial->needs->airflow / place.figures->trial.needs->airflow, 1, 1e-6);
        ++compared;
    }
    EXPECT_GE(compared, 1);
}

TEST(AnswerPlace, a_place_farther_away_has_no_shorter_duct) {
    const PlaceAnswer answer = compared(sheets::a_case("good-glass"));
    const house::Plan& plan = *answer.house.room(answer.room).plan;
    const registers::Spot from = registers::inner_corner(plan);
    const auto far = [&](const Place& place) {
        return abs(place.location.middle.east - from.east) + abs(place.location.middle.north - from.north);
    };
    for (const Place& a : answer.places)
        for (const Place& b : answer.places)
            if (a.figures && b.figures && a.location.mount == b.location.mount && far(a) < far(b)) {
                EXPECT_LE(a.figures->run, b.figures->run + units::Length(1e-9));
            }
}

TEST(AnswerPlace, better_glass_or_a_warmer_night_never_makes_the_window_side_worse) {
    double last = 2;
    for (const char* glass : {"single", "single + storm", "double, low-e", "triple, low-e"}) {
        const auto answer = compared(with(sheets::a_case("under-the-window"), "glass  = \"single\"",
                                          std::string("glass  = \"") + glass + "\""));
        ASSERT_FALSE(answer.falling.empty());
        EXPECT_LE(answer.falling[0].dissatisfied, last) << glass;
        last = answer.falling[0].dissatisfied;
    }
    last = 2;
    for (const char* night : {"-20 F", "0 F", "20 F", "45 F"}) {
        const auto answer = compared(with(sheets::a_case("under-the-window"), "winter_outdoor = \"0 F\"",
                                          std::string("winter_outdoor = \"") + night + "\""));
        EXPECT_LE(answer.falling[0].dissatisfied, last) << night;
        last = answer.falling[0].dissatisfied;
    }
}

// West for east.
TEST(AnswerPlace, a_mirrored_room_has_the_mirrored_answer) {
    const a_survey::Mirror mirror{house::WallSide::west, house::WallSide::east, true};
    for (const char* name : {"under-the-window", "good-glass", "tub-under-window"}) {
        const house::Survey survey = sheets::survey(sheets::a_case(name));
        const PlaceAnswer here = questions::compare_places(survey, {"bath", {}, {}});
        const PlaceAnswer there =
            questions::compare_places(a_survey::mirrored(survey, mirror), {"bath", {}, {}});
        ASSERT_TRUE(here.chosen && there.chosen) << name;
        ASSERT_EQ(here.places.size(), there.places.size()) << name;
        const registers::Location &one = here.choice().location, &other = there.choice().location;
        EXPECT_NEAR((one.middle.east + other.middle.east - here.house.room(here.room).width).si(), 0, 1e-9)
            << name;
        EXPECT_NEAR((one.middle.north - other.middle.north).si(), 0, 1e-9) << name;
        EXPECT_NEAR(here.choice().figures->trial.gives / there.choice().figures->trial.gives, 1, 1e-9)
            << name;
    }
}

// One way to what a proposed outlet gets: trunk, asked of the sheet as it stands, gives it the same.
TEST(AnswerPlace, at_the_sheets_own_place_trunk_gives_the_same_air) {
    const std::string sheet = sheets::a_case("under-the-window");
    const PlaceAnswer answer = placed(sheet);
    const auto trunk = questions::answer_trunk(sheets::survey(sheet));
    // Led to where the sheet puts it: the joist in the way there does not change the air.
    const auto branch = questions::answer_branch(sheets::survey(sheet));
    EXPECT_NEAR(trunk.rooms.back().after / branch.sizing.choice().gives, 1, 1e-6);
    ASSERT_TRUE(answer.chosen);
    EXPECT_EQ(answer.size, branch.sizing.choice().pipe);
    EXPECT_NEAR(answer.choice().figures->trial.gives / branch.sizing.choice().gives, 1, 0.02);
}

std::string cooled(const std::string& sheet) {
    return with(with(sheet, "[heater]", "[cooling]\nkind = \"coil\"\n[heater]"), "winter_outdoor",
                "summer_outdoor = \"91 F\"\nlatitude = \"42 deg\"\nwinter_outdoor");
}

TEST(AnswerPlace, where_there_is_cooling_it_is_told_apart) {
    const PlaceAnswer warm = compared(sheets::a_case("good-glass")),
                      cold = compared(cooled(sheets::a_case("good-glass")));
    EXPECT_FALSE(warm.summer);
    for (const Place& place : warm.places) EXPECT_FALSE(place.figures && place.figures->cooled);
    ASSERT_TRUE(cold.summer);
    EXPECT_GT(cold.summer->needs, units::Airflow());
    ASSERT_TRUE(cold.chosen && cold.summer->chosen);
    EXPECT_EQ(cold.chosen, warm.chosen);  // winter's choice is winter's
    int told = 0;
    for (const Place& place : cold.places) {
        if (!place.figures) continue;
        ASSERT_TRUE(place.figures->cooled);
        EXPECT_GT(place.figures->cooled->gives, units::Airflow());
        EXPECT_LE(place.figures->cooled->air.becomes,
                  cold.places[*cold.summer->chosen].figures->cooled->air.becomes);
        ++told;
    }
    EXPECT_GE(told, 3);
}

// The same air as trunk tells, where the sheet leads the run.
TEST(AnswerPlace, summers_air_is_that_of_trunk) {
    std::string sheet = cooled(sheets::a_case("under-the-window"));
    sheet = with(sheet, "place = { under = \"south window\" }",
                 "place = { wall = \"south\", centre = \"3 ft 9 in\" }");
    const PlaceAnswer answer = compared(sheet);
    const auto trunk = questions::answer_trunk(sheets::survey(sheet));
    ASSERT_TRUE(trunk.in_summer && answer.chosen);
    const auto bath = std::find_if(trunk.in_summer->rooms.begin(), trunk.in_summer->rooms.end(),
                                   [&](const auto& room) { return room.room == answer.room; });
    ASSERT_NE(bath, trunk.in_summer->rooms.end());
    EXPECT_NEAR(answer.summer->needs / bath->needs, 1, 1e-9);
    EXPECT_NEAR(answer.choice().figures->cooled->gives / bath->after, 1, 0.03);  // 7 in beside it
}

TEST(AnswerPlace, a_stack_in_an_outside_wall_is_ruled_out_until_the_wall_is_deep_enough) {
    const auto low = [](const std::string& sheet) {
        const questions::PlaceQuestion question{"bath", {}, house::Mount::low_wall};
        std::vector<Place> some;
        for (const Place& place : questions::compare_places(sheets::survey(sheet), question).places)
            if (place.location.where == Where::outside_wall) some.push_back(place);
        return some;
    };
    const std::string sheet = sheets::a_case("under-the-window");
    for (const Place& place : low(sheet)) {
        ASSERT_TRUE(place.figures && place.figures->in_cold_wall);
        EXPECT_EQ(place.ruled_out, RuledOut::cold_wall);
        EXPECT_LT(place.figures->in_cold_wall->sweats_above, 0.5);
    }
    // The studs as measured, and the layers of the wall whose studs nobody measured.
    const auto as_deep_as = [&](const std::string& inches) {
        return with(with(sheet, "empty stud bay, 3-5/8 in", "empty stud bay, " + inches),
                    "[\"1-5/8 in\", \"3-5/8 in\"]", "[\"1-5/8 in\", \"" + inches + "\"]");
    };
    const auto deep = low(as_deep_as("6 in"));
    ASSERT_FALSE(deep.empty());
    for (const Place& place : deep) {
        ASSERT_TRUE(place.figures && place.figures->in_cold_wall);
        EXPECT_NE(place.ruled_out, RuledOut::cold_wall);
        EXPECT_GT(place.figures->in_cold_wall->sweats_above, 0.7);
    }
    for (const Place& place : low(as_deep_as("2 in"))) {
        ASSERT_TRUE(place.location.stopped);
        EXPECT_EQ(place.location.stopped->by, Stop::shallow_wall);
    }
}

template <class Exception>
std::string why_not(const std::string& sheet, const questions::PlaceQuestion& question) {
    try {
        answer_place(sheets::survey(sheet), question);
    } catch (const Exception& e) {
        return e.what();
    }
    return "an answer";
}

TEST(AnswerPlace, asked_wrongly_names_the_nearest) {
    const std::string sheet = sheets::a_case("good-glass");
    EXPECT_THAT(why_not<house::AskedWrongly>(sheet, {"bth", {}, {}}), HasSubstr("did you mean 'bath'?"));
    EXPECT_THAT(why_not<house::AskedWrongly>(sheet, {"bath", "south windo", {}}),
                HasSubstr("did you mean 'south window'?"));
}

TEST(AnswerPlace, a_room_no_run_leads_to_is_told_what_to_plan) {
    EXPECT_THAT(why_not<house::CannotAnswer>(sheets::a_case("good-glass"), {"hall", {}, {}}),
                HasSubstr("no run leads to the hall: plan one"));
}

TEST(AnswerPlace, a_lone_window_that_stands_nowhere_is_taken_in_the_middle_and_said_to_be) {
    const std::string sheet = sheets::a_case("good-glass");
    const PlaceAnswer placed = compared(sheet), taken = compared(with(sheet, "centre = \"3 ft 9 in\"\n", ""));
    EXPECT_TRUE(placed.centred.empty());
    EXPECT_EQ(taken.centred, std::vector<std::string>{"south window"});
    EXPECT_EQ(taken.chosen, placed.chosen);  // the wall is 7 ft 6 in long
}

TEST(AnswerPlace, of_two_windows_in_a_wall_each_is_asked_for) {
    const std::string second =
        "[[room.window]]\nwall = \"south\"\nsize = [\"1 ft\", \"2 ft\"]\nglass = \"single\"\n[[room.door]]";
    EXPECT_THAT(why_not<house::CannotAnswer>(with(sheets::a_case("good-glass"), "[[room.door]]", second),
                                             {"bath", {}, {}}),
                HasSubstr("write its centre along the wall"));
}

TEST(AnswerPlace, a_sill_nobody_measured_is_taken_and_tried_lower_and_higher) {
    const std::string sheet = sheets::a_case("under-the-window");
    EXPECT_FALSE(compared(sheet).sill_taken);
    const PlaceAnswer taken = compared(with(sheet, "sill   = \"2 ft 2 in\"\n", ""));
    ASSERT_TRUE(taken.sill_taken);
    EXPECT_EQ(taken.sill_taken->window, "south window");
    EXPECT_EQ(taken.sill_taken->sill, 3 * units::unit::foot);
    // What it says of each end is what the sheet with that sill answers.
    for (const double feet : {2.0, 4.0}) {
        const std::string written = "sill   = \"" + std::to_string(static_cast<int>(feet)) + " ft\"\n";
        const PlaceAnswer there = compared(with(sheet, "sill   = \"2 ft 2 in\"\n", written));
        const auto& moves = taken.sill_taken->moves_the_choice;
        const bool said = std::any_of(moves.begin(), moves.end(), [&](units::Length sill) {
            return std::abs(sill / units::unit::foot - feet) < 1e-9;
        });
        EXPECT_EQ(said, there.chosen != taken.chosen) << feet;
    }
}

TEST(AnswerPlace, where_nobody_is_known_to_stand_both_nearer_and_farther_are_told) {
    std::string sheet = sheets::a_case("under-the-window");
    for (const questions::FallingAir& falling : compared(sheet).falling)
        EXPECT_FALSE(falling.dissatisfied_near || falling.dissatisfied_far);
    for (const char* kind : {"toilet", "vanity"})
        sheet = with(sheet, "kind   = \"" + std::string(kind) + "\"", "kind   = \"wardrobe\"");
    const PlaceAnswer answer = compared(sheet);
    ASSERT_FALSE(answer.falling.empty());
    for (const questions::FallingAir& falling : answer.falling) {
        ASSERT_TRUE(falling.at.empty() && falling.dissatisfied_near && falling.dissatisfied_far);
        EXPECT_GT(*falling.dissatisfied_near, falling.dissatisfied);
        EXPECT_LT(*falling.dissatisfied_far, falling.dissatisfied);
    }
}

}  // namespace
