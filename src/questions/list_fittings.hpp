// What does each fitting lose? All of the table, at one size and flow.
#pragma once

#include <vector>

#include "ducts/fittings.hpp"
#include "house/shape.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace questions {

// The duct that holds the fitting, and the trunk it leaves or joins, with the flow of both together there.
struct FittingsQuestion {
    house::Shape duct = house::Round{6 * units::unit::inch};
    units::Airflow flow = 100 * units::unit::cfm;
    house::Shape trunk = house::Rectangular{8 * units::unit::inch, 16 * units::unit::inch};
    units::Airflow trunk_flow = 700 * units::unit::cfm;
};

struct ListedFitting {
    ducts::Fitting fitting;
    units::Pressure loss;
    ducts::LossRange range;
    double coefficient = 0;    // on the velocity pressure of the duct
    units::Length equivalent;  // of that duct
};

struct FittingsAnswer {
    FittingsQuestion asked;
    ducts::Section duct;
    units::Velocity speed, trunk_speed;
    units::FrictionRate friction, counted_at;  // counted_at: what turns a loss into length
    std::vector<ListedFitting> fittings;       // in the table's order
};

// At sea level and 20 C. Throws house::AskedWrongly for a size or flow no house has.
FittingsAnswer list_fittings(const FittingsQuestion& question);

}  // namespace questions
