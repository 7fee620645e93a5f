#include <gtest/gtest.h>

#include "house/a_survey.hpp"
#include "house/mirrored.hpp"

namespace {

using namespace a_survey;
using house::WallSide;

// Studs of 0.04 x 0.09 m at 0.4 m in one wall of a room of 4 x 3 m, the first at 0.3 m.
house::Survey with_studs(WallSide side) {
    house::Survey survey = one_room();
    add_studs(add_wall(survey.rooms[0], 110, side, "outdoors"), 0.3);
    return survey;
}

const house::PlanWall& wall_of(const house::Built& built, WallSide side) {
    return built.house.rooms.at(0).plan.value().wall(side);
}

std::vector<std::string> blamed(const house::Survey& survey) {
    std::vector<std::string> texts;
    for (const house::Mistake& mistake : planned(survey).mistakes) texts.push_back(mistake.text);
    return texts;
}

TEST(StudsIn, follow_the_first_at_the_spacing_to_the_walls_end) {
    const house::Built built = planned(with_studs(WallSide::north));
    EXPECT_THAT(built.mistakes, IsEmpty());
    const house::PlanWall& wall = wall_of(built, WallSide::north);
    ASSERT_EQ(wall.studs.size(), 10u);  // 0.3, 0.7 ... 3.9 m
    EXPECT_EQ(wall.studs[9].number, 10);
    EXPECT_NEAR(wall.studs[0].from.si(), 0.28, 1e-12);
    EXPECT_NEAR(wall.studs[9].to.si(), 3.92, 1e-12);
    EXPECT_EQ(wall.stud_depth, m(0.09));
    EXPECT_THAT(wall_of(built, WallSide::east).studs, IsEmpty());
}

TEST(StudsIn, stay_where_they_are_when_the_end_they_are_measured_from_moves) {
    house::Survey survey = with_studs(WallSide::north);
    add_wall(survey.rooms[0], 120, WallSide::west, "outdoors").room_grows = at(121, m(0.1));
    EXPECT_NEAR(wall_of(planned(survey), WallSide::north).studs.at(0).from.si(), 0.38, 1e-12);
    EXPECT_NEAR(wall_of(found(survey), WallSide::north).studs.at(0).from.si(), 0.28, 1e-12);
}

TEST(StudsIn, need_thickness_and_depth_spacing_and_the_first) {
    house::Survey survey = with_studs(WallSide::north);
    house::SurveyStuds& studs = survey.rooms[0].walls[0].studs;
    studs.stud.reset();
    studs.first.reset();
    EXPECT_THAT(blamed(survey),
                ElementsAre(testing::HasSubstr("the thickness and depth of the studs of the north wall"),
                            testing::HasSubstr("where the first stud of the north wall of the bath stands")));
    EXPECT_THAT(wall_of(planned(survey), WallSide::north).studs, IsEmpty());
}

TEST(StudsIn, that_cannot_be_are_blamed_each_once) {
    house::Survey survey = with_studs(WallSide::north);
    house::SurveyStuds& studs = survey.rooms[0].walls[0].studs;
    studs.first->value = m(0.5);
    EXPECT_THAT(blamed(survey), ElementsAre("the first stud of the north wall of the bath stands beyond a "
                                            "spacing"));
    studs.first->value = m(0.3);
    studs.stud->value = {m(0.5), m(1)};
    studs.spacing->value = m(0.01);
    EXPECT_EQ(blamed(survey).size(), 3u);
}

TEST(StudsIn, a_mirrored_wall_has_mirrored_studs) {
    const house::Survey survey = with_studs(WallSide::north);
    const auto here = wall_of(planned(survey), WallSide::north).studs;
    const auto there = wall_of(planned(mirrored_east_west(survey)), WallSide::north).studs;
    ASSERT_EQ(here.size(), there.size());
    for (std::size_t i = 0; i < here.size(); ++i)
        EXPECT_NEAR(here[i].from.si() + there[here.size() - 1 - i].to.si(), 4, 1e-9);
}

}  // namespace
