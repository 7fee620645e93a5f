// What a blower's pressure gain is at any flow, from the points of its table.
//
//     smooth:         cubic pieces that meet the points and never rise between them: at each point the
//     weighted
//                     harmonic mean of the slopes beside it, none where they differ in sign
//     straight_lines: from point to point
//
// Beyond its ends the curve goes on straight with the slope it ends with: below zero too, where the blower is
// in the way of air that is driven through it. One point alone is a gain that does not change.
//
// Range: any flow. Accuracy: through the points exactly; between them that of the table.
// Source: Fritsch and Carlson 1980, Fritsch and Butland 1984 (memory), checked against networks solved with
// another library's pchip.
#pragma once

#include <span>
#include <vector>

#include "network/loss.hpp"
#include "units/quantity.hpp"

namespace network {

struct FanPoint {
    units::MassFlow flow;
    units::Pressure gain;
};

enum class Between { smooth, straight_lines };

class FanCurve {
  public:
    // Points by rising flow, none with a higher gain than the one before; of two at the same flow, as of a
    // blower that holds its airflow, the second counts as a millionth further on. std::invalid_argument for
    // points that rise or are none: what a sheet says is checked in house::build.
    explicit FanCurve(std::span<const FanPoint> points, Between between = Between::smooth);

    units::Pressure gain(units::MassFlow flow) const { return -loss(flow).pressure; }
    Loss loss(units::MassFlow flow) const;  // a gain is a loss below zero

  private:
    struct Knot {
        double flow, gain, slope;
    };
    std::vector<Knot> knots_;
    Between between_;
    double first_slope_ = 0, last_slope_ = 0;  // of the straights beyond the ends
};

}  // namespace network
