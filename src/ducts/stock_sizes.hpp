// Sizes that a shop has on the shelf, and how fast air may run in them.
//
// North America (common practice), or metric: round ducts by EN 1506 (read: Dutch ductwork quality manual),
// no wall stacks; registers in steps of 50 and 100 mm (common practice). Return grilles and filters are those
// of North America in both. Inside sizes; every list rises.
//
//     flat oval  a round pipe pressed to 3-1/4 in, its girth kept: width = 3-1/4 in + pi (diameter - 3-1/4
//     in) / 2
//                (derived; 3-1/4 in so that it stands between 3-1/2 in studs as a wall stack does: common
//                practice)
#pragma once

#include <span>

#include "house/shape.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace ducts {

enum class Stock { us, metric };

std::span<const house::Round> stock_round_pipes(Stock stock = Stock::us);        // 3 to 20 in; 63 to 630 mm
std::span<const house::Rectangular> stock_wall_stacks(Stock stock = Stock::us);  // 2-1/4 x 10 in ..., by what
                                                                                 // they carry
std::span<const house::FlatOval> stock_flat_ovals(Stock stock = Stock::us);      // of 5 to 8 in pipes
std::span<const house::Round> stock_flexible_ducts();                            // 4 to 20 in
std::span<const house::Rectangular> stock_trunks();                              // 8 in deep, 8 to 30 wide
std::span<const house::Rectangular> stock_floor_registers(Stock stock = Stock::us);  // rising in area
std::span<const house::Rectangular> stock_wall_registers(Stock stock = Stock::us);   // rising in area
// The smallest of a shelf with at least this face and no longer than that; nullptr: none.
const house::Rectangular* smallest_register(std::span<const house::Rectangular> shelf, units::Area least,
                                            units::Length longest);
std::span<const house::Rectangular> stock_return_grilles();        // rising in area
inline constexpr units::Length trunk_step{2 * units::unit::inch};  // from one width to the next

struct StockFilter {
    house::Rectangular face;
    units::Length thickness;
};
std::span<const StockFilter> stock_filters();  // rising in area, the thin ones first

// Share of a stamped register's face that is open: over three quarters (register maker's catalogue, read);
// 0.7 to 0.8.
inline constexpr double register_free_share = 0.75;

// Velocity above which a duct of this kind is heard (trade training material; residential).
inline constexpr units::Velocity branch_velocity_limit{600 * units::unit::foot_per_minute};
inline constexpr units::Velocity trunk_velocity_limit{900 * units::unit::foot_per_minute};

}  // namespace ducts
