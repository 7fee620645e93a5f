#include "questions/weigh_assumptions.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "house/cannot_answer.hpp"
#include "house/defaults.hpp"
#include "questions/sheets.hpp"

namespace {

using house::DefaultId;
using house::Stage;
using questions::Asked;
using questions::Weighed;

const house::Survey& survey() {
    static const house::Survey read = sheets::survey(sheets::bath());
    return read;
}

double elevation(const house::House& house) { return house.site.elevation.si(); }
double register_drop(const house::House& house) { return house.register_drop.si(); }

Weighed weigh(const questions::Question& question) {
    const house::Built built = build(survey(), {}, Stage::planned);
    return weigh_assumptions(survey(), built, Stage::planned, *question(built.house), question);
}

const questions::Weight& weight_of(const Weighed& weighed, DefaultId id) {
    for (const questions::Weight& weight : weighed.weights)
        if (weight.assumption.id == id) return weight;
    throw std::runtime_error("not weighed");
}

TEST(WeighAssumptions, every_assumption_is_weighed_once_in_the_tables_order) {
    const Weighed weighed = weigh([](const house::House& house) { return Asked{{elevation(house)}, {}}; });
    const auto assumed = build(survey(), {}, Stage::planned).assumptions;
    ASSERT_EQ(weighed.weights.size(), assumed.size());
    for (std::size_t i = 0; i < assumed.size(); ++i) EXPECT_EQ(weighed.weights[i].assumption, assumed[i]);
    EXPECT_TRUE(weighed.always_answered);
}

TEST(WeighAssumptions, a_figure_of_one_default_ranges_as_the_default_does) {
    const Weighed weighed = weigh([](const house::House& house) { return Asked{{elevation(house)}, {}}; });
    const house::DefaultRow& row = default_row(DefaultId::elevation);
    EXPECT_NEAR(weighed.ranges.at(0).low, row.low, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).value, row.value, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).high, row.high, 1e-9);
}

// A question about all ducts at once is weighed as such: the leaks of the house built again are there, too.
TEST(WeighAssumptions, what_only_the_whole_system_assumes_is_weighed_with_it) {
    const questions::Question supply_leakage = [](const house::House& house) {
        return Asked{{std::get<house::LeakageShares>(house.whole_system.value().leakage).supply}, {}};
    };
    const house::Built built = build(survey(), {}, Stage::planned, house::Extent::whole_system);
    const Weighed weighed =
        weigh_assumptions(survey(), built, Stage::planned, *supply_leakage(built.house), supply_leakage);
    const house::DefaultRow& row = default_row(DefaultId::supply_leakage);
    EXPECT_NEAR(weighed.ranges.at(0).low, row.low, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).high, row.high, 1e-9);
}

TEST(WeighAssumptions, a_figure_that_falls_as_the_default_rises_ranges_the_other_way_round) {
    const Weighed weighed = weigh([](const house::House& house) { return Asked{{-elevation(house)}, {}}; });
    const house::DefaultRow& row = default_row(DefaultId::elevation);
    EXPECT_NEAR(weighed.ranges.at(0).low, -row.high, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).high, -row.low, 1e-9);
}

// Elevation 0 to 152.4 to 457.2 m, register 0.02 to 0.03 to 0.05 in.wc: scaled to shifts of 3 and 4 down, 6
// and 8 up, by hand.
TEST(WeighAssumptions, shifts_of_two_defaults_combine_as_the_root_of_their_squares) {
    const auto figure = [](const house::House& house) {
        const double hundredths = register_drop(house) / 249.08891 * 100;  // 2, 3, 5
        return Asked{{3 * elevation(house) / 152.4 + 4 * hundredths}, {}};
    };
    const Weighed weighed = weigh(figure);
    EXPECT_NEAR(weighed.ranges.at(0).value, 3 + 12, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).low, 15 - std::hypot(3, 4), 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).high, 15 + std::hypot(6, 8), 1e-9);
}

TEST(WeighAssumptions, a_figure_worst_in_the_middle_moves_one_way_only) {
    const auto figure = [](const house::House& house) {
        return Asked{{std::abs(elevation(house) - 152.4)}, {}};
    };
    const Weighed weighed = weigh(figure);
    EXPECT_NEAR(weighed.ranges.at(0).low, 0, 1e-9);
    EXPECT_NEAR(weighed.ranges.at(0).high, 304.8, 1e-9);
}

TEST(WeighAssumptions, what_nothing_assumed_touches_has_no_range) {
    const Weighed weighed = weigh([](const house::House&) { return Asked{{7}, {}}; });
    EXPECT_EQ(weighed.ranges.at(0).low, 7);
    EXPECT_EQ(weighed.ranges.at(0).high, 7);
}

TEST(WeighAssumptions, each_figure_has_its_own_range) {
    const Weighed weighed = weigh([](const house::House& house) {
        return Asked{{elevation(house), register_drop(house), 1}, {}};
    });
    ASSERT_EQ(weighed.ranges.size(), 3u);
    EXPECT_NEAR(weighed.ranges[0].high, 457.2, 1e-9);
    EXPECT_NEAR(weighed.ranges[1].high, 0.05 * 249.08891, 1e-9);
    EXPECT_EQ(weighed.ranges[2].high, 1);
}

TEST(WeighAssumptions, the_choice_at_each_end_is_kept) {
    const Weighed weighed = weigh([](const house::House& house) {
        return Asked{{1}, elevation(house) > 300 ? "high" : "low"};
    });
    EXPECT_EQ(weight_of(weighed, DefaultId::elevation).at_low->choice, "low");
    EXPECT_EQ(weight_of(weighed, DefaultId::elevation).at_high->choice, "high");
    EXPECT_EQ(weight_of(weighed, DefaultId::register_drop).at_high->choice, "low");
}

// One end without an answer is a finding, whether the question gives none or throws.
TEST(WeighAssumptions, no_answer_at_one_end_is_a_finding_and_moves_nothing) {
    const questions::Question questions_without_answer[] = {
        [](const house::House& house) {
            return elevation(house) > 300 ? std::nullopt
                                          : std::optional<Asked>(Asked{{elevation(house)}, {}});
        },
        [](const house::House& house) -> std::optional<Asked> {
            if (elevation(house) > 300) throw house::CannotAnswer({}, "too high up");
            return Asked{{elevation(house)}, {}};
        }};
    for (const auto& question : questions_without_answer) {
        const Weighed weighed = weigh(question);
        EXPECT_FALSE(weighed.always_answered);
        EXPECT_TRUE(weight_of(weighed, DefaultId::elevation).at_low);
        EXPECT_FALSE(weight_of(weighed, DefaultId::elevation).at_high);
        EXPECT_NEAR(weighed.ranges.at(0).low, 0, 1e-9);
        EXPECT_NEAR(weighed.ranges.at(0).high, 152.4, 1e-9);
    }
}

TEST(WeighAssumptions, the_stage_asked_about_is_the_stage_weighed) {
    const auto outlets = [](const house::House& house) {
        return Asked{{static_cast<double>(house.outlets.size())}, {}};
    };
    for (const auto& [stage, count] : {std::pair(Stage::found, 2.0), std::pair(Stage::planned, 3.0)}) {
        const house::Built built = build(survey(), {}, stage);
        const Weighed weighed = weigh_assumptions(survey(), built, stage, outlets(built.house), outlets);
        EXPECT_EQ(weighed.ranges.at(0).low, count);
        EXPECT_EQ(weighed.ranges.at(0).high, count);
    }
}

}  // namespace
