// The airflow of a register by the time it takes to fill a bag taped to a frame, held over it empty.
//
//     volume of a filled bag of w x h laid flat, w the shorter: w3 (h / (pi w) - 0.142 (1 - 10^(-h / w)))
//     airflow = 128.5 cfm x (t V0 / V)^-0.82, t in s, V0: that of 66 x 91 cm
//
// Volume: A. C. Robin, Paper bag problem, Mathematics Today 2004 (as carried on a public page: read), a bag
// closed all round; good to 10 %. Airflow: fitted within 3.1 % (derived) to three points of a housing
// agency for a bag of 66 x 91 cm, 2 to 10 s (read); a larger bag takes longer in proportion (derived). Good
// to +-20 %: the bag is limp before it is full, and a slow one leaks. Better as a ratio between registers.
#pragma once

#include "house/shape.hpp"
#include "units/quantity.hpp"

namespace house {

units::Volume filled_bag(const Two& flat);
// Both above zero.
units::Airflow airflow_into_bag(units::Volume bag, units::Duration time);

}  // namespace house
