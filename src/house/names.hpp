// Finds things of the sheet by the names its user gave them, and blames names that nothing has.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "house/ledger.hpp"
#include "units/nearest_word.hpp"

namespace house {

template <class Thing>
std::string_view name_of(const Thing& thing) {
    return thing.name ? std::string_view(thing.name->value) : std::string_view();
}
inline std::string_view name_of(const SurveyConstruction& construction) { return construction.name; }

// The position of the thing so named; nothing where there is none.
template <class Thing>
std::optional<int> find_named(const std::vector<Thing>& things, std::string_view name) {
    if (name.empty()) return std::nullopt;
    for (std::size_t i = 0; i < things.size(); ++i)
        if (name_of(things[i]) == name) return static_cast<int>(i);
    return std::nullopt;
}

// Blames `name`: no `kind` ("room", "duct") is called so; offers the nearest of the names there are.
template <class Thing>
void blame_unknown(Ledger& ledger, const Given<std::string>& name, std::string_view kind,
                   const std::vector<Thing>& things) {
    std::vector<std::string_view> known;
    for (const Thing& thing : things)
        if (!name_of(thing).empty()) known.push_back(name_of(thing));
    const std::string nearest = units::nearest_word(name.value, known);
    // A near name makes it a slip for certain; without one the name may be missing for another mistake's
    // sake.
    Mistake mistake{"no " + std::string(kind) + " is called '" + name.value + "'",
                    nearest.empty() ? "" : "did you mean '" + nearest + "'?",
                    {},
                    name.place,
                    std::nullopt,
                    nearest.empty()};
    if (things.empty())
        mistake.remedy = "the sheet describes no " + std::string(kind);
    else if (known.empty())
        mistake.remedy = "give it a name = \"...\" first";
    ledger.blame(std::move(mistake));
}

}  // namespace house
