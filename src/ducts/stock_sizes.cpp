#include "ducts/stock_sizes.hpp"

#include <algorithm>
#include <array>

namespace ducts {
namespace {

constexpr house::Round pipe(double inches) { return {inches * units::unit::inch}; }
constexpr house::Rectangular face(double width, double height) {
    return {width * units::unit::inch, height * units::unit::inch};
}

constexpr std::array round_pipes{pipe(3),  pipe(4),  pipe(5),  pipe(6),  pipe(7),  pipe(8), pipe(9),
                                 pipe(10), pipe(12), pipe(14), pipe(16), pipe(18), pipe(20)};

constexpr std::array wall_stacks{face(2.25, 10), face(2.25, 12), face(3.25, 8),
                                 face(3.25, 10), face(3.25, 12), face(3.25, 14)};

constexpr std::array floor_registers{face(2.25, 10), face(2.25, 12), face(2.25, 14), face(4, 10),
                                     face(4, 12),    face(4, 14),    face(6, 10),    face(6, 12)};

constexpr std::array wall_registers{face(8, 4),  face(10, 4), face(12, 4), face(8, 6),  face(14, 4),
                                    face(10, 6), face(12, 6), face(10, 8), face(14, 6), face(12, 8)};

// 152.4 mm is the 6 in pipe: a size written in another unit may differ from it in the last digit.
constexpr double same_size = 1 - 1e-9;

}  // namespace

std::span<const house::Round> stock_round_pipes() { return round_pipes; }
std::span<const house::Rectangular> stock_wall_stacks() { return wall_stacks; }
std::span<const house::Rectangular> stock_floor_registers() { return floor_registers; }
std::span<const house::Rectangular> stock_wall_registers() { return wall_registers; }

house::Round round_up(units::Length least) {
    const auto large_enough = [least](const house::Round& stock) {
        return stock.diameter >= same_size * least;
    };
    const auto found = std::find_if(round_pipes.begin(), round_pipes.end(), large_enough);
    return found == round_pipes.end() ? round_pipes.back() : *found;
}

}  // namespace ducts
