#include "ducts/judge_duct.hpp"

#include <algorithm>

#include "ducts/friction.hpp"
#include "ducts/size_duct.hpp"
#include "ducts/stock_sizes.hpp"
#include "units/unit.hpp"

namespace ducts {
namespace {

using enum DuctPart;
constexpr units::Velocity fpm(double count) { return count * units::unit::foot_per_minute; }

constexpr VelocityLimit limits[] = {
    {supply_trunk, "supply trunk", fpm(900), trunk_velocity_limit,
     "trade training material 700 to 900; building design handbook 900 (read)"},
    {supply_branch, "supply branch", fpm(600), branch_velocity_limit,
     "trade training material 500 to 700; building design handbook 600 (read)"},
    {wall_stack, "wall stack", fpm(500), fpm(600), "building design handbook: half of the main, 450 (read)"},
    {return_trunk, "return trunk", fpm(600), fpm(700), "common practice"},
    {return_branch, "return branch", fpm(500), fpm(600), "common practice"},
};
static_assert(limits[static_cast<std::size_t>(return_branch)].part == return_branch);

constexpr units::Length stud_depth = 3.5 * units::unit::inch;
constexpr double within = 1 + 1e-9;

// The size before it in a list that rises; empty where it is the first.
template <class Size>
std::optional<house::Shape> before(std::span<const Size> stock, const Size& size) {
    std::optional<house::Shape> smaller;
    for (const Size& each : stock)
        if (section_of(each).area < section_of(size).area / within) smaller = each;
    return smaller;
}

struct NextDown {
    std::optional<house::Shape> operator()(const house::Round& round) const {
        return before(stock_round_pipes(), round);
    }
    std::optional<house::Shape> operator()(const house::Rectangular& flat) const {
        if (std::min(flat.width, flat.height) <= stud_depth) return before(stock_wall_stacks(), flat);
        return narrower(flat, flat.width >= flat.height);
    }
    std::optional<house::Shape> operator()(const house::FlatOval& oval) const {
        const units::Length major = oval.major - trunk_step;
        if (major < oval.minor) return std::nullopt;
        return house::Shape(house::FlatOval{major, oval.minor});
    }
    // A trunk keeps its depth, which the joists give, and loses of its width.
    static std::optional<house::Shape> narrower(house::Rectangular trunk, bool width_is_longer) {
        units::Length& longer = width_is_longer ? trunk.width : trunk.height;
        longer -= trunk_step;
        const units::Length least = stock_trunks().front().height;
        return longer < least / within ? std::nullopt : std::optional<house::Shape>(trunk);
    }
};

bool too_fast(const Section& section, units::Airflow flow, const SizeLimits& limits_of) {
    return flow / section.area > within * limits_of.velocity;
}
bool loses_too_much(const Section& section, units::Airflow flow, const SizeLimits& limits_of,
                    const loads::Air& air) {
    return friction(section, flow, air) > within * limits_of.rate;
}

// The section of a duct that carries most.
const SystemSection* fullest(const Side& side, int duct) {
    const SystemSection* most = nullptr;
    for (const SystemSection& section : side)
        if (section.duct == duct && (!most || section.flow > most->flow)) most = &section;
    return most;
}

}  // namespace

std::span<const VelocityLimit> velocity_limits() { return limits; }
const VelocityLimit& velocity_limit(DuctPart part) { return limits[static_cast<std::size_t>(part)]; }

DuctPart part_of(const house::House& house, const house::Duct& duct) {
    const bool others_hang_on_it = std::any_of(house.ducts.begin(), house.ducts.end(),
                                               [&](const house::Duct& d) { return d.from == duct.id; });
    const bool trunk = !duct.from && others_hang_on_it;
    if (duct.side == house::DuctSide::return_side) return trunk ? return_trunk : return_branch;
    if (trunk) return supply_trunk;
    const auto* flat = duct.shape ? std::get_if<house::Rectangular>(&*duct.shape) : nullptr;
    return flat && house::narrowest_side(*duct.shape) <= stud_depth ? wall_stack : supply_branch;
}

Size JudgedDuct::size() const {
    if (too_fast || loses_too_much) return Size::too_small;
    return would_do ? Size::larger_than_needed : Size::fair;
}

std::optional<house::Shape> next_size_down(const house::Shape& shape) {
    return std::visit(NextDown{}, shape);
}

std::vector<JudgedDuct> judge_ducts(const house::House& house, const Side& side, units::FrictionRate rate,
                                    const loads::Air& air) {
    std::vector<JudgedDuct> judged;
    for (std::size_t i = 0; i < house.ducts.size(); ++i) {
        const house::Duct& duct = house.ducts[i];
        const SystemSection* section = fullest(side, static_cast<int>(i));
        if (!section || !duct.shape || section->flow <= units::MassFlow()) continue;
        JudgedDuct one{static_cast<int>(i), part_of(house, duct), section->flow, {}, {}, false, false, {}};
        const units::Airflow flow = section->flow / air.density;
        const SizeLimits limits_of{rate / duct.loss_factor, velocity_limit(one.part).most};
        one.velocity = velocity(*section, air);
        one.friction = duct.loss_factor * friction(section->section, flow, air);
        one.too_fast = too_fast(section->section, flow, limits_of);
        one.loses_too_much = loses_too_much(section->section, flow, limits_of, air);
        for (auto smaller = next_size_down(*duct.shape); smaller; smaller = next_size_down(*smaller)) {
            const Section less = section_of(*smaller, duct.kind, duct.stretch);
            if (too_fast(less, flow, limits_of) || loses_too_much(less, flow, limits_of, air)) break;
            one.would_do = smaller;
        }
        judged.push_back(one);
    }
    return judged;
}

}  // namespace ducts
