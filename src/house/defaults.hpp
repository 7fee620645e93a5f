// What is taken where nobody measured: one table, each row with a value, how far off it may be, and why.
//
// Taking a row puts it on the answer's list of assumptions; weighing it means building the house again with
// the row at its low or its high. Values in SI; `written` says how to print them. Low and high are the honest
// range, not a limit.
#pragma once

#include <array>
#include <span>
#include <string_view>

namespace house {

enum class DefaultId {
    winter_indoor,
    elevation,
    ceiling_height,
    leakage_tight,
    leakage_good,
    leakage_average,
    leakage_leaky,
    leakage_very_leaky,
    framing_at_16_in,
    framing_at_24_in,
    open_bay,
    old_wall,
    newer_wall,
    attic_ceiling,
    floor_over_unheated,
    window,
    door,
    partition,
    basement_temperature,
    crawl_warmth,
    garage_warmth,
    porch_warmth,
    other_rooms_exposure,
    other_rooms_pipe,
    other_rooms_reach,
    other_rooms_turns,
    heater_on_time,
    heater_efficiency,
    output_lost_per_metre,
    output_lost_per_kelvin,
    rise_position,
    duct_loss,
    external_static,
    filter_drop,
    coil_drop,
    register_drop,
    grille_drop,
    return_length,
    turns_not_given,
    duct_surroundings,
    bare_duct,
    hidden_loss,
    pipe_clearance,
    knee_wall,
    roof_slope,
    unknown_layer,
    unknown_bay,
    soil,
    buried_make,
    ground_temperature,
    slab_edge,
    slab_covering,
    fitting_losses,
    flex_stretch,
    summer_indoor,
    daily_range,
    north,
    bedrooms,
    lived_in_share,
    roof_absorptance,
    solar_gain,
    shade_closed,
    summer_moisture,
    cooling_supply,
    attic_roof,
    attic_ventilation,
    crawl_ventilation,
    closed_ventilation,
    porch_ventilation,
    porch_shell,
    foundation_wall,
    crawl_height,
    basement_height,
    above_ground,
    supply_leakage,
    return_leakage,
    blower_fall,
    constant_airflow_limit,
    undercut,
    count
};

// How a row's number is written for people.
enum class WrittenAs {
    temperature,
    temperature_difference,
    degrees,
    moisture,
    length,
    pressure,
    u_factor,
    r_value,
    conductivity,
    percent,
    percent_per_1000_ft,
    percent_per_degree,
    percent_per_tenth_inch,
    times,
    whole_number,
    leakage,
    air_changes
};

struct DefaultRow {
    DefaultId id;
    std::string_view what;  // "window U-factor"
    double value, low, high;
    WrittenAs written;
    std::string_view basis;  // source, and its mark
};

std::span<const DefaultRow> default_rows();
const DefaultRow& default_row(DefaultId id);

enum class Level { value, low, high };

// The table with, perhaps, one row (or several) set to its low or high.
class Defaults {
  public:
    double operator[](DefaultId id) const;
    Level level(DefaultId id) const { return levels_[static_cast<std::size_t>(id)]; }
    Defaults with(DefaultId id, Level level) const;

  private:
    std::array<Level, static_cast<std::size_t>(DefaultId::count)> levels_{};
};

}  // namespace house
