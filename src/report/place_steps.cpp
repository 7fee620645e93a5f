// The work behind the choice of a place: the air that falls off each window, and how far the chosen register
// throws. What the room needs and gets is the work of `branch`.
#include <fmt/format.h>

#include <algorithm>

#include "ducts/section.hpp"
#include "ducts/stock_sizes.hpp"
#include "registers/draught.hpp"
#include "registers/falling_air.hpp"
#include "registers/falling_sheet.hpp"
#include "registers/jet.hpp"
#include "registers/outlet_pattern.hpp"
#include "report/place_parts.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method difference_method{"difference", "room - glass", "definition"};
constexpr loads::Method air_method{"falling air's temperature",
                                   "room - (0.30 - 0.034 x distance) x glass colder than the room",
                                   registers::falling_air_method.source};

Worked one(const char* text, double value) { return given(value, text); }

// The formulas count in metres, kelvin, m/s and degrees C: turned into them in plain sight.
class MetricSum {
  public:
    explicit MetricSum(System system) : us_(system == System::us), system_(system) {}

    Worked metres(units::Length length) const {
        return us_ ? in_sum(length, system_) * one("0.3048", 0.3048) : in_sum(length, system_);
    }
    Worked kelvin(units::TemperatureDifference difference) const {
        return us_ ? in_sum(difference, system_) / one("1.8", 1.8) : in_sum(difference, system_);
    }
    Worked metres_per_second(units::Velocity speed) const {
        return us_ ? in_sum(speed, system_) / one("196.850394", 1 / 0.00508) : in_sum(speed, system_);
    }
    Worked cubic_metres_per_second(units::Airflow flow) const {
        return us_ ? in_sum(flow, system_) * one("0.000471947443", 0.3048 * 0.3048 * 0.3048 / 60)
                   : in_sum(flow, system_) / one("1000", 1000);
    }
    Worked square_metres(units::Area area) const {
        return us_ ? in_sum(area, system_) * one("0.09290304", 0.09290304) : in_sum(area, system_);
    }
    Worked celsius(units::Temperature temperature) const {
        return us_ ? (in_sum(temperature, system_) - one("32", 32)) / one("1.8", 1.8)
                   : in_sum(temperature, system_);
    }
    Worked absolute(units::Temperature temperature) const {
        return us_ ? (in_sum(temperature, system_) + one("459.67", 459.67)) / one("1.8", 1.8)
                   : in_sum(temperature, system_) + one("273.15", 273.15);
    }
    // A speed worked out in m/s, as it is printed.
    Worked printed_speed(const Worked& metric) const {
        return us_ ? one("196.850394", 1 / 0.00508) * metric : metric;
    }

  private:
    bool us_;
    System system_;
};

const house::PlanWindow* window_of(const PlaceView& view, const std::string& name) {
    if (!view.room().plan) return nullptr;
    const auto& windows = view.room().plan->windows;
    const auto at = std::find_if(windows.begin(), windows.end(),
                                 [&](const house::PlanWindow& window) { return window.name == name; });
    return at == windows.end() ? nullptr : &*at;
}

class PlaceWork {
  public:
    explicit PlaceWork(const PlaceView& view) : view_(view), system_(view.system), metric_(view.system) {}

    std::vector<Step> steps() {
        for (const questions::FallingAir& falling : view_.answer.falling)
            if (const house::PlanWindow* window = window_of(view_, falling.window))
                if (falling.speed > units::Velocity()) add_falling(falling, window->height);
        if (view_.answer.chosen) {
            add_against_the_glass(view_.answer.choice());
            add_stack(view_.answer.choice());
            add_throw(view_.answer.choice());
        }
        return std::move(steps_);
    }

  private:
    units::Temperature indoors() const { return view_.room().winter_indoor; }

    // 0.055, 0.095 / (distance + 1.32) or 0.028.
    Worked speed_factor(units::Length distance) const {
        constexpr double near = 0.4, far = 2;
        if (distance.si() < near) return one("0.055", 0.055);
        if (distance.si() >= far) return one("0.028", 0.028);
        return one("0.095", 0.095) / (metric_.metres(distance) + one("1.32", 1.32));
    }

    void add_falling(const questions::FallingAir& falling, units::Length height) {
        const units::TemperatureDifference colder = indoors() - falling.glass;
        if (colder.si() <= 0) return;
        const std::string off = "air off the " + falling.window;
        steps_.push_back(step(falling.window + ", its glass colder than the room", difference_method,
                              in_sum(indoors(), system_) - in_sum(falling.glass, system_), colder, system_));
        const Worked root = sqrt(metric_.kelvin(colder) * metric_.metres(height));
        steps_.push_back(
            step(off + ", its speed " + stands_at(falling, system_), registers::falling_air_method,
                 metric_.printed_speed(speed_factor(falling.distance) * root), falling.speed, system_));
        const Worked share = one("0.30", 0.30) - one("0.034", 0.034) * metric_.metres(falling.distance);
        if (share.low > 0)
            steps_.push_back(step(off + ", its temperature there", air_method,
                                  in_sum(indoors(), system_) - share * in_sum(colder, system_), falling.air,
                                  system_));
        add_draught(falling, off);
    }

    void add_draught(const questions::FallingAir& falling, const std::string& off) {
        constexpr double still = 0.05;
        if (falling.speed.si() <= still || falling.dissatisfied <= 0 || falling.dissatisfied >= 1) return;
        const Worked speed = metric_.metres_per_second(falling.speed);
        const Worked moving = exp(one("0.62", 0.62) * ln(speed - one("0.05", 0.05)));
        const Worked sum = (one("34", 34) - metric_.celsius(falling.air)) * moving *
                           (one("0.37", 0.37) * speed * one("40", 40) + one("3.14", 3.14));
        steps_.push_back(finished_step(off + ", people of a hundred who feel it", registers::draught_method,
                                       sum, 100 * falling.dissatisfied, percent(falling.dissatisfied)));
    }

