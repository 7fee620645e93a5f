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

TEST(AnswerPlace, where_there_is_cooling_the_cooled_air_is_told_too) {
    const std::string cooled =
        with(with(sheets::a_case("good-glass"), "[heater]", "[cooling]\nkind = \"coil\"\n[heater]"),
             "winter_outdoor", "summer_outdoor = \"91 F\"\nlatitude = \"42 deg\"\nwinter_outdoor");
    const PlaceAnswer warm = compared(sheets::a_case("good-glass")), cold = compared(cooled);
    bool any = false;
    for (const Place& place : warm.places)
        if (place.figures) {
            EXPECT_FALSE(place.figures->warm.cooled_reaches || place.figures->warm.cooled_drops);
        }
    for (const Place& place : cold.places) {
        if (!place.figures) continue;
        const questions::WarmAirThere& air = place.figures->warm;
        any = any || air.cooled_reaches;
        EXPECT_GE(air.cooled_reaches.value_or(units::Length()), units::Length());
        EXPECT_GE(air.cooled_drops.value_or(units::Length()), units::Length());
    }
    EXPECT_TRUE(any);
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

TEST(AnswerPlace, a_window_that_stands_nowhere_is_asked_for) {
    EXPECT_THAT(why_not<house::CannotAnswer>(
                    with(sheets::a_case("good-glass"), "centre = \"3 ft 9 in\"\n", ""), {"bath", {}, {}}),
                HasSubstr("write its centre along the wall"));
}

}  // namespace
