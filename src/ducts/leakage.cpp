#include "ducts/leakage.hpp"

#include <cmath>

#include "units/unit.hpp"

namespace ducts {
namespace {

// What CL 1 leaks: 1 cfm of 100 ft2 at 1 in.wc.
double at_one_pascal_of_cl_1() {
    const double per_area = units::unit::cfm.si() / (100 * units::unit::square_foot.si());
    return per_area / std::pow(units::unit::inch_wc.si(), leakage_exponent);
}

}  // namespace

LeakageClass leakage_class(Airtightness european) {
    constexpr double litre = 1e-3;
    switch (european) {
        case Airtightness::a:
            return {0.027 * litre};
        case Airtightness::b:
            return {0.009 * litre};
        case Airtightness::c:
            return {0.003 * litre};
        case Airtightness::d:
            break;
    }
    return {0.001 * litre};
}

LeakageClass leakage_class(double cl) { return {cl * at_one_pascal_of_cl_1()}; }

double north_american(LeakageClass made) { return made.at_one_pascal / at_one_pascal_of_cl_1(); }

units::Airflow leakage(LeakageClass made, units::Area area, units::Pressure inside) {
    const double out = made.at_one_pascal * area.si() * std::pow(std::abs(inside.si()), leakage_exponent);
    return units::Airflow(std::copysign(out, inside.si()));
}

}  // namespace ducts