    // What the jet of a register at the window has to hold.
    void add_against_the_glass(const questions::Place& place) {
        const house::PlanWindow* window = window_of(view_, place.location.name);
        const auto falling = std::find_if(
            view_.answer.falling.begin(), view_.answer.falling.end(),
            [&](const questions::FallingAir& air) { return window && air.window == window->name; });
        if (!place.figures->warm.at_glass || falling == view_.answer.falling.end()) return;
        const units::TemperatureDifference colder = indoors() - falling->glass;
        if (colder.si() <= 0) return;
        const Worked resisting =
            one("1", 1) + one("0.494", 0.494) * exp(one("2", 2) / one("3", 3) * ln(one("0.71", 0.71)));
        const Worked driving = one("9.80665", registers::gravity) * metric_.kelvin(colder) /
                               metric_.absolute(indoors()) * metric_.metres(window->height);
        const Worked sum = one("0.537", 0.537) * one("1.185", 1.185) * sqrt(driving / resisting);
        steps_.push_back(step("air off the " + window->name + ", at the bottom of its glass",
                              registers::falling_sheet_method, metric_.printed_speed(sum),
                              place.figures->warm.at_glass->sheet, system_));
        add_jet_at_glass(*place.figures, *window);
    }

    // Its speed at the middle of the glass: that of a plain jet, and what its warmth adds.
    void add_jet_at_glass(const questions::PlaceFigures& figures, const house::PlanWindow& window) {
        const registers::WarmJet& warm = figures.warm.washing.jet;
        if (!registers::blows(warm.jet) || figures.warm.at_glass->jet <= units::Velocity()) return;
        const std::string what = fmt::format("jet of {}", figures.warm.blades);
        const units::Length middle = questions::sill_of(window) + 0.5 * window.height;
        const Worked area = metric_.square_metres(warm.jet.area),
                     flow = metric_.cubic_metres_per_second(warm.jet.flow);
        const double ar = registers::archimedes(warm);
        const Worked number = one("9.80665", registers::gravity) * sqrt(area) * metric_.kelvin(warm.warmer) /
                              (squared(flow / area) * metric_.absolute(warm.room));
        steps_.push_back(plain_step(what + ", its Ar", registers::rise_method, number, ar, 4));
        const Worked k = given(warm.jet.k, units::decimal(warm.jet.k, 1));
        const bool still_whole = registers::speed_at(warm.jet, middle) >= registers::outlet_speed(warm.jet);
        const Worked plain = still_whole ? flow / area : k * flow / (metric_.metres(middle) * sqrt(area));
        const Worked lift =
            one("1", 1) + one("1.83", 1.83) / k * printed_to(ar, 5) * squared(metric_.metres(middle)) / area;
        const Worked sum = plain * exp(one("1", 1) / one("3", 3) * ln(lift));
        steps_.push_back(step(what + ", its speed at the middle of the glass", registers::upward_jet_method,
                              metric_.printed_speed(sum), figures.warm.at_glass->jet, system_));
    }

    void add_stack(const questions::Place& place) {
        const auto& stack = place.figures->in_cold_wall;
        if (!stack) return;
        const Worked behind = in_sum(stack->behind, system_),
                     film = in_sum(registers::stack_outside_film, system_),
                     covered = in_sum(registers::stack_covered_film, system_);
        const Worked sum =
            in_sum(view_.answer.house.site.winter_outdoor, system_) +
            (in_sum(indoors(), system_) - in_sum(view_.answer.house.site.winter_outdoor, system_)) *
                (film + behind) / (film + behind + covered);
        steps_.push_back(step("metal of the stack in the outside wall, while it rests",
                              registers::stack_in_wall_method, sum, stack->at_rest, system_));
    }

    void add_throw(const questions::Place& place) {
        const questions::PlaceFigures& figures = *place.figures;
        const registers::OutletPattern& pattern = registers::usual_pattern(place.location.mount);
        if (figures.warm.throw_length <= units::Length() || figures.face_speed <= units::Velocity()) return;
        units::Area area = figures.trial.gives / figures.face_speed;
        if (pattern.counts == registers::CountedArea::core)
            area = area / ducts::register_free_share(place.location.mount);
        if (pattern.counts == registers::CountedArea::neck) area = ducts::section_of(figures.trial.pipe).area;
        const Worked flow = system_ == System::us ? in_sum(figures.trial.gives, system_)
                                                  : in_sum(figures.trial.gives, system_) / one("1000", 1000);
        const Worked slow = system_ == System::us ? one("49.2125984", 0.25 / 0.00508) : one("0.25", 0.25);
        const Worked sum = one("0.7", 0.7) * given(pattern.k, units::decimal(pattern.k, 1)) * flow /
                           (slow * sqrt(in_sum(area, system_)));
        const units::Length reach = figures.warm.throw_length;
        steps_.push_back(finished_step(fmt::format("throw of the register at place {}, {}",
                                                   view_.number_of(*view_.answer.chosen), pattern.name),
                                       registers::throw_method, sum, count(reach, system_),
                                       to_the_foot(reach, system_)));
    }

    PlaceView view_;
    System system_;
    MetricSum metric_;
    std::vector<Step> steps_;
};

}  // namespace

std::vector<Step> place_steps(const questions::PlaceAnswer& answer, System system) {
    return PlaceWork({answer, system}).steps();
}

}  // namespace report
