#include <algorithm>

#include "report/branch_parts.hpp"

namespace report {
namespace {

const house::Duct* duct_with(const house::House& house, house::DuctId id) {
    const auto at = std::find_if(house.ducts.begin(), house.ducts.end(),
                                 [&](const house::Duct& duct) { return duct.id == id; });
    return at == house.ducts.end() ? nullptr : &*at;
}

// The ducts from the outlet up to where the branch begins: the new ones, or the last one where none is new.
std::vector<const house::Duct*> branch_ducts(const BranchView& view) {
    const house::House& house = view.answer.house;
    std::vector<const house::Duct*> ducts;
    for (const house::Duct* duct = duct_with(house, view.answer.outlet.duct); duct;
         duct = duct->from ? duct_with(house, *duct->from) : nullptr) {
        if (!ducts.empty() && duct->state != house::State::added) break;
        ducts.push_back(duct);
        if (duct->state != house::State::added) break;
    }
    std::reverse(ducts.begin(), ducts.end());
    return ducts;
}

struct SpotWords {
    std::string operator()(const house::Nowhere&) const { return {}; }
    std::string operator()(const house::UnderWindow& spot) const { return " under the " + spot.window; }
    std::string operator()(const house::OnWall& spot) const {
        return " on the " + std::string(house::word(spot.wall)) + " wall";
    }
    std::string operator()(const house::AtPoint&) const { return {}; }
};

}  // namespace

std::string BranchView::room() const { return answer.house.room(answer.sizing.setting.asked.room).name; }

const house::Bay* BranchView::bay() const {
    return answer.passage ? &answer.house.bays[static_cast<std::size_t>(answer.passage->narrowest().bay)]
                          : nullptr;
}

bool BranchView::largest_fails() const { return answer.sizing.to_size && !choice().holds(); }

std::vector<const house::Duct*> new_ducts(const BranchView& view) {
    std::vector<const house::Duct*> ducts = branch_ducts(view);
    std::erase_if(ducts, [](const house::Duct* duct) { return duct->state != house::State::added; });
    return ducts;
}

std::string where_it_begins(const BranchView& view) {
    const std::vector<const house::Duct*> ducts = branch_ducts(view);
    if (ducts.empty() || !ducts.front()->from) return "the plenum";
    const house::Duct* trunk = duct_with(view.answer.house, *ducts.front()->from);
    return trunk ? "the " + trunk->name : "the plenum";
}

std::string where_it_ends(const BranchView& view) {
    const house::Outlet& outlet = view.answer.outlet;
    const std::string mount = outlet.mount ? std::string(house::word(*outlet.mount)) + " " : "";
    return "the " + mount + "register" + std::visit(SpotWords{}, outlet.spot);
}

}  // namespace report
