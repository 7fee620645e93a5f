#include "ducts/stock_sizes.hpp"

#include <algorithm>
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

constexpr std::array floor_registers{face(2.25, 10), face(2.25, 12), face(2.25, 14), face(4, 10),
                                     face(4, 12),    face(4, 14),    face(6, 10),    face(6, 12)};

constexpr std::array wall_registers{face(8, 4),  face(10, 4), face(12, 4), face(8, 6),  face(14, 4),
                                    face(10, 6), face(12, 6), face(10, 8), face(14, 6), face(12, 8)};

constexpr std::array metric_floor_registers{face_of(200, 100), face_of(300, 100), face_of(250, 150),
                                            face_of(400, 100), face_of(300, 150), face_of(400, 150)};

constexpr std::array metric_wall_registers{face_of(200, 100), face_of(300, 100), face_of(200, 150),
                                           face_of(400, 100), face_of(300, 150), face_of(400, 150),
                                           face_of(300, 200), face_of(400, 200)};

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
std::span<const house::Rectangular> stock_floor_registers(Stock stock) {
    if (stock == Stock::metric) return metric_floor_registers;
    return floor_registers;
}
std::span<const house::Rectangular> stock_wall_registers(Stock stock) {
    if (stock == Stock::metric) return metric_wall_registers;
    return wall_registers;
}
const house::Rectangular* smallest_register(std::span<const house::Rectangular> shelf, units::Area least,
                                            units::Length longest) {
    for (const house::Rectangular& face : shelf)
        if (face.width * face.height >= least && std::max(face.width, face.height) <= longest) return &face;
    return nullptr;
}
std::span<const house::Rectangular> stock_return_grilles() { return return_grilles; }
std::span<const StockFilter> stock_filters() { return filters; }

}  // namespace ducts
