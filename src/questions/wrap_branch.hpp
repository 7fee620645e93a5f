// Wrap or no wrap: what insulation around the bare new ducts of a branch would save on its way.
//
// The same branch with the same pipe, once as the sheet has it, once with a wrap of stock thickness around
// each new supply duct that has none; both at the flow that holds the room. The heat lost on the way counts
// while the heater is on, at that flow: flow x specific heat x (supply - arrival). It is lost from the run,
// not always from the house: a basement keeps some of it. Wrap is taken flat (ducts/run_heat_loss.hpp).
#pragma once

#include <optional>

#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace questions {

inline constexpr units::Resistance stock_wrap{6 * units::unit::r_value_us};  // common practice

struct OnItsWay {
    units::Temperature arrival;
    units::Airflow needs;
    units::Power lost;
};

struct WrapEffect {
    OnItsWay bare, wrapped;
};

// Empty where no new duct is bare and lies in something colder than the heated rooms, or no flow holds the
// room.
std::optional<WrapEffect> wrap_effect(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
