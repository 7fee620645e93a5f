#include "ducts/stock_boots.hpp"

#include <algorithm>
#include <numbers>

#include "ducts/section.hpp"

namespace ducts {
namespace {

bool same(units::Length a, units::Length b) { return abs(a - b) <= 1 * units::unit::millimetre; }

units::Length long_side(const house::Rectangular& face) { return std::max(face.width, face.height); }
units::Length short_side(const house::Rectangular& face) { return std::min(face.width, face.height); }

bool same(const house::Rectangular& a, const house::Rectangular& b) {
    return same(long_side(a), long_side(b)) && same(short_side(a), short_side(b));
}

// Pressed flat, a pipe keeps its girth.
house::Round before_pressing(const house::FlatOval& oval) {
    return {oval.minor + 2 / std::numbers::pi * (oval.major - oval.minor)};
}

struct Joins {
    const house::Rectangular& face;
    house::Mount mount;
    Stock stock;
    bool operator()(const house::Round& pipe) const {
        const StockBoot* boot = boot_to(face, stock_boots(mount, stock));
        return boot && takes(*boot, pipe, stock);
    }
    bool operator()(const house::FlatOval& oval) const { return (*this)(before_pressing(oval)); }
    bool operator()(const house::Rectangular& duct) const {
        const auto stacks = stock_wall_stacks(stock);
        return same(long_side(duct), long_side(face)) &&
               std::any_of(stacks.begin(), stacks.end(),
                           [&](const house::Rectangular& stack) { return same(stack, duct); });
    }
};

}  // namespace

const StockBoot* boot_to(const house::Rectangular& face, std::span<const StockBoot> boots) {
    const auto boot = std::find_if(boots.begin(), boots.end(),
                                   [&](const StockBoot& each) { return same(each.face, face); });
    return boot == boots.end() ? nullptr : &*boot;
}

bool takes(const StockBoot& boot, const house::Round& pipe, Stock stock) {
    const auto pipes = stock_round_pipes(stock);
    return std::any_of(pipes.begin(), pipes.end(), [&](const house::Round& each) {
        return each >= boot.smallest && each <= boot.largest && same(each.diameter, pipe.diameter);
    });
}

bool joins_register(const house::Shape& duct, const house::Rectangular& face, house::Mount mount,
                    Stock stock) {
    return std::visit(Joins{face, mount, stock}, duct);
}

const house::Rectangular* stack_after(const house::Round& pipe, Stock stock) {
    const house::Rectangular* stack = nullptr;
    for (const StockBoot& boot : stock_stack_boots(stock)) {
        if (!takes(boot, pipe, stock)) continue;
        stack = &boot.face;
        if (equivalent_round(*stack) >= pipe.diameter) break;
    }
    return stack;
}

}  // namespace ducts
