#include "ducts/stock_sizes.hpp"

#include <array>
#include <numbers>

namespace ducts {
namespace {

constexpr house::Round pipe(double inches) { return {inches * units::unit::inch}; }
constexpr house::Round duct_of(double mm) { return {mm * units::unit::millimetre}; }
constexpr house::Rectangular face(double width, double height) {
    return {width * units::unit::inch, height * units::unit::inch};
}
constexpr house::Rectangular face_of(double width, double height) {
    return {width * units::unit::millimetre, height * units::unit::millimetre};
}
constexpr house::FlatOval pressed(double round) {
    constexpr double flat = 3.25;
    return {(flat + std::numbers::pi / 2 * (round - flat)) * units::unit::inch, flat * units::unit::inch};
}
constexpr StockFilter filter(double width, double height, double thickness) {
    return {face(width, height), thickness * units::unit::inch};
}

constexpr std::array round_pipes{pipe(3),  pipe(4),  pipe(5),  pipe(6),  pipe(7),  pipe(8), pipe(9),
                                 pipe(10), pipe(12), pipe(14), pipe(16), pipe(18), pipe(20)};

constexpr std::array metric_ducts{duct_of(63),  duct_of(80),  duct_of(100), duct_of(125),
                                  duct_of(160), duct_of(200), duct_of(250), duct_of(315),
                                  duct_of(400), duct_of(500), duct_of(630)};

constexpr std::array flexible_ducts{pipe(4),  pipe(5),  pipe(6),  pipe(7),  pipe(8),  pipe(9),
                                    pipe(10), pipe(12), pipe(14), pipe(16), pipe(18), pipe(20)};

constexpr std::array wall_stacks{face(2.25, 10), face(2.25, 12), face(3.25, 8),
                                 face(3.25, 10), face(3.25, 12), face(3.25, 14)};

constexpr std::array flat_ovals{pressed(5), pressed(6), pressed(7), pressed(8)};

constexpr std::array trunks{face(8, 8),  face(10, 8), face(12, 8), face(14, 8), face(16, 8), face(18, 8),
                            face(20, 8), face(22, 8), face(24, 8), face(26, 8), face(28, 8), face(30, 8)};

bool stands_in_floor(house::Mount mount) {
    return mount == house::Mount::floor || mount == house::Mount::toe_kick;
}

constexpr double floor_share = 0.75, wall_share = 0.70;

constexpr StockRegister open_by(double share, house::Rectangular face) {
    return {face, share * (face.width * face.height)};
}
constexpr StockRegister in_floor(double width, double height) {
    return open_by(floor_share, face(width, height));
}
constexpr StockRegister in_wall(double width, double height) {
    return open_by(wall_share, face(width, height));
}
constexpr StockRegister in_floor_of(double width, double height) {
    return open_by(floor_share, face_of(width, height));
}
constexpr StockRegister in_wall_of(double width, double height) {
    return open_by(wall_share, face_of(width, height));
}

constexpr std::array floor_registers{in_floor(2.25, 10), in_floor(2.25, 12), in_floor(2.25, 14),
                                     in_floor(4, 10),    in_floor(4, 12),    in_floor(4, 14),
                                     in_floor(6, 10),    in_floor(6, 12)};

constexpr std::array wall_registers{in_wall(8, 4),  in_wall(10, 4), in_wall(12, 4), in_wall(8, 6),
                                    in_wall(14, 4), in_wall(10, 6), in_wall(12, 6), in_wall(10, 8),
                                    in_wall(14, 6), in_wall(12, 8)};

constexpr std::array metric_floor_registers{in_floor_of(200, 100), in_floor_of(300, 100),
                                            in_floor_of(250, 150), in_floor_of(400, 100),
                                            in_floor_of(300, 150), in_floor_of(400, 150)};

constexpr std::array metric_wall_registers{in_wall_of(200, 100), in_wall_of(300, 100), in_wall_of(200, 150),
                                           in_wall_of(400, 100), in_wall_of(300, 150), in_wall_of(400, 150),
                                           in_wall_of(300, 200), in_wall_of(400, 200)};

constexpr StockBoot boot(house::Rectangular to, double smallest, double largest) {
    return {to, pipe(smallest), pipe(largest)};
}
constexpr StockBoot boot_of(house::Rectangular to, double smallest, double largest) {
    return {to, duct_of(smallest), duct_of(largest)};
}

constexpr std::array floor_boots{
    boot(face(2.25, 10), 4, 6), boot(face(2.25, 12), 5, 6), boot(face(2.25, 14), 6, 7),
    boot(face(4, 10), 5, 7),    boot(face(4, 12), 5, 8),    boot(face(4, 14), 6, 8),
    boot(face(6, 10), 6, 8),    boot(face(6, 12), 7, 10),
};

constexpr std::array wall_boots{
    boot(face(8, 4), 4, 5),  boot(face(10, 4), 5, 6),  boot(face(12, 4), 6, 6), boot(face(8, 6), 5, 6),
    boot(face(14, 4), 6, 7), boot(face(10, 6), 6, 8),  boot(face(12, 6), 6, 8), boot(face(10, 8), 7, 8),
    boot(face(14, 6), 7, 8), boot(face(12, 8), 8, 10),
};

constexpr std::array stack_boots{
    boot(face(2.25, 10), 4, 6), boot(face(2.25, 12), 5, 6), boot(face(3.25, 8), 5, 6),
    boot(face(3.25, 10), 5, 7), boot(face(3.25, 12), 6, 7), boot(face(3.25, 14), 7, 8),
};

constexpr std::array metric_floor_boots{
    boot_of(face_of(200, 100), 100, 125), boot_of(face_of(300, 100), 125, 160),
    boot_of(face_of(250, 150), 125, 160), boot_of(face_of(400, 100), 160, 160),
    boot_of(face_of(300, 150), 160, 200), boot_of(face_of(400, 150), 200, 200),
};

constexpr std::array metric_wall_boots{
    boot_of(face_of(200, 100), 100, 125), boot_of(face_of(300, 100), 125, 160),
    boot_of(face_of(200, 150), 125, 160), boot_of(face_of(400, 100), 160, 160),
    boot_of(face_of(300, 150), 160, 200), boot_of(face_of(400, 150), 200, 200),
    boot_of(face_of(300, 200), 200, 250), boot_of(face_of(400, 200), 250, 250),
};

constexpr std::array return_grilles{face(10, 6),  face(12, 6),  face(14, 6),  face(14, 8),  face(20, 10),
                                    face(20, 14), face(24, 12), face(20, 16), face(24, 14), face(20, 20),
                                    face(25, 16), face(30, 14), face(25, 20), face(30, 20)};

constexpr std::array filters{filter(14, 20, 1), filter(16, 20, 1), filter(16, 25, 1), filter(20, 20, 1),
                             filter(20, 25, 1), filter(16, 25, 4), filter(20, 25, 4)};

}  // namespace

std::span<const house::Round> stock_round_pipes(Stock stock) {
    if (stock == Stock::metric) return metric_ducts;
    return round_pipes;
}
std::span<const house::Rectangular> stock_wall_stacks(Stock stock) {
    if (stock == Stock::metric) return {};
    return wall_stacks;
}
std::span<const house::FlatOval> stock_flat_ovals(Stock stock) {
    if (stock == Stock::metric) return {};
    return flat_ovals;
}
std::span<const house::Round> stock_flexible_ducts() { return flexible_ducts; }
std::span<const house::Rectangular> stock_trunks() { return trunks; }
std::span<const StockRegister> stock_registers(house::Mount mount, Stock stock) {
    if (stands_in_floor(mount)) {
        if (stock == Stock::metric) return metric_floor_registers;
        return floor_registers;
    }
    if (stock == Stock::metric) return metric_wall_registers;
    return wall_registers;
}
double register_free_share(house::Mount mount) { return stands_in_floor(mount) ? floor_share : wall_share; }
std::span<const StockBoot> stock_boots(house::Mount mount, Stock stock) {
    if (stands_in_floor(mount)) {
        if (stock == Stock::metric) return metric_floor_boots;
        return floor_boots;
    }
    if (stock == Stock::metric) return metric_wall_boots;
    return wall_boots;
}
std::span<const StockBoot> stock_stack_boots(Stock stock) {
    if (stock == Stock::metric) return {};
    return stack_boots;
}
std::span<const house::Rectangular> stock_return_grilles() { return return_grilles; }
std::span<const StockFilter> stock_filters() { return filters; }

}  // namespace ducts
