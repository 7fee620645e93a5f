#include "questions/return_side.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ducts/section.hpp"
#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_branch;
using sheets::with;

TEST(WayBack, is_as_large_as_the_air_the_room_needs_asks_for) {
    const auto answer = answer_branch(sheets::survey(sheets::bath()));
    ASSERT_TRUE(answer.way_back);
    // 1.07 cfm per in2 and root Pa, at 3 Pa: building-science research report on transfer grilles (read).
    const double cfm = answer.way_back->flow / units::unit::cfm;
    EXPECT_NEAR(answer.way_back->opening / units::unit::square_inch, cfm / (1.07 * std::sqrt(3.0)),
                0.03 * cfm);
    // A pair of grilles three quarters open, (2 C + 1) velocity pressures over the face: 0.92 of a plain
    // hole.
    EXPECT_NEAR(answer.way_back->grille / answer.way_back->opening, 0.92, 0.02);
}

// Over the ceiling it is grilles, bends and friction, so more than the plain hole.
TEST(WayBack, a_jump_duct_lets_the_air_through_and_the_next_size_down_does_not) {
    const auto answer = answer_branch(sheets::survey(sheets::bath()));
    ASSERT_TRUE(answer.way_back && answer.way_back->jump);
    const questions::WayBack& back = *answer.way_back;
    const units::Area face = back.jump->grille.width * back.jump->grille.height;
    EXPECT_GE(face, 1.5 * back.grille);
    EXPECT_GT(ducts::section_of(back.jump->duct).area, back.opening);
    const ducts::JumpDuct jump{face, 0.75, questions::jump_length, 1.2};
    const auto through = [&](house::Round duct) {
        return ducts::through_jump_duct(jump, ducts::section_of(duct, house::DuctKind::flex, 1), back.air);
    };
    EXPECT_GE(through(back.jump->duct), back.flow);
    EXPECT_LT(through({back.jump->duct.diameter - 1 * units::unit::inch}), back.flow);
}

TEST(ReturnFaces, are_the_blowers_air_at_the_recommended_speeds) {
    const auto answer = answer_branch(sheets::survey(sheets::bath()));
    const questions::ReturnFaces& faces = answer.return_faces;
    const double cfm = faces.flow / units::unit::cfm;
    EXPECT_GT(cfm, 300);
    // 400 ft/min at grilles, 300 at a filter: register maker's engineering pages (read).
    EXPECT_NEAR(faces.grilles / units::unit::square_foot, cfm / 400, 1e-9);
    EXPECT_NEAR(faces.filter / units::unit::square_foot, cfm / 300, 1e-9);
    if (faces.stock_filter) {
        const house::Rectangular& stock = faces.stock_filter->face;
        EXPECT_GE(stock.width * stock.height, faces.filter);
    }
}

TEST(ReturnFaces, a_grille_that_is_described_is_judged_by_its_own_face) {
    const auto speed = [](const std::string& face) {
        const auto answer = answer_branch(
            sheets::survey(with(sheets::bath(), "[heater]",
                                "[[duct]]\nname = \"drop\"\nside = \"return\"\nto = \"blower\"\n"
                                "shape = \"14 x 20 in\"\nlength = \"10 ft\"\n[[outlet]]\nname = \"second "
                                "return\"\nduct = \"drop\"\nroom = \"bath\"\nface = \"" +
                                    face + "\"\nmount = \"low wall\"\n[heater]")));
        for (const questions::ReturnFace& described : answer.return_faces.described)
            if (answer.house.outlets[static_cast<std::size_t>(described.outlet)].name == "second return")
                return described;
        ADD_FAILURE() << "the grille is not described";
        return questions::ReturnFace{};
    };
    const auto wide = speed("30 x 20 in"), half = speed("15 x 20 in");
    EXPECT_NEAR(half.speed / wide.speed, 2, 0.1);
    EXPECT_FALSE(wide.too_fast());
    EXPECT_TRUE(speed("8 x 8 in").too_fast());
}

}  // namespace
