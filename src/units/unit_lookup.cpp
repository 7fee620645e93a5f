#include <algorithm>
#include <iterator>
#include <vector>

#include "units/nearest_word.hpp"
#include "units/plain_text.hpp"
#include "units/unit_words.hpp"

namespace units {
namespace {

// A space stays only between a unit and a digit, not inside a unit after "/" or "@".
bool is_kept(std::string_view unit, std::size_t at) {
    if (unit[at] != ' ') return std::string_view(".()^*").find(unit[at]) == std::string_view::npos;
    const bool after_unit = at > 0 && std::string_view("/@ ").find(unit[at - 1]) == std::string_view::npos;
    return after_unit && at + 1 < unit.size() && is_digit(unit[at + 1]);
}

std::string folded(std::string_view unit) {
    std::string word;
    for (std::size_t at = 0; at < unit.size(); ++at) {
        const char c = unit[at];
        if (is_kept(unit, at)) word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    for (const std::string_view degree : {"degf", "degc", "degk"}) {
        const std::size_t at = word.find(degree);
        if (at != std::string::npos) word.erase(at, 3);
    }
    return word;
}

const UnitWord* find_folded(const QuantityWords& quantity, std::string_view word) {
    if (word.empty()) return nullptr;
    for (const UnitWord& unit : quantity.units) {
        if (std::find(unit.spellings.begin(), unit.spellings.end(), word) != unit.spellings.end())
            return &unit;
    }
    return nullptr;
}

}  // namespace

const UnitWord* find_unit(const QuantityWords& quantity, std::string_view unit) {
    return find_folded(quantity, folded(unit));
}

const QuantityWords* quantity_measured_in(std::string_view unit) {
    constexpr std::array quantities{
        &words::length,     &words::area,          &words::airflow,      &words::velocity,
        &words::pressure,   &words::friction_rate, &words::temperature,  &words::power,
        &words::resistance, &words::transmittance, &words::leakage_test, &words::air_change,
        &words::fraction,   &words::angle,         &words::volume,       &words::duration};
    const std::string word = folded(unit);
    const auto found = std::find_if(
        quantities.begin(), quantities.end(),
        [&word](const QuantityWords* quantity) { return find_folded(*quantity, word) != nullptr; });
    return found == quantities.end() ? nullptr : *found;
}

std::string nearest_unit(const QuantityWords& quantity, std::string_view unit) {
    std::vector<std::string_view> spellings;
    for (const UnitWord& known : quantity.units) {
        std::copy_if(known.spellings.begin(), known.spellings.end(), std::back_inserter(spellings),
                     [](std::string_view spelling) { return !spelling.empty(); });
    }
    const UnitWord* found = find_folded(quantity, nearest_word(folded(unit), spellings));
    return found ? std::string(found->shown) : std::string();
}

}  // namespace units
