#include "sheet/shape_text.hpp"

#include <algorithm>

namespace sheet {
namespace {

using units::Reading;
using units::ReadProblem;

constexpr std::string_view oval = " oval";

// No unit is spelled with an x: where one stands, two lengths were meant.
bool has_two_sides(std::string_view text) {
    return text.find_first_of("xX*") != std::string_view::npos ||
           text.find("\u00D7") != std::string_view::npos;
}

}  // namespace

Reading<house::Shape> read_shape_text(std::string_view text) {
    const bool is_oval = text.ends_with(oval);
    if (is_oval) text.remove_suffix(oval.size());
    if (is_oval || has_two_sides(text)) {
        const auto reading = units::read_two_lengths(text);
        if (const auto* problem = std::get_if<ReadProblem>(&reading)) return *problem;
        const auto& [first, second] = std::get<std::pair<units::Length, units::Length>>(reading);
        if (is_oval) return house::Shape(house::FlatOval{std::max(first, second), std::min(first, second)});
        return house::Shape(house::Rectangular{first, second});
    }
    const auto reading = units::read_length(text);
    if (const auto* problem = std::get_if<ReadProblem>(&reading)) return *problem;
    return house::Shape(house::Round{std::get<units::Length>(reading)});
}

}  // namespace sheet
