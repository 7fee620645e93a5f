// What to buy for the new ducts: pipe, fittings as the sheet counts them, damper, boot, register; each with
// its size.
#include <fmt/format.h>

#include <algorithm>

#include "ducts/fittings.hpp"
#include "ducts/section.hpp"
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

std::vector<Part> fittings_of(const BranchView& view) {
    std::vector<Part> parts;
    for (const house::Duct* duct : new_ducts(view)) {
        const std::string size = shape_text(shape_of(view, *duct), view.system);
        for (const house::CatalogueName& fitting : duct->fittings) {
            if (is_of_the_sheet(fitting)) continue;
            const auto same = std::find_if(parts.begin(), parts.end(), [&](const Part& p) {
                return p.name == fitting.text && p.size == size;
            });
            if (same == parts.end())
                parts.push_back({fitting.text, size, 1});
            else
                ++same->count;
        }
    }
    return parts;
}

std::string part_words(const Part& part) {
    if (!is_counted_turn(part.name)) return fmt::format("{} {}, {}", part.size, part.name, part.count);
    return fmt::format("{} elbows for {} {}{}", part.size, part.count, part.name, part.count == 1 ? "" : "s");
}

// What the sheet need not name, and yet no branch is without.
std::vector<std::string> unnamed_parts(const BranchView& view, const std::vector<Part>& named,
                                       const std::string& face) {
    const std::vector<const house::Duct*> ducts = new_ducts(view);
    const std::string first = shape_text(shape_of(view, *ducts.front()), view.system);
    const std::string last = shape_text(shape_of(view, *ducts.back()), view.system);
    std::vector<std::string> parts;
    if (!any_names(named, {"takeoff", "collar", "trunk start"}))
        parts.push_back(fmt::format("{} {}, 1", first, ducts.front()->from ? "takeoff" : "plenum collar"));
    if (!any_names(named, {"damper"})) parts.push_back(first + " damper, 1");
    if (!any_names(named, {"boot", "box", "stackhead"}))
        parts.push_back(fmt::format("boot from {} to {}, 1", last, face.empty() ? "the register" : face));
    return parts;
}

}  // namespace

Note parts_to_buy(const BranchView& view) {
    if (new_ducts(view).empty()) return {};
    const house::Outlet& outlet = view.answer.outlet;
    const house::Mount at = outlet.mount.value_or(house::Mount::floor);
    const questions::RegisterFace chosen = questions::register_face(
        outlet, at, view.choice(), questions::any_length, view.sizing().setting.stock);
    const std::string face = shape_text(house::Shape(chosen.face), view.system);
    const std::string mount(house::word(at));
    std::vector<std::string> bought;
    for (const Pipe& pipe : pipes_of(view))
        bought.push_back(fmt::format("{}, {}", pipe.words, figure(pipe.length, view.system)));
    const std::vector<Part> named = fittings_of(view);
    for (const Part& part : named) bought.push_back(part_words(part));
    for (std::string& part : unnamed_parts(view, named, face)) bought.push_back(std::move(part));
    bought.push_back(fmt::format(
        "{} {} register, about {} of it open{}{}, 1", face, mount,
        face_text(ducts::register_free_share * (chosen.face.width * chosen.face.height), view.system),
        chosen.of_the_sheet ? ", as in the sheet" : "",
        chosen.large_enough ? "" : " (the largest of its kind; two would be quieter)"));
    std::string line;
    for (const std::string& part : bought) line += (line.empty() ? "" : " · ") + part;
    return {"to buy", {line}};
}

}  // namespace report
