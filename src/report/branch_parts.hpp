// The parts of a branch page, one file each; private to this folder.
#pragma once

#include <string>
#include <vector>

#include "ducts/return_path.hpp"
#include "questions/answer_branch.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

// An answer and the units it is written in.
struct BranchView {
    const questions::BranchAnswer& answer;
    units::System system = units::System::us;

    const questions::BranchSizing& sizing() const { return answer.sizing; }
    const questions::BranchTrial& choice() const { return answer.sizing.choice(); }
    std::string room() const;  // "bath"
    units::Temperature wanted() const { return answer.sizing.setting.asked.inside; }
    units::Temperature night() const { return answer.house.site.winter_outdoor; }
    const house::Bay* bay() const;  // the tightest it is led through; nullptr where none is named
    bool blocked() const { return answer.passage && !answer.passage->passes(answer.sizing.chosen); }
    bool needs_none() const { return choice().needs && choice().needs->flow.si() <= 0; }
    // Other air pushes harder: none comes out.
    bool no_air() const { return choice().gives.si() <= 0; }
    bool largest_fails() const;  // no pipe up to the largest branch does it
};

// branch_verdict.cpp: the first two lines, and what would help where the answer is no.
std::string branch_headline(const BranchView& view);
std::string branch_verdict(const BranchView& view);
std::vector<std::string> what_would_help(const BranchView& view);

Table branch_table(const BranchView& view);        // branch_table.cpp
Note stack_note(const BranchView& view);           // likewise: its equivalent round; empty without one
Note why_it_needs(const BranchView& view);         // branch_need.cpp
Note friction_rate_note(const BranchView& view);   // branch_friction_rate.cpp
Note close_fittings_note(const BranchView& view);  // likewise; empty where they stand apart
Note bay_note(const BranchView& view);             // branch_bay.cpp
std::string blocked_sentence(const BranchView& view);
Note ducts_note(const BranchView& view);             // branch_ducts.cpp
Note way_back_note(const BranchView& view);          // branch_return.cpp
Note return_note(const BranchView& view);            // likewise
Note wrap_note(const BranchView& view);              // branch_wrap.cpp
std::string sweat_sentence(const BranchView& view);  // likewise, of a branch that is looked at in summer
Note parts_to_buy(const BranchView& view);           // branch_purchase.cpp

// branch_place.cpp: where the branch begins and where its air comes out.
std::vector<const house::Duct*> new_ducts(const BranchView& view);  // from the trunk outwards
std::string where_it_begins(const BranchView& view);                // "the main trunk"
std::string where_it_ends(const BranchView& view);  // "the floor register under the north window"

}  // namespace report
