// Where the studs of an opened wall stand along it.
//
// The first is measured from the wall's west or south end, as windows are; the others follow at the spacing,
// which old work keeps only roughly: a stud beside a window or in a corner is not among them.
#include "house/builders.hpp"
#include "house/framing_ranges.hpp"
#include "units/write.hpp"

namespace house {
namespace {

bool any_given(const SurveyStuds& studs) { return studs.stud || studs.spacing || studs.first; }

// Whether each is given and could be measured.
bool are_placed(const SurveyStuds& studs) {
    return studs.stud && studs.spacing && studs.first && joist_spacing.holds(studs.spacing->value) &&
           joist_thickness.holds(studs.stud->value.first) && stud_depth.holds(studs.stud->value.second);
}

void blame_missing_words(Work& work, const SurveyWall& wall, const std::string& where) {
    work.ledger.required(wall.studs.stud, wall.place, "the thickness and depth of the studs of " + where,
                         "stud = [\"1-5/8 in\", \"3-5/8 in\"]");
    work.ledger.required(wall.studs.spacing, wall.place, "the spacing of the studs of " + where,
                         "stud_spacing = \"16 in\"");
    work.ledger.required(wall.studs.first, wall.place, "where the first stud of " + where + " stands",
                         "first_stud = \"9 in\", its centre from the wall's west or south end");
}

void blame_measures(Work& work, const SurveyStuds& studs, const std::string& where) {
    constexpr units::Length tape{0.003};
    Ledger& ledger = work.ledger;
    if (studs.stud) {
        within(ledger, studs.stud->place, studs.stud->value.first, joist_thickness,
               "the thickness of the studs of " + where);
        within(ledger, studs.stud->place, studs.stud->value.second, stud_depth,
               "the depth of the studs of " + where);
    }
    if (!studs.spacing) return;
    const units::Length spacing = studs.spacing->value;
    if (!within(ledger, studs.spacing->place, spacing, joist_spacing, "the spacing of the studs of " + where))
        return;
    if (studs.first && studs.first->value > spacing + tape)
        ledger.blame(studs.first->place, "the first stud of " + where + " stands beyond a spacing",
                     "first_stud is the centre of the one nearest the wall's west or south end; the spacing "
                     "is " +
                         units::write(spacing, units::System::us).text());
}

}  // namespace

void blame_misplaced_studs(Work& work, const SurveyRoom& written, const Room& room) {
    for (const SurveyWall& wall : written.walls) {
        if (!any_given(wall.studs)) continue;
        const std::string where = "the " + std::string(word(wall.side)) + " wall of the " + room.name;
        blame_missing_words(work, wall, where);
        blame_measures(work, wall.studs, where);
    }
}

void place_studs(const Work& work, const SurveyRoom& written, const SurveyStuds& studs, WallSide side,
                 PlanWall& wall) {
    if (!are_placed(studs)) return;
    wall.stud_depth = studs.stud->value.second;
    const units::Length half = studs.stud->value.first / 2,
                        start = studs.first->value + moved_along(work, written, side);
    for (int number = 1; number <= most_studs_in_a_wall; ++number) {
        const units::Length centre = start + (number - 1) * studs.spacing->value;
        if (centre - half >= wall.length) break;
        if (centre + half > units::Length()) wall.studs.push_back({number, centre - half, centre + half});
    }
}

}  // namespace house
