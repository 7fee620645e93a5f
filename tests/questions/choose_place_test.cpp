#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "questions/place.hpp"
#include "units/unit.hpp"

namespace {

using namespace questions;

// Enough air, quiet, so far from the blower's side.
Place place_at(double run, double from_water = 2) {
    Place place;
    place.figures = PlaceFigures{};
    place.figures->run = units::Length(run);
    place.figures->from_water = units::Length(from_water);
    ducts::Holding holding;
    holding.airflow = units::Airflow(0.03);
    place.figures->trial.needs = holding;
    place.figures->trial.gives = units::Airflow(0.035);
    place.location.middle = {units::Length(run), units::Length(1)};
    return place;
}

std::vector<Washes> none(std::size_t count) { return std::vector<Washes>(count, Washes::no); }

TEST(ChoosePlace, takes_the_shorter_run_where_nothing_else_differs) {
    const std::vector<Place> places{place_at(6), place_at(4), place_at(4.3)};
    const Choice choice = choose_place(places, WindowSide::indifferent, none(3));
    EXPECT_EQ(choice.chosen, 1u);
    EXPECT_EQ(choice.as_good, std::vector<std::size_t>{2});  // a foot of an estimated run tells nothing
}

TEST(ChoosePlace, where_the_cold_air_is_felt_what_washes_the_glass_comes_first) {
    const std::vector<Place> places{place_at(6), place_at(4)};
    EXPECT_EQ(choose_place(places, WindowSide::needed, {Washes::just, Washes::no}).chosen, 0u);
    EXPECT_EQ(choose_place(places, WindowSide::useful, {Washes::just, Washes::no}).chosen, 0u);
    EXPECT_EQ(choose_place(places, WindowSide::indifferent, {Washes::just, Washes::no}).chosen, 1u);
    EXPECT_EQ(choose_place(places, WindowSide::needed, none(2)).chosen, 1u);
    EXPECT_EQ(choose_place(places, WindowSide::needed, {Washes::surely, Washes::just}).chosen, 0u);
}

TEST(ChoosePlace, keeps_away_from_splash) {
    const std::vector<Place> places{place_at(4, 0.1), place_at(6)};
    EXPECT_EQ(choose_place(places, WindowSide::indifferent, none(2)).chosen, 1u);
}

TEST(ChoosePlace, what_is_ruled_out_is_never_chosen) {
    std::vector<Place> places{place_at(4), place_at(6)};
    places[0].ruled_out = RuledOut::stays_up;
    EXPECT_EQ(choose_place(places, WindowSide::indifferent, none(2)).chosen, 1u);
    places[1].ruled_out = RuledOut::loud;
    EXPECT_FALSE(choose_place(places, WindowSide::indifferent, none(2)).chosen);
}

TEST(RuledOut, says_the_first_limit_that_is_not_kept) {
    Place place = place_at(4);
    EXPECT_EQ(ruled_out(place), RuledOut::no);
    place.figures->sound = registers::Sound::loud;
    EXPECT_EQ(ruled_out(place), RuledOut::loud);
    place.figures->warm.from_high_up = registers::FromHighUp{registers::WarmAir::stays_up, {}, {}};
    EXPECT_EQ(ruled_out(place), RuledOut::stays_up);
    place.figures->trial.gives = units::Airflow(0.02);
    EXPECT_EQ(ruled_out(place), RuledOut::too_little_air);
    place.location.stopped = registers::Stopped{};
    EXPECT_EQ(ruled_out(place), RuledOut::stopped);
}

RC_GTEST_PROP(ChoosePlaceLaws, the_sheets_order_does_not_matter, ()) {
    const auto side = static_cast<WindowSide>(*rc::gen::inRange(0, 3));
    std::vector<Place> places;
    std::vector<Washes> washes;
    for (int i = *rc::gen::inRange(1, 8); i > 0; --i) {
        places.push_back(place_at(*rc::gen::inRange(0, 12), *rc::gen::inRange(0, 3) * 0.3));
        places.back().location.middle.north = units::Length(i);  // no two stand in one place
        places.back().ruled_out = *rc::gen::inRange(0, 4) == 0 ? RuledOut::loud : RuledOut::no;
        washes.push_back(static_cast<Washes>(*rc::gen::inRange(0, 3)));
    }
    const Choice one = choose_place(places, side, washes);
    std::vector<Place> reversed(places.rbegin(), places.rend());
    const Choice other = choose_place(reversed, side, {washes.rbegin(), washes.rend()});
    RC_ASSERT(one.chosen.has_value() == other.chosen.has_value());
    if (one.chosen) RC_ASSERT(*one.chosen == places.size() - 1 - *other.chosen);
    RC_ASSERT(one.as_good.size() == other.as_good.size());
}

}  // namespace
