// What a damper in a pipe loses by the place of its handle.
//
// Degrees from open. To 60 the table of ducts/loss_laws.hpp; from there to shut, 90 degrees, ln C rises in a
// straight line to 1,500, so that a shut damper lets a few per cent through, as stamped plates do (estimate).
// 0 is a damper that is open, or none: no loss. Good to +-30 % to 45 degrees, to a factor of two beyond.
#pragma once

namespace network {

inline constexpr double shut_damper = 90;

// On the velocity pressure in the pipe; 0 to 90 degrees.
double handle_coefficient(double degrees);

}  // namespace network
