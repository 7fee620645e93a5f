// Sizes a duct by friction and by velocity to what the shop has on its shelf.
//
// The exact size carries the airflow at the friction rate (Colebrook-White, ducts/friction.hpp) and stays
// below the velocity limit; the stock size is the next one up. What a stock size carries is the airflow at
// which it loses just the friction rate.
#pragma once

#include "ducts/section.hpp"
#include "house/shape.hpp"
#include "loads/air.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method size_method{
    "duct size", "the smallest stock size whose airflow at the friction rate is enough",
    "equal friction, common practice; friction by Colebrook-White"};

units::Length exact_diameter(units::Airflow flow, units::FrictionRate rate, const loads::Air& air);
// The smallest stock round pipe that carries the flow at the rate and below the velocity limit; the largest
// there is where none does.
house::Round size_duct(units::Airflow flow, units::FrictionRate rate, units::Velocity limit,
                       const loads::Air& air);

}  // namespace ducts
