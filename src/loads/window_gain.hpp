// Heat gain through a window: by the difference of temperature and by the sun.
//
//     gain     = area x (U x (difference - 0.46 x daily range) + sunshine x SHGC x shade x load factor)
//     sunshine = screen x (diffuse + (1 - shaded share) x direct)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29, table 13 (detached houses). Changed: between
// the table's eight orientations the load factor lies on straight lines. Symbols: SHGC solar heat gain
// coefficient; shade: what an inside shade leaves (loads/inside_shades.hpp); screen 0.64 behind an insect
// screen, else 1; load factor: the part of the sunshine that is a load at the house's peak. The load factor
// differs from east to west (0.31 and 0.56): a house peaks in the afternoon. A window towards anything but
// outdoors has no sun. Range: latitude 20 to 60, upright glass up to 15 % of the floor a side, 21 July.
// Accuracy: +-10 % of the house for the method (ibid.); a room with much glass on one side peaks higher than
// its share of the house.
#pragma once

#include "house/house.hpp"
#include "loads/method.hpp"
#include "loads/peak_irradiance.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method sunshine_method{"sunshine on a window",
                                        "screen x (diffuse + (1 - shaded share) x direct)",
                                        "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29"};
inline constexpr Method window_gain_method{
    "heat gain of a square foot or metre",
    "U x (difference - 0.46 x daily range) + sunshine x SHGC x shade x load factor",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29, tables 2, 12-14"};

struct WindowGain {
    double azimuth = 0, turned = 0;  // degrees from north; share of the way from pole to equator
    Irradiance sun;                  // none where the window does not face outdoors
    bool flat = false;               // counted as lying flat
    double shaded = 0;               // share of the window, by an overhang
    double screen = 1;
    double shgc = 0;
    double when_closed = 1, shade = 1;  // what the shade leaves, all closed and as closed as it is
    double load_factor = 0;
    units::HeatFlux sunshine() const { return screen * (sun.diffuse + (1 - shaded) * sun.direct()); }
    units::HeatFlux from_the_sun() const { return sunshine() * shgc * shade * load_factor; }
};

// Part of the daily range that a window's difference falls short of, at the hour of the peak.
inline constexpr double window_daily_range = 0.46;

double solar_load_factor(double azimuth, double latitude);
WindowGain window_gain(const house::Surface& window, double latitude);

}  // namespace loads
