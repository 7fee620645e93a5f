// The table of defaults. Source marks: "read" seen in the named publication, "memory" recalled from it,
// "common practice" usage of the trade, "derived" worked out from figures of the other kinds, "estimate"
// reasoned.
#include "house/defaults.hpp"

#include "units/unit.hpp"

namespace house {
namespace {

constexpr double inch_wc = units::unit::inch_wc.si();
constexpr double foot = units::unit::foot.si();
constexpr double r_us = units::unit::r_value_us.si();
constexpr double per_hour = units::unit::per_hour.si();
constexpr double f_degree = units::unit::fahrenheit_degree.si();
constexpr double f(double degrees) { return units::unit::fahrenheit(degrees).si(); }

using enum DefaultId;
using enum WrittenAs;

constexpr DefaultRow rows[] = {
    {winter_indoor, "indoor temperature of the house", f(70), f(68), f(72), temperature, "common practice"},
    {elevation, "elevation above the sea", 500 * foot, 0, 1500 * foot, length, "common practice"},
    {ceiling_height, "ceiling height", 8 * foot, 7.5 * foot, 9 * foot, length, "common practice"},
    {leakage_tight, "air leakage \"tight\"", 0.7, 0.5, 1.4, leakage,
     "ASHRAE Fundamentals 2021 ch. 17, table 3 (read); a class either way, common practice"},
    {leakage_good, "air leakage \"good\"", 1.4, 0.7, 2.8, leakage,
     "ASHRAE Fundamentals 2021 ch. 17, table 3 (read); a class either way, common practice"},
    {leakage_average, "air leakage \"average\"", 2.8, 1.4, 5.6, leakage,
     "ASHRAE Fundamentals 2021 ch. 17, table 3 (read); a class either way, common practice"},
    {leakage_leaky, "air leakage \"leaky\"", 5.6, 2.8, 10.4, leakage,
     "ASHRAE Fundamentals 2021 ch. 17, table 3 (read); a class either way, common practice"},
    {leakage_very_leaky, "air leakage \"very leaky\"", 10.4, 5.6, 15, leakage,
     "ASHRAE Fundamentals 2021 ch. 17, table 3 (read); a class either way, common practice"},
    {framing_at_16_in, "wood in a wall with studs at 16 in", 0.25, 0.15, 0.28, percent,
     "ASHRAE Fundamentals 2021 ch. 27 (read); old walls often less, common practice"},
    {framing_at_24_in, "wood in a wall with studs at 24 in", 0.22, 0.12, 0.25, percent,
     "ASHRAE Fundamentals 2021 ch. 27 (read); old walls often less, common practice"},
    {open_bay, "empty bay of a balloon frame", 0.10, 0.05, 0.16, r_value,
     "derived: U 1.4 to 1.6 W/m2K for a wall open to basement and attic, common practice"},
    {old_wall, "wall of unknown make", 1.30, 0.85, 1.60, u_factor,
     "derived: lap siding, boards, empty bay, plaster; ASHRAE Fundamentals 2021 ch. 26"},
    {newer_wall, "wall of unknown make, built since 1980", 0.45, 0.35, 0.60, u_factor,
     "derived: insulated bay; ASHRAE Fundamentals 2021 ch. 26"},
    {attic_ceiling, "ceiling under the attic", 1 / (11 * r_us), 1 / (22 * r_us), 1 / (5.5 * r_us), u_factor,
     "R-11, half to double; common practice"},
    {floor_over_unheated, "floor over an unheated space", 1.4, 0.5, 1.8, u_factor,
     "derived: boards and finish floor, two still-air films; ASHRAE Fundamentals 2021 ch. 26"},
    {window, "window of unknown glass", 2.87, 2.2, 5.05, u_factor,
     "single glass with storm; ASHRAE Fundamentals 2021 ch. 17, table 2 (read); low: double low-e, high: "
     "single"},
    {door, "outside door", 2.3, 1.5, 3.0, u_factor, "ASHRAE Fundamentals 2021 ch. 17, example (read)"},
    {partition, "wall or floor between rooms", 1.85, 1.4, 2.2, u_factor,
     "derived: plaster both sides, empty bay, two still-air films"},
    {basement_temperature, "basement temperature", f(62), f(52), f(70), temperature, "common practice"},
    {crawl_warmth, "crawl space, share of the way from outdoors to indoors", 0.5, 0.3, 0.7, percent,
     "common practice"},
    {garage_warmth, "garage, share of the way from outdoors to indoors", 0.1, 0.0, 0.4, percent,
     "ASHRAE Fundamentals 2021 ch. 17: at outdoor temperature (read); attached sides warm it, estimate"},
    {porch_warmth, "porch, share of the way from outdoors to indoors", 0.1, 0.0, 0.3, percent,
     "derived: heat balance of an enclosed porch"},
    {other_rooms_exposure, "outside surface of the rooms not described, against the estimate", 1.0, 0.75, 1.3,
     times, "estimate: a plain 3 to 2 box of the same floor area"},
    {other_rooms_pipe, "pipe to the outlets not described", 6 * foot / 12, 5 * foot / 12, 7 * foot / 12,
     length, "common practice"},
    {other_rooms_reach, "longest run to the outlets not described", 20 * foot, 12 * foot, 30 * foot, length,
     "common practice"},
    {other_rooms_turns, "square turns to the outlets not described", 3, 2, 5, whole_number,
     "common practice"},
    {heater_on_time, "on-time of the heater", 0.6, 0.4, 0.9, percent,
     "heaters are 1.6 to 2.3 times the load as a rule; common practice"},
    {heater_efficiency, "efficiency of the heater", 0.80, 0.70, 0.92, percent, "common practice"},
    {output_lost_per_metre, "output a gas heater loses with elevation", 0.04 / (1000 * foot), 0,
     0.05 / (1000 * foot), percent_per_1000_ft, "NFPA 54 (memory)"},
    {output_lost_per_kelvin, "output a heat pump loses with each degree of cold below 47 F", 0.024, 0.010,
     0.030, percent_per_degree,
     "60 % left at 17 F, half that fall for one built for the cold; 47 and 17 F are where makers rate them; "
     "common practice"},
    {rise_position, "temperature rise, place within the nameplate's range", 0.5, 0.15, 0.85, percent,
     "common practice"},
    {duct_loss, "heat the ducts lose outside the rooms", 0.15, 0.05, 0.25, percent,
     "ASHRAE Fundamentals 2021 ch. 17, table 6, furnace with ducts in the basement (read)"},
    {external_static, "external static pressure against the nameplate's", 1.0, 0.7, 1.6, times,
     "common practice"},
    {filter_drop, "pressure lost in the filter", 0.10 * inch_wc, 0.05 * inch_wc, 0.25 * inch_wc, pressure,
     "common practice"},
    {coil_drop, "pressure lost in the cooling coil", 0.20 * inch_wc, 0.10 * inch_wc, 0.30 * inch_wc, pressure,
     "common practice"},
    {register_drop, "pressure lost in a supply register", 0.03 * inch_wc, 0.02 * inch_wc, 0.05 * inch_wc,
     pressure, "trade-association example (read)"},
    {grille_drop, "pressure lost in the return grille", 0.03 * inch_wc, 0.02 * inch_wc, 0.05 * inch_wc,
     pressure, "trade-association example (read)"},
    {return_length, "effective length of the return", 150 * foot, 80 * foot, 220 * foot, length,
     "common practice"},
    {turns_not_given, "square turns in a duct without fittings", 3, 1, 5, whole_number, "common practice"},
    {duct_surroundings, "air around a duct, share of the way from outdoors to indoors", 0.85, 0.5, 1.0,
     percent, "common practice: a basement"},
    {bare_duct, "bare duct wall with its air films", 0.85 * r_us, 0.80 * r_us, 1.4 * r_us, r_value,
     "mechanical insulation design guide (read); bright new metal loses less, derived"},
    {hidden_loss, "pressure loss of a hidden duct, against the estimate", 1.0, 0.5, 3.0, times,
     "common practice"},
    {pipe_clearance, "room to be kept between a duct and a pipe", foot / 24, foot / 48, foot / 12, length,
     "half an inch; common practice"},
    {knee_wall, "knee wall of unknown make", 1.5, 0.40, 3.2, u_factor,
     "derived: plaster on lath on one side; low: filled with batts, high: bare; ASHRAE Fundamentals 2021 ch. "
     "26"},
    {roof_slope, "slope under the roof, of unknown make", 1.2, 0.40, 1.7, u_factor,
     "derived: shingles, boards, rafters, plaster; low: filled bays, high: empty ones; ASHRAE Fundamentals "
     "2021 ch. 26"},
    {unknown_layer, "layer nobody knows", 0.14, 0.03, 0.30, r_value,
     "derived: between a thin sheet and insulating board; ASHRAE Fundamentals 2021 ch. 26"},
    {unknown_bay, "stud bay nobody looked into", 0.16, 0.10, 2.3, r_value,
     "derived: empty; low: open at its ends, high: filled; ASHRAE Fundamentals 2021 ch. 26"},
    {soil, "conductivity of the soil", 1.4, 0.8, 2.25, conductivity,
     "ASHRAE Fundamentals 2021 ch. 18 (read); range of soils, ibid. ch. 26 (read)"},
    {buried_make, "wall or floor in the ground, with its inside film", 0.259, 0.20, 1.1, r_value,
     "bare concrete, ASHRAE Fundamentals 2021 ch. 18 (read); high: furred and finished, derived"},
    {ground_temperature, "ground on the design night", f(34), f(26), f(50), temperature,
     "derived: mean annual air of 50 F less a swing of 5 to 13 K at the surface, ASHRAE Fundamentals 2021 "
     "ch. "
     "18 (memory)"},
    {slab_edge, "edge of a slab on the ground", 1.263, 0.86, 2.07, conductivity,
     "bare edge, energy code of a state (read); low: insulated, high: thin wall, ASHRAE Fundamentals 2021 "
     "ch. "
     "18, table 24 (read)"},
    {slab_covering, "what lies on a slab", 0.09, 0.0, 0.42, r_value,
     "linoleum; low: bare, high: carpet on thick pad; ASHRAE Fundamentals 2021 ch. 26 (read)"},
    {fitting_losses, "pressure lost in fittings, against their table", 1.0, 0.8, 1.3, times,
     "derived: each is good to 30 %, several in a row even out; boots and tight bends lose more"},
    {flex_stretch, "stretch of a flexible duct", 0.85, 0.70, 0.96, percent,
     "trade journal (read): 15 % short as released, 30 % as often installed, 4 % where it is pulled taut"},
    {summer_indoor, "indoor temperature in summer", f(75), f(73), f(78), temperature, "common practice"},
    {daily_range, "daily range outdoors in summer", 20 * f_degree, 14 * f_degree, 26 * f_degree,
     temperature_difference, "common practice: less by the sea, more inland"},
    {north, "north of the plan, clockwise from true north", 0, -20, 20, degrees, "estimate"},
    {bedrooms, "bedrooms of the house", 3, 2, 4, whole_number, "common practice"},
    {lived_in_share, "kitchen and living rooms, share of the house's floor", 0.5, 0.35, 0.65, percent,
     "estimate: bedrooms, baths and halls have the other half"},
    {roof_absorptance, "share of the sun a roof takes up", 0.85, 0.75, 0.92, percent,
     "medium asphalt shingles; ASHRAE Fundamentals 2021 ch. 17, table 8 (read)"},
    {solar_gain, "share of the sun's heat that passes a window of unknown glass", 0.57, 0.31, 0.64, percent,
     "double; low: double low-e, high: single; ASHRAE Fundamentals 2021 ch. 17, table 2 (read)"},
    {shade_closed, "how far inside shades are closed", 0.5, 0.0, 1.0, percent,
     "ASHRAE Fundamentals 2021 ch. 17, example (read)"},
    {summer_moisture, "moisture outdoors above that indoors in summer", 0.0045, 0.001, 0.008, moisture,
     "estimate: between a dry and a humid summer"},
    {cooling_supply, "air leaving the cooling coil", f(58), f(55), f(62), temperature, "common practice"},
    {attic_roof, "roof of the attic, with the air through it", 3.0, 1.8, 5.0, u_factor,
     "derived: shingles on boards, two films (2.0 to 4.0 W/m2K; ASHRAE Fundamentals 2021 ch. 26), and 0.5 to "
     "6 air changes an hour for 2"},
    {attic_ventilation, "outdoor air through the attic", 2 * per_hour, 0.5 * per_hour, 6 * per_hour,
     air_changes, "common practice"},
    {crawl_ventilation, "outdoor air through the crawl space", 4.6 * per_hour, 1.5 * per_hour, 10 * per_hour,
     air_changes, "median of eight vented crawl spaces, as measured; ASHRAE Fundamentals 2021 ch. 17 (read)"},
    {closed_ventilation, "outdoor air that leaks into a closed space", 0.67 * per_hour, 0.3 * per_hour,
     1.5 * per_hour, air_changes, "a basement, as measured; ASHRAE Fundamentals 2021 ch. 17 (read)"},
    {porch_ventilation, "outdoor air through garage or porch", 1.5 * per_hour, 0.5 * per_hour, 4 * per_hour,
     air_changes, "estimate"},
    {porch_shell, "outer walls of attic, garage or porch", 3.0, 1.5, 4.5, u_factor,
     "derived: boards; high: single glass; ASHRAE Fundamentals 2021 ch. 26"},
    {foundation_wall, "foundation wall of unknown make", 3.4, 1.5, 3.7, u_factor,
     "derived: bare concrete or stone; low: with R-2; ASHRAE Fundamentals 2021 ch. 18, table 22"},
    {crawl_height, "height of the crawl space", 2 * foot, 1.5 * foot, 4 * foot, length, "common practice"},
    {basement_height, "height of the basement", 7 * foot, 6 * foot, 8 * foot, length, "common practice"},
    {above_ground, "height of the basement's walls above the ground", 1.5 * foot, 0.5 * foot, 3 * foot,
     length, "common practice"},
    {supply_leakage, "air the supply ducts lose, of the blower's", 0.10, 0.03, 0.25, percent,
     "mean of houses, test reports and articles (read): 10 to 13 %, leaky ones 30 %"},
    {return_leakage, "air the return ducts draw in, of the blower's", 0.12, 0.03, 0.25, percent,
     "mean of houses, test reports and articles (read): 12 to 13 %, cabinet included"},
    {blower_fall, "air a blower loses with more pressure", 0.055 / (0.1 * inch_wc), 0.02 / (0.1 * inch_wc),
     0.10 / (0.1 * inch_wc), percent_per_tenth_inch,
     "derived: makers' tables of split-capacitor motors, 12 to 16 % from 0.5 to 0.8 in.wc"},
    {constant_airflow_limit, "pressure up to which a motor holds its airflow", 0.8 * inch_wc, 0.5 * inch_wc,
     1.0 * inch_wc, pressure, "common practice"},
    {undercut, "gap under an inside door", foot / 24, 0, foot / 12, length, "common practice"},
};
static_assert(std::size(rows) == static_cast<std::size_t>(count));

constexpr bool in_order() {
    for (std::size_t i = 0; i < std::size(rows); ++i)
        if (rows[i].id != static_cast<DefaultId>(i) || rows[i].low > rows[i].value ||
            rows[i].value > rows[i].high)
            return false;
    return true;
}
static_assert(in_order());

}  // namespace

std::span<const DefaultRow> default_rows() { return rows; }

const DefaultRow& default_row(DefaultId id) { return rows[static_cast<std::size_t>(id)]; }

double Defaults::operator[](DefaultId id) const {
    const DefaultRow& row = default_row(id);
    switch (level(id)) {
        case Level::low:
            return row.low;
        case Level::high:
            return row.high;
        case Level::value:
            break;
    }
    return row.value;
}

Defaults Defaults::with(DefaultId id, Level level) const {
    Defaults changed = *this;
    changed.levels_[static_cast<std::size_t>(id)] = level;
    return changed;
}

}  // namespace house
