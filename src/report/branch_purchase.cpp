// What to buy for the new ducts: pipe, fittings as the sheet counts them, damper, boot, register; each with
// its size, a boot with both of its ends.
#include <fmt/format.h>

#include <algorithm>

#include "ducts/fittings.hpp"
#include "ducts/stock_boots.hpp"
#include "questions/register_face.hpp"
#include "report/branch_parts.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

struct Pipe {
    std::string words;  // "6 in round pipe"
    units::Length length;
};

struct Part {
    std::string name, size;
    int count = 0;
    std::string remark = {};
};

// The last of the new ducts and the register on it.
struct Outlet {
    house::Mount mount;
    questions::RunEnd end;
    questions::RegisterFace chosen;
};

const house::Shape& shape_of(const BranchView& view, const house::Duct& duct) {
    return duct.shape ? *duct.shape : view.choice().pipe;
}

// A length or a coefficient is nothing to buy.
bool is_of_the_sheet(const house::CatalogueName& name) {
    const auto found = ducts::look_up_fitting(name);
    const auto* fitting = std::get_if<ducts::Fitting>(&found);
    return fitting && fitting->of_the_sheet();
}

bool is_counted_turn(std::string_view name) { return name == "square turn" || name == "rounded turn"; }

bool any_names(const std::vector<Part>& parts, std::initializer_list<std::string_view> words) {
    return std::any_of(parts.begin(), parts.end(), [&](const Part& part) {
        return std::any_of(words.begin(), words.end(),
                           [&](std::string_view word) { return part.name.find(word) != std::string::npos; });
    });
}

// Ducts of one shape are one line, whatever the sheet calls them.
std::vector<Pipe> pipes_of(const BranchView& view) {
    std::vector<Pipe> pipes;
    for (const house::Duct* duct : new_ducts(view)) {
        if (duct->length.si() <= 0) continue;
        const std::string words = duct_words(shape_of(view, *duct), duct->kind, view.system);
        const auto same =
            std::find_if(pipes.begin(), pipes.end(), [&](const Pipe& p) { return p.words == words; });
        if (same == pipes.end())
            pipes.push_back({words, duct->length});
        else
            same->length += duct->length;
    }
    return pipes;
}

Outlet outlet_of(const BranchView& view) {
    const questions::BranchAnswer& answer = view.answer;
    const ducts::Stock stock = view.sizing().setting.stock;
    const house::Mount mount = answer.outlet.mount.value_or(house::Mount::floor);
    const questions::RunEnd end = questions::run_end(answer.house, answer.outlet, view.choice(), stock);
    return {mount, end, questions::register_face(answer.outlet, mount, end, questions::any_length, stock)};
}

std::string both_ends(const house::Shape& one, const house::Shape& other, const BranchView& view) {
    return shape_text(one, view.system) + " to " + shape_text(other, view.system);
}

bool stands_behind_a_register(std::string_view fitting) {
    return fitting.starts_with("floor boot") || fitting.starts_with("ceiling box") || fitting == "stackhead";
}

// Of a boot that no shop has from this duct.
std::string made_up(const BranchView& view, const Outlet& outlet) {
    if (outlet.chosen.has_boot) return {};
    const ducts::Stock stock = view.sizing().setting.stock;
    const auto* pipe = std::get_if<house::Round>(&outlet.end.duct);
    const ducts::StockBoot* boot =
        ducts::boot_to(outlet.chosen.face, ducts::stock_boots(outlet.mount, stock));
    if (!pipe || !boot) return " (on no shelf: made up)";
    const house::Round nearest = std::clamp(*pipe, boot->smallest, boot->largest);
    if (nearest == *pipe) return " (on no shelf: made up)";
    return fmt::format(" (on no shelf: made up, or the pipe brought to {} before it)",
                       shape_text(nearest, view.system));
}

Part boot_to_register(const BranchView& view, std::string name, const Outlet& outlet) {
    return {std::move(name), both_ends(outlet.end.duct, outlet.chosen.face, view), 1, made_up(view, outlet)};
}

// From a round pipe to the stack that is the next of the new ducts, or that the shelf has for it.
std::string stack_boot_size(const BranchView& view, const house::Shape& shape, const house::Shape* next) {
    const auto* pipe = std::get_if<house::Round>(&shape);
    if (!pipe) return shape_text(shape, view.system);
    if (next && !std::holds_alternative<house::Round>(*next)) return both_ends(shape, *next, view);
    const house::Rectangular* stack = ducts::stack_after(*pipe, view.sizing().setting.stock);
    return stack ? both_ends(shape, *stack, view) : shape_text(shape, view.system);
}

