// What holds for every bay.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "routes/bay_section.hpp"
#include "units/unit.hpp"

namespace routes {
namespace {

using units::unit::inch;

double in_range(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1000)) / 1000.0;
}

house::Bay any_bay(int fewest_pipes = 0) {
    house::Bay bay;
    bay.width = in_range(6, 24) * inch;
    bay.depth = in_range(5, 12) * inch;
    bay.clearance = in_range(0, 1) * inch;
    const int pipes = fewest_pipes + *rc::gen::inRange(0, 3);
    for (int i = 0; i < pipes; ++i) {
        house::BayPipe pipe;
        pipe.outside = in_range(0.5, 4.5) * inch;
        pipe.from_side = in_range(0, 1) * (bay.width - pipe.outside);
        pipe.top = in_range(0, 1) * (bay.depth - pipe.outside);
        pipe.other_top = in_range(0, 1) * (bay.depth - pipe.outside);
        pipe.across = *rc::gen::inRange(0, 5) == 0;
        bay.pipes.push_back(pipe);
    }
    return bay;
}

house::Shape any_duct() {
    if (*rc::gen::inRange(0, 2) == 0) return house::Round{in_range(2, 9) * inch};
    return house::Rectangular{in_range(2, 12) * inch, in_range(2, 5) * inch};
}

constexpr double accuracy = 3e-5;  // m

RC_GTEST_PROP(BayLaws, a_wider_or_deeper_one_never_passes_less, ()) {
    const house::Bay bay = any_bay();
    const house::Shape duct = any_duct();
    house::Bay wider = bay, deeper = bay;
    wider.width += in_range(0, 3) * inch;
    for (house::BayPipe& pipe : wider.pipes)  // one across goes on as it fell
        if (pipe.across) pipe.other_top += (wider.width / bay.width - 1) * (pipe.other_top - pipe.top);
    deeper.depth += in_range(0, 3) * inch;
    house::Bay empty = bay;
    empty.pipes.clear();
    if (spare(empty, duct) < units::Length()) return;  // then what it lacks when empty is told, not its pipes
    RC_ASSERT(spare(wider, duct).si() >= spare(bay, duct).si() - accuracy);
    RC_ASSERT(spare(deeper, duct).si() >= spare(bay, duct).si() - accuracy);
}

RC_GTEST_PROP(BayLaws, mirrored_or_upside_down_it_passes_the_same, ()) {
    const house::Bay bay = any_bay();
    const house::Shape duct = any_duct();
    house::Bay mirrored = bay, turned = bay;
    for (house::BayPipe& pipe : mirrored.pipes) {
        pipe.from_side = bay.width - pipe.from_side - pipe.outside;
        if (pipe.across) std::swap(pipe.top, pipe.other_top);
    }
    for (house::BayPipe& pipe : turned.pipes) {
        pipe.top = bay.depth - pipe.top - pipe.outside;
        pipe.other_top = bay.depth - pipe.other_top - pipe.outside;
    }
    RC_ASSERT(std::abs((spare(mirrored, duct) - spare(bay, duct)).si()) <= accuracy);
    RC_ASSERT(std::abs((spare(turned, duct) - spare(bay, duct)).si()) <= accuracy);
}

RC_GTEST_PROP(BayLaws, taking_a_pipe_out_never_passes_less, ()) {
    house::Bay bay = any_bay(1);
    const house::Shape duct = any_duct();
    const units::Length before = spare(bay, duct);
    bay.pipes.pop_back();
    RC_ASSERT(spare(bay, duct).si() >= before.si() - accuracy);
}

RC_GTEST_PROP(BayLaws, a_larger_pipe_or_duct_never_passes_more, ()) {
    const house::Bay bay = any_bay();
    const double small = in_range(2, 6), more = in_range(0, 3);
    const house::Shape larger = house::Round{(small + more) * inch}, smaller = house::Round{small * inch};
    RC_ASSERT(!passes(spare(bay, larger)) || passes(spare(bay, smaller)));
    house::Bay empty = bay;
    empty.pipes.clear();
    if (spare(empty, larger) < units::Length()) return;  // as above
    RC_ASSERT(spare(bay, larger).si() <= spare(bay, smaller).si() + accuracy);
}

RC_GTEST_PROP(BayLaws, everything_twice_as_large_spares_twice_as_much, ()) {
    const house::Bay bay = any_bay();
    const double diameter = in_range(2, 8);
    house::Bay twice = bay;
    twice.width = 2 * bay.width, twice.depth = 2 * bay.depth, twice.clearance = 2 * bay.clearance;
    for (house::BayPipe& pipe : twice.pipes) {
        pipe.outside = 2 * pipe.outside, pipe.from_side = 2 * pipe.from_side;
        pipe.top = 2 * pipe.top, pipe.other_top = 2 * pipe.other_top;
    }
    const double one = spare(bay, house::Round{diameter * inch}).si();
    RC_ASSERT(std::abs(spare(twice, house::Round{2 * diameter * inch}).si() - 2 * one) <= 2 * accuracy);
}

RC_GTEST_PROP(BayLaws, after_the_least_move_it_passes, ()) {
    const house::Bay bay = any_bay(1);
    const house::Shape duct = house::Round{in_range(3, 8) * inch};
    const auto move = passes(spare(bay, duct)) ? std::nullopt : least_move(bay, duct);
    if (!move) return;
    house::Bay changed = bay;
    house::BayPipe& pipe = changed.pipes[static_cast<std::size_t>(move->pipe)];
    if (move->way == Way::to_first_side) pipe.from_side -= move->by;
    if (move->way == Way::to_second_side) pipe.from_side += move->by;
    const units::Length down = move->way == Way::down ? move->by
                               : move->way == Way::up ? -move->by
                                                      : units::Length();
    pipe.top += down, pipe.other_top += down;
    RC_ASSERT(passes(spare(changed, duct)));
}

}  // namespace
}  // namespace routes
