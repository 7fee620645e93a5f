// "Size a new branch": the sizing of the planned house's new outlet, with the range that the assumptions
// leave.
#pragma once

#include <optional>
#include <string>

#include "house/survey.hpp"
#include "questions/branch_ducts.hpp"
#include "questions/branch_passage.hpp"
#include "questions/leftover_ducts.hpp"
#include "questions/return_side.hpp"
#include "questions/size_branch.hpp"
#include "questions/sweating_branch.hpp"
#include "questions/verdict.hpp"
#include "questions/weigh_assumptions.hpp"
#include "questions/wrap_branch.hpp"

namespace questions {

// What weigh_assumptions asks for, in the order of Weighed::ranges.
enum class BranchFigure { needs, gives, margin, reaches };  // m3/s, m3/s, m3/s, K

// The same room at the temperature of the rest of the house, where it is wanted warmer.
struct AtHouseTemperature {
    units::Temperature temperature;
    BranchTrial choice;
    units::Power
        electric;  // what an electric heater would add to reach the wanted temperature with that pipe
};

struct BranchAnswer {
    house::House house;  // as planned
    house::Outlet outlet;
    BranchSizing sizing;
    Weighed weighed;
    Verdict verdict = Verdict::no;
    std::optional<AtHouseTemperature> cooler;
    std::optional<BranchPassage> passage;   // where the sheet leads it through bays
    std::vector<ducts::JudgedDuct> judged;  // the ducts whose shape the sheet gives
    std::vector<LeftoverDuct> leftovers;    // old pipes much too wide, or leading nowhere
    std::optional<WayBack> way_back;        // of the room's air past its closed door
    ReturnFaces return_faces;
    std::optional<WrapEffect> wrap;           // of bare new ducts in the cold
    std::optional<BranchInSummer> in_summer;  // its outside, where cooled air runs in it
    std::optional<units::Power> loss_before;  // of the room in the house as found, where it differs
    Range range(BranchFigure figure) const { return weighed.ranges[static_cast<std::size_t>(figure)]; }
};

// The outlet asked for by name, or the only new supply outlet. Throws house::CannotAnswer where there is none
// or more than one, or no such name. The survey must be free of mistakes (questions/check_sheet).
BranchAnswer answer_branch(const house::Survey& survey, const std::string& outlet_name = {},
                           ducts::Stock stock = ducts::Stock::us);

}  // namespace questions