void add(std::vector<Part>& parts, Part part) {
    const auto same = std::find_if(parts.begin(), parts.end(), [&](const Part& other) {
        return other.name == part.name && other.size == part.size;
    });
    if (same == parts.end())
        parts.push_back(std::move(part));
    else
        ++same->count;
}

std::vector<Part> fittings_of(const BranchView& view, const Outlet& outlet) {
    std::vector<Part> parts;
    const std::vector<const house::Duct*> ducts = new_ducts(view);
    for (std::size_t i = 0; i < ducts.size(); ++i) {
        const house::Shape& shape = shape_of(view, *ducts[i]);
        const house::Shape* next = i + 1 < ducts.size() ? &shape_of(view, *ducts[i + 1]) : nullptr;
        for (const house::CatalogueName& fitting : ducts[i]->fittings) {
            if (is_of_the_sheet(fitting)) continue;
            if (stands_behind_a_register(fitting.text))
                add(parts, boot_to_register(view, fitting.text, outlet));
            else if (fitting.text.starts_with("round-to-stack boot"))
                add(parts, {fitting.text, stack_boot_size(view, shape, next), 1});
            else
                add(parts, {fitting.text, shape_text(shape, view.system), 1});
        }
    }
    return parts;
}

std::string part_words(const Part& part) {
    if (!is_counted_turn(part.name))
        return fmt::format("{} {}, {}{}", part.size, part.name, part.count, part.remark);
    return fmt::format("{} elbows for {} {}{}", part.size, part.count, part.name, part.count == 1 ? "" : "s");
}

std::string usual_boot(const Outlet& outlet) {
    if (outlet.mount == house::Mount::ceiling) return "ceiling box";
    if (outlet.mount == house::Mount::floor) return "floor boot";
    if (outlet.mount == house::Mount::toe_kick) return "toe kick boot";
    return std::holds_alternative<house::Rectangular>(outlet.end.duct) ? "stackhead" : "wall boot";
}

// What the sheet need not name, and yet no branch is without.
std::vector<Part> unnamed_parts(const BranchView& view, const std::vector<Part>& named,
                                const Outlet& outlet) {
    const house::Duct& first = *new_ducts(view).front();
    const std::string size = shape_text(shape_of(view, first), view.system);
    std::vector<Part> parts;
    if (!any_names(named, {"takeoff", "collar", "trunk start"}))
        parts.push_back({first.from ? "takeoff" : "plenum collar", size, 1});
    if (!any_names(named, {"damper"})) parts.push_back({"damper", size, 1});
    if (std::none_of(named.begin(), named.end(),
                     [](const Part& part) { return stands_behind_a_register(part.name); }))
        parts.push_back(boot_to_register(view, usual_boot(outlet), outlet));
    return parts;
}

std::string register_words(const BranchView& view, const Outlet& outlet) {
    const questions::RegisterFace& chosen = outlet.chosen;
    return fmt::format("{} {} register, about {} of it open{}{}, 1",
                       shape_text(house::Shape(chosen.face), view.system), house::word(outlet.mount),
                       face_text(chosen.free, view.system), chosen.of_the_sheet ? ", as in the sheet" : "",
                       chosen.large_enough ? "" : " (the largest of its kind; two would be quieter)");
}

}  // namespace

Note parts_to_buy(const BranchView& view) {
    if (new_ducts(view).empty()) return {};
    const Outlet outlet = outlet_of(view);
    std::vector<std::string> bought;
    for (const Pipe& pipe : pipes_of(view))
        bought.push_back(fmt::format("{}, {}", pipe.words, figure(pipe.length, view.system)));
    const std::vector<Part> named = fittings_of(view, outlet);
    for (const Part& part : named) bought.push_back(part_words(part));
    for (const Part& part : unnamed_parts(view, named, outlet)) bought.push_back(part_words(part));
    bought.push_back(register_words(view, outlet));
    std::string line;
    for (const std::string& part : bought) line += (line.empty() ? "" : " · ") + part;
    return {"to buy", {line}};
}

}  // namespace report
