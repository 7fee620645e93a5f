// Fittings and sections at any size: what scales, what unit a size is written in, what a larger size loses.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>
#include <variant>

#include "ducts/a_fitting_place.hpp"
#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/reference_air.hpp"
#include "ducts/stock_sizes.hpp"
#include "units/read.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

double between(double low, double high) {
    constexpr int steps = 10'000'000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

bool near(double a, double b, double relative) {
    return std::abs(a - b) <= relative * std::max(std::abs(a), std::abs(b));
}

Fitting any_fitting() { return fittings()[*rc::gen::inRange<std::size_t>(0, fittings().size())]; }

RC_GTEST_PROP(FittingScale, loss_goes_with_density_and_the_square_of_the_velocity, ()) {
    const Fitting fitting = any_fitting();
    const double ratio = between(0.05, 1.2), share = between(0.01, 1), trunk = between(0.5, 8);
    const auto at = [&](double faster) {
        return place_of(units::Velocity(faster * share * trunk / ratio), units::Velocity(faster * trunk),
                        ratio);
    };
    loads::Air air = reference_air();
    const double once = fitting_loss(fitting, at(1), air).si();
    const double denser = between(0.5, 2), faster = between(0.2, 3);
    air.density = denser * air.density;
    air.viscosity = between(0.5, 2) * air.viscosity;
    RC_ASSERT(near(fitting_loss(fitting, at(faster), air).si(), denser * faster * faster * once, 1e-9));
}

RC_GTEST_PROP(FittingScale, loss_is_the_same_in_a_house_of_any_size, ()) {
    const Fitting fitting = any_fitting();
    const FittingPlace small =
        place_of(units::Velocity(between(0.5, 8)), units::Velocity(between(0.5, 8)), between(0.05, 1.2));
    const double larger = between(1, 10);
    const auto grown = [&](const Section& section) {
        Section made = section;
        made.area = larger * larger * section.area;
        made.hydraulic_diameter = larger * section.hydraulic_diameter;
        made.perimeter = larger * section.perimeter;
        return made;
    };
    const FittingPlace large{grown(small.duct), larger * larger * small.flow, grown(small.trunk),
                             larger * larger * small.trunk_flow};
    const loads::Air air = reference_air();
    RC_ASSERT(near(fitting_loss(fitting, large, air).si(), fitting_loss(fitting, small, air).si(), 1e-9));
}

units::Length length_read(const std::string& text) {
    return std::get<units::Length>(units::read_length(text));
}
units::Airflow airflow_read(const std::string& text) {
    return std::get<units::Airflow>(units::read_airflow(text));
}

std::string decimals(long long scaled, int places) {
    std::string digits = std::to_string(scaled);
    const auto wanted = static_cast<std::size_t>(places) + 1;
    if (digits.size() < wanted) digits.insert(0, wanted - digits.size(), '0');
    return digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
}

// So many sixteenths of an inch, and whole cfm, each written both ways to its last digit.
struct Written {
    std::string us, si;
};
Written inches(int sixteenths) {
    return {decimals(625LL * sixteenths, 4) + " in", decimals(15875LL * sixteenths, 4) + " mm"};
}
Written cfm(int whole) {
    return {std::to_string(whole) + " cfm", decimals(4719474432LL * whole, 10) + " L/s"};
}

RC_GTEST_PROP(FittingUnits, inches_and_millimetres_read_from_a_sheet_lose_the_same, ()) {
    const Fitting fitting = any_fitting();
    const Written pipe = inches(*rc::gen::inRange(48, 200)), wide = inches(*rc::gen::inRange(100, 400)),
                  high = inches(*rc::gen::inRange(100, 200));
    const int branch = *rc::gen::inRange(1, 200), more = *rc::gen::inRange(0, 1000);
    const Written flow = cfm(branch), trunk_flow = cfm(branch + more);
    const auto place = [&](std::string Written::*as) {
        FittingPlace at;
        at.duct = section_of(house::Round{length_read(pipe.*as)});
        at.trunk = section_of(house::Rectangular{length_read(wide.*as), length_read(high.*as)});
        at.flow = airflow_read(flow.*as), at.trunk_flow = airflow_read(trunk_flow.*as);
        return at;
    };
    const loads::Air air = reference_air();
    const FittingPlace us = place(&Written::us), si = place(&Written::si);
    // What is drawn along nearly as hard as it is held back is the small difference of two large figures.
    const double scale = velocity_pressure(us.trunk_flow / us.trunk.area, air).si() +
                         velocity_pressure(us.flow / us.duct.area, air).si();
    RC_ASSERT(std::abs((fitting_loss(fitting, us, air) - fitting_loss(fitting, si, air)).si()) <=
              1e-12 * scale * 10);
}

RC_GTEST_PROP(StockLaws, a_larger_stack_never_loses_more, ()) {
    const double flow = std::exp(between(std::log(1e-2), std::log(1e4)));
    for (const Stock shelf : {Stock::us, Stock::metric}) {
        const auto stacks = stock_wall_stacks(shelf);
        for (const house::Rectangular& one : stacks)
            for (const house::Rectangular& other : stacks)
                if (other.width >= one.width && other.height >= one.height)
                    RC_ASSERT(friction_of(other, flow) <= friction_of(one, flow));
    }
}

RC_GTEST_PROP(StockLaws, a_wider_trunk_never_loses_more, ()) {
    const double flow = std::exp(between(std::log(1e-2), std::log(1e4)));
    const auto trunks = stock_trunks();
    for (std::size_t i = 1; i < trunks.size(); ++i)
        RC_ASSERT(friction_of(trunks[i], flow) < friction_of(trunks[i - 1], flow));
}

RC_GTEST_PROP(StockLaws, a_flat_oval_larger_either_way_never_loses_more, ()) {
    const double flow = std::exp(between(std::log(1e-2), std::log(1e4)));
    const double minor = between(2, 12), major = minor + between(0, 12);
    const auto oval = [](double wide, double high) {
        return house::FlatOval{wide * unit::inch, high * unit::inch};
    };
    const double wider = major + between(0, 6), deeper = std::min(major, minor + between(0, 6));
    RC_ASSERT(friction_of(oval(wider, minor), flow) <= friction_of(oval(major, minor), flow) * (1 + 1e-12));
    RC_ASSERT(friction_of(oval(major, deeper), flow) <= friction_of(oval(major, minor), flow) * (1 + 1e-12));
}

}  // namespace
}  // namespace ducts
