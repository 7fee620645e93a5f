// See size_duct.hpp. The exact diameter is found by bisection on the logarithm: friction falls strictly with
// diameter.
#include "ducts/size_duct.hpp"

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/stock_sizes.hpp"

namespace ducts {

units::Length exact_diameter(units::Airflow flow, units::FrictionRate rate, const loads::Air& air) {
    double low = 0.005, high = 5;  // m: beyond anything in a house either way
    for (int i = 0; i < 60; ++i) {
        const double middle = std::sqrt(low * high);
        const bool loses_too_much =
            friction(section_of(house::Round{units::Length(middle)}), flow, air) > rate;
        (loses_too_much ? low : high) = middle;
    }
    return units::Length(high);
}

house::Round size_duct(units::Airflow flow, units::FrictionRate rate, units::Velocity limit,
                       const loads::Air& air) {
    for (const house::Round& pipe : stock_round_pipes()) {
        const Section section = section_of(pipe);
        if (flow / section.area <= limit && friction(section, flow, air) <= rate) return pipe;
    }
    return stock_round_pipes().back();
}

}  // namespace ducts
