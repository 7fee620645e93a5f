// Every printed step is done again with the printed digits.
#include "report/steps.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "report/expression.hpp"
#include "report/houses.hpp"

namespace {

using namespace report_test;
using report::Step;
using units::System;

void expect_done_again(const std::vector<Step>& steps, const std::string& house) {
    for (const Step& step : steps) {
        const auto by_hand = worked_out(step.numbers);
        ASSERT_TRUE(by_hand) << house << ", " << step.what << ": " << step.numbers;
        EXPECT_NEAR(*by_hand, step.result, step.within) << house << ", " << step.what << ": " << step.numbers;
        EXPECT_TRUE(std::isfinite(step.result) && std::isfinite(step.within)) << house << ", " << step.what;
        EXPECT_FALSE(step.formula.empty() || step.source.empty() || step.printed.empty()) << step.what;
    }
}

// A step that hides a wrong formula behind a wide "within" would prove nothing.
void expect_narrow(const std::vector<Step>& steps, const std::string& house) {
    for (const Step& step : steps) {
        const bool difference_of_likes = std::abs(step.result) < 1e-3;
        if (!difference_of_likes) {
            EXPECT_LE(step.within, 0.02 * std::abs(step.result) + 0.03)
                << house << ", " << step.what << ": " << step.numbers;
        }
    }
}

TEST(Steps, of_every_branch_can_be_done_again_by_hand) {
    for (const NamedSheet& house : sheets())
        for (const System system : {System::us, System::si}) {
            const auto steps = report::branch_steps(branch_of(house.sheet), system);
            EXPECT_GT(steps.size(), 15u) << house.name;
            expect_done_again(steps, house.name);
            expect_narrow(steps, house.name);
        }
}

TEST(Steps, of_every_whole_system_can_be_done_again_by_hand) {
    for (const NamedSheet& house : sheets())
        for (const System system : {System::us, System::si}) {
            const auto steps = report::trunk_steps(trunk_of(house.sheet), system);
            EXPECT_GT(steps.size(), 12u) << house.name;
            expect_done_again(steps, house.name);
            expect_narrow(steps, house.name);
        }
}

TEST(Steps, of_every_house_can_be_done_again_by_hand) {
    for (const NamedSheet& house : sheets())
        for (const System system : {System::us, System::si}) {
            const auto steps = report::loads_steps(loads_of(house.sheet), system);
            expect_done_again(steps, house.name);
            expect_narrow(steps, house.name);
        }
}

TEST(Steps, of_the_places_for_a_register_can_be_done_again_by_hand) {
    questions::PlaceQuestion question;
    question.room = "bath";
    questions::PlaceAnswer answer = questions::compare_places(survey_of(bath_sheet()), question);
    for (std::size_t place = 0; place < answer.places.size(); ++place) {
        if (!answer.places[place].figures) continue;
        answer.chosen = place;
        for (const System system : {System::us, System::si}) {
            const auto steps = report::place_steps(answer, system);
            EXPECT_GE(steps.size(), 5u);
            expect_done_again(steps, "the bath");
            expect_narrow(steps, "the bath");
        }
    }
}

TEST(Steps, lead_from_the_loss_to_the_temperature_reached) {
    const auto steps = report::branch_steps(branch_of(bath_sheet()), System::us);
    std::size_t last = 0;
    for (const char* what :
         {"the bath: its north wall, heat loss", "heat to warm that air in the bath", "heat loss of the bath",
          "on-time of the heater", "supply air at the plenum", "supply air after piece 1 of the branch",
          "supply air the room needs", "available static pressure", "total effective length", "friction rate",
          "friction factor f", "pressure lost", "temperature the room reaches"}) {
        const auto at = std::find_if(steps.begin() + static_cast<std::ptrdiff_t>(last), steps.end(),
                                     [&](const Step& step) { return step.what.find(what) == 0; });
        ASSERT_NE(at, steps.end()) << what;
        last = static_cast<std::size_t>(at - steps.begin());
    }
}

TEST(Steps, give_the_answers_figures) {
    const auto answer = branch_of(bath_sheet());
    const auto steps = report::branch_steps(answer, System::si);
    const auto printed = [&](std::string_view what) {
        for (const Step& step : steps)
            if (step.what.find(what) == 0) return step;
        return Step{};
    };
    EXPECT_DOUBLE_EQ(printed("supply air the room needs").result,
                     answer.sizing.choice().needs->airflow.si() * 1000);
    EXPECT_DOUBLE_EQ(printed("friction rate").result, answer.sizing.budget.rate.si());
    EXPECT_GT(printed("pressure lost by that air").result, 0);
    EXPECT_NEAR(printed("temperature the room reaches").result, answer.sizing.choice().reaches.si() - 273.15,
                1e-9);
}

TEST(Steps, as_text_keep_to_the_paper) {
    const auto steps = report::branch_steps(branch_of(bath_sheet()), System::us);
    for (const int width : {60, 80, 100, 300}) {
        const std::string text = report::steps_text(steps, {width, false});
        std::size_t start = 0;
        for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', start)) {
            EXPECT_LE(end - start, static_cast<std::size_t>(std::min(width, 100)));
            start = end + 1;
        }
    }
}

TEST(Steps, as_text_number_each_step_with_its_source) {
    const Step step{"heat loss of a wall", "area x U x difference", "2.0 x 3.0 x 4.0", 24, 0.5, "24 W",
                    "a handbook"};
    EXPECT_EQ(report::steps_text({step}, {80, false}),
              "\nThe work, step by step\n"
              " 1  heat loss of a wall: area x U x difference\n"
              "    2.0 x 3.0 x 4.0 = 24 W\n"
              "    source: a handbook\n");
}

}  // namespace
