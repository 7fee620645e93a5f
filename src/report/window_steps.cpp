// The sun through a window, step by step.
#include "loads/inside_shades.hpp"
#include "loads/overhang.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

using units::System;

// The method counts in W/m2: turned into Btu/h.ft2 in plain sight.
Worked flux(const Worked& watts, System system) {
    return system == System::us ? watts * given(unit_of(units::HeatFlux(), system).per_si, "0.316998330628")
                                : watts;
}

Worked constant(const char* text, double value) { return given(value, text); }

Worked total_irradiance(const Worked& f, const Worked& l) {
    return constant("423.5", 423.5) + constant("1240", 1240) * f - constant("5143", 5143) * squared(f) * f +
           constant("3191", 3191) * squared(f) * squared(f) + constant("35.25", 35.25) * f * l +
           constant("0.1427", 0.1427) * f * squared(l) - constant("12.89", 12.89) * l -
           constant("0.6172", 0.6172) * squared(l) +
           constant("0.7802", 0.7802) * squared(l) / (f + constant("1", 1));
}

Worked diffuse_irradiance(const Worked& f, const Worked& l) {
    return constant("356.3", 356.3) - constant("37.73", 37.73) * squared(f) +
           constant("0.3022", 0.3022) * f * l -
           constant("115.9", 115.9) * sqrt(sqrt(l)) / (f + constant("1", 1));
}

void add_irradiance(std::vector<Step>& steps, const GainWork& work, const loads::WindowGain& gain,
                    const std::string& where) {
    const Worked f = printed(gain.turned, 6), l = printed(std::abs(work.house.summer->latitude), 4);
    if (gain.flat) {
        const Worked flat =
            constant("816.2", 816.2) + constant("10.20", 10.20) * l - constant("0.1806", 0.1806) * squared(l);
        steps.push_back(step(where + ", all sunshine", loads::flat_irradiance_method, flux(flat, work.system),
                             gain.sun.total, work.system));
        return;
    }
    steps.push_back(step(where + ", all sunshine", loads::total_irradiance_method,
                         flux(total_irradiance(f, l), work.system), gain.sun.total, work.system));
    if (gain.sun.direct() > units::HeatFlux())
        steps.push_back(step(where + ", diffuse sunshine", loads::diffuse_irradiance_method,
                             flux(diffuse_irradiance(f, l), work.system), gain.sun.diffuse, work.system));
}

void add_shadow(std::vector<Step>& steps, const GainWork& work, const house::Sunlit& sun,
                const loads::WindowGain& gain, const std::string& where) {
    if (gain.shaded <= 0 || gain.shaded >= 1) return;
    const double factor = loads::shade_line_factor(sun.azimuth, work.house.summer->latitude);
    const Worked sum =
        (printed(factor, 4) * in_sum(sun.overhang, work.system) - in_sum(sun.overhang_above, work.system)) /
        in_sum(sun.height, work.system);
    steps.push_back(plain_step(where + ", share in shadow", loads::overhang_method, sum, gain.shaded, 2));
}

void add_shade(std::vector<Step>& steps, const house::Sunlit& sun, const loads::WindowGain& gain,
               const std::string& where) {
    if (!sun.shade) return;
    const Worked one = given(1, "1");
    const Worked sum = one + printed(sun.shade_closed, 4) * (printed(gain.when_closed, 2) - one);
    steps.push_back(plain_step(where + ", its shade", loads::inside_shade_method, sum, gain.shade, 2));
}

}  // namespace

void add_window_gain(std::vector<Step>& steps, const GainWork& work, const house::Surface& window,
                     const loads::SurfaceGain& gain, const std::string& where) {
    const System system = work.system;
    const auto& parts = std::get<loads::WindowGain>(gain.parts);
    const house::Summer& summer = *work.house.summer;
    const Worked by_temperature =
        in_sum(gain.u, system) *
        (in_sum(summer.outdoor, system) - in_sum(summer.indoor, system) -
         given(loads::window_daily_range, "0.46") * in_sum(summer.daily_range, system));
    Worked sum = by_temperature;
    if (window.sun) {
        add_irradiance(steps, work, parts, where);
        add_shadow(steps, work, *window.sun, parts, where);
        add_shade(steps, *window.sun, parts, where);
        const Worked sunshine = printed(parts.screen, 2) *
                                (in_sum(parts.sun.diffuse, system) +
                                 (given(1, "1") - printed(parts.shaded, 4)) *
                                     (in_sum(parts.sun.total, system) - in_sum(parts.sun.diffuse, system)));
        steps.push_back(
            step(where + ", sunshine on it", loads::sunshine_method, sunshine, parts.sunshine(), system));
        sum = by_temperature + in_sum(parts.sunshine(), system) * printed(parts.shgc, 4) *
                                   printed(parts.shade, 4) * printed(parts.load_factor, 4);
    }
    steps.push_back(
        step(where + ", of each unit of area", loads::window_gain_method, sum, gain.factor, system));
}

}  // namespace report
