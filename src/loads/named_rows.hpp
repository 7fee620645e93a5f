// Rows of a table by their plain names: a glass, a shade, a roof; and the mistake where no row is so called.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "house/cannot_answer.hpp"
#include "house/place.hpp"
#include "units/nearest_word.hpp"

namespace loads {

template <class Row>
std::vector<std::string_view> names(std::span<const Row> rows) {
    std::vector<std::string_view> all;
    for (const Row& row : rows) all.push_back(row.name);
    return all;
}

inline std::string did_you_mean(std::string_view word, const std::vector<std::string_view>& known) {
    const std::string nearest = units::nearest_word(word, known);
    return nearest.empty() ? nearest : "did you mean '" + nearest + "'?";
}

// Names are looked up before any answer (questions/check_sheet); what slipped by has no answer.
template <class Looked>
Looked found_or_throw(const std::variant<Looked, house::Mistake>& looked_up) {
    if (const auto* found = std::get_if<Looked>(&looked_up)) return *found;
    const auto& mistake = std::get<house::Mistake>(looked_up);
    throw house::CannotAnswer(mistake.place,
                              mistake.text + ": " + (mistake.under.empty() ? mistake.remedy : mistake.under));
}

// kind: "glass", several: "glasses".
template <class Row>
std::variant<Row, house::Mistake> row_named(const house::CatalogueName& name, std::span<const Row> rows,
                                            std::string_view kind, std::string_view several) {
    std::string all;
    for (const Row& row : rows) {
        if (row.name == name.text) return row;
        all += (all.empty() ? "'" : ", '") + std::string(row.name) + "'";
    }
    return house::Mistake{"no " + std::string(kind) + " is called '" + name.text + "'",
                          did_you_mean(name.text, names(rows)),
                          "the " + std::string(several) + " are " + all,
                          name.place,
                          {}};
}

}  // namespace loads
