// Sizes a duct by friction and by velocity to what the shop has on its shelf.
//
// The exact size carries the airflow at the friction rate (Colebrook-White, ducts/friction.hpp) and stays
// below the velocity limit; the stock size is the next one up. What a stock size carries is the airflow at
// which it loses just the friction rate.
#pragma once

#include "ducts/section.hpp"
#include "ducts/stock_sizes.hpp"
#include "house/shape.hpp"
#include "loads/air.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method size_method{
    "duct size", "the smallest stock size whose airflow at the friction rate is enough",
    "equal friction, common practice; friction by Colebrook-White"};

// What a duct may lose per length and how fast its air may run.
struct SizeLimits {
    units::FrictionRate rate;
    units::Velocity velocity;
};
// The smallest stock round pipe that carries the flow within both; the largest there is where none does.
house::Round size_duct(units::Airflow flow, const SizeLimits& limits, const loads::Air& air,
                       Stock stock = Stock::us);

}  // namespace ducts
