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
//     free area  of a floor register's face over three quarters, 0.75 taken (0.75 to 0.80; register maker's
//                catalogue, read); of a wall or ceiling register, its blades turned both ways and a damper
//                behind them, 0.70 (0.60 to 0.75; common practice). The maker's figure in the sheet wins.
//     boots      which round pipes a boot to a face is made for: common practice
#pragma once

#include <span>

#include "house/shape.hpp"
#include "house/words.hpp"
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
std::span<const house::Rectangular> stock_return_grilles();                      // rising in area
inline constexpr units::Length trunk_step{2 * units::unit::inch};                // from one width to the next

struct StockFilter {
    house::Rectangular face;
    units::Length thickness;
};
std::span<const StockFilter> stock_filters();  // rising in area, the thin ones first

struct StockRegister {
    house::Rectangular face;
    units::Area free;  // what of it is open
};
// Those of the floor stand in toe kicks too; of walls and ceilings there is one shelf. Rising in area.
std::span<const StockRegister> stock_registers(house::Mount mount, Stock stock = Stock::us);
// The share of a face that is open in a register of which no more is known.
double register_free_share(house::Mount mount);

// A boot from a round pipe to the face of a register or to a wall stack. It is made for all pipes of the
// shelf from the smallest to the largest.
struct StockBoot {
    house::Rectangular face;
    house::Round smallest, largest;
};
// "floor boot, ..." for floor and toe kick, wall boots that turn by 90 degrees, "ceiling box, ...": a row for
// each register of the mount, in the same order.
std::span<const StockBoot> stock_boots(house::Mount mount, Stock stock = Stock::us);
std::span<const StockBoot> stock_stack_boots(Stock stock = Stock::us);  // "round-to-stack boot, ..."
// Velocity above which a duct of this kind is heard (trade training material; residential).
inline constexpr units::Velocity branch_velocity_limit{600 * units::unit::foot_per_minute};
inline constexpr units::Velocity trunk_velocity_limit{900 * units::unit::foot_per_minute};

}  // namespace ducts
