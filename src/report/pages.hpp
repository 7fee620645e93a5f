// Answers as pages. Every figure is rounded as units/write.hpp says; airflow is the air as it leaves the
// register.
#pragma once

#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_place.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/check_sheet.hpp"
#include "questions/list_fittings.hpp"
#include "report/page.hpp"
#include "units/write.hpp"

namespace report {

struct PageOptions {
    units::System system = units::System::us;
    bool all_assumptions = false;  // also those that hardly matter
};

Page branch_page(const questions::BranchAnswer& answer, PageOptions options);
Page trunk_page(const questions::TrunkAnswer& answer, PageOptions options);
Page place_page(const questions::PlaceAnswer& answer, PageOptions options);
Page loads_page(const questions::LoadsAnswer& answer, PageOptions options);
Page fittings_page(const questions::FittingsAnswer& answer, units::System system);
Page check_page(const questions::CheckAnswer& answer, PageOptions options);  // a sheet without mistakes

}  // namespace report
