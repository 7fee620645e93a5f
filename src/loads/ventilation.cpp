#include "loads/ventilation.hpp"

#include <algorithm>

namespace loads {

OutdoorAir outdoor_air(units::Airflow leakage, const house::Ventilation& ventilation) {
    const auto [less, more] = std::minmax(ventilation.supply, ventilation.exhaust);
    OutdoorAir air;
    air.balanced = less;
    air.unbalanced = more - less;
    air.through_leaks = std::max(air.unbalanced, leakage + 0.5 * air.unbalanced);
    air.recovery = ventilation.recovery;
    return air;
}

}  // namespace loads
