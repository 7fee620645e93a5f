#include "house/ledger.hpp"

#include <algorithm>

namespace house {

double Ledger::take(DefaultId id, std::string used_for) {
    auto at = std::lower_bound(assumptions_.begin(), assumptions_.end(), id,
                               [](const Assumption& a, DefaultId wanted) { return a.id < wanted; });
    if (at == assumptions_.end() || at->id != id) at = assumptions_.insert(at, Assumption{id, {}});
    if (std::find(at->used_for.begin(), at->used_for.end(), used_for) == at->used_for.end())
        at->used_for.push_back(std::move(used_for));
    return defaults_[id];
}

void Ledger::blame(Place place, std::string text, std::string remedy) {
    mistakes_.push_back(Mistake{std::move(text), {}, std::move(remedy), place, std::nullopt, false});
}

void Ledger::blame_missing(Place where, std::string_view what, std::string_view example) {
    blame(Mistake{
        std::string(what) + " is missing", {}, "write " + std::string(example), where, std::nullopt, true});
}

std::vector<Assumption> Ledger::assumptions() && { return std::move(assumptions_); }

std::vector<Mistake> Ledger::mistakes() && {
    std::stable_sort(mistakes_.begin(), mistakes_.end(), [](const Mistake& a, const Mistake& b) {
        return a.place.line != b.place.line ? a.place.line < b.place.line : a.place.column < b.place.column;
    });
    return std::move(mistakes_);
}

}  // namespace house
