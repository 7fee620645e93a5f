// What to buy for the new ducts: pipe, fittings as the sheet counts them, damper, boot, register.
#include <fmt/format.h>

#include <algorithm>

#include "ducts/fittings.hpp"
#include "ducts/section.hpp"
#include "ducts/stock_sizes.hpp"
#include "report/branch_parts.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

struct Part {
    std::string name;
    int count = 0;
};

void add(std::vector<Part>& parts, const std::string& name) {
    const auto at = std::find_if(parts.begin(), parts.end(), [&](const Part& p) { return p.name == name; });
    if (at == parts.end())
        parts.push_back({name, 1});
    else
        ++at->count;
}

bool any_names(const std::vector<Part>& parts, std::string_view word) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](const Part& part) { return part.name.find(word) != std::string::npos; });
}

const house::Shape& shape_of(const BranchView& view, const house::Duct& duct) {
    return duct.shape ? *duct.shape : view.choice().pipe;
}

// A length or a coefficient is nothing to buy.
bool is_of_the_sheet(const house::CatalogueName& name) {
    const auto found = ducts::look_up_fitting(name);
    const auto* fitting = std::get_if<ducts::Fitting>(&found);
    return fitting && fitting->of_the_sheet();
}

// The stock register that passes at least what the duct does.
std::string register_to_buy(const BranchView& view) {
    const house::Outlet& outlet = view.answer.outlet;
    if (outlet.face)
        return shape_text(house::Shape(*outlet.face), view.system) + " register, as in the sheet, 1";
    const bool in_floor =
        !outlet.mount || *outlet.mount == house::Mount::floor || *outlet.mount == house::Mount::toe_kick;
    const units::Area least = ducts::section_of(view.choice().pipe).area;
    for (const house::Rectangular& face :
         in_floor ? ducts::stock_floor_registers() : ducts::stock_wall_registers())
        if (face.width * face.height >= least)
            return fmt::format("{} {} register, 1", shape_text(house::Shape(face), view.system),
                               in_floor ? "floor" : "wall");
    return fmt::format("a register with a face of at least {} (larger than stock; or two), 1",
                       figure(least, view.system));
}

}  // namespace

Note parts_to_buy(const BranchView& view) {
    std::vector<std::string> bought;
    std::vector<Part> fittings;
    for (const house::Duct* duct : new_ducts(view)) {
        bought.push_back(fmt::format("{}, {}", duct_words(shape_of(view, *duct), duct->kind, view.system),
                                     figure(duct->length, view.system)));
        for (const house::CatalogueName& fitting : duct->fittings)
            if (!is_of_the_sheet(fitting)) add(fittings, fitting.text);
    }
    if (bought.empty()) return {};
    for (const Part& part : fittings) bought.push_back(fmt::format("{}, {}", part.name, part.count));
    if (!any_names(fittings, "damper")) bought.emplace_back("damper, 1");
    if (!any_names(fittings, "boot") && !any_names(fittings, "box") && !any_names(fittings, "stackhead"))
        bought.emplace_back("boot to fit the register, 1");
    bought.push_back(register_to_buy(view));
    std::string line;
    for (const std::string& part : bought) line += (line.empty() ? "" : " · ") + part;
    return {"to buy", {line}};
}

}  // namespace report
