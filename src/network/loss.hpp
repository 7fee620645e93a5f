// What a flow loses, and how steeply that rises with the flow.
#pragma once

#include "units/quantity.hpp"

namespace network {

using LossPerFlow = decltype(units::Pressure() / units::MassFlow());  // Pa s/kg

struct Loss {
    units::Pressure pressure;  // total pressure, of the flow's sign
    LossPerFlow slope;         // zero or more
};

}  // namespace network
