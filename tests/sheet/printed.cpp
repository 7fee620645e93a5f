#include "printed.hpp"

#include <ostream>

#include "sheet/code_points.hpp"

std::string printed(const house::Place& place) {
    return std::to_string(place.line) + ":" + std::to_string(place.column) + "-" +
           std::to_string(place.end_column);
}

std::string printed(const house::Mistake& mistake) {
    std::string line =
        printed(mistake.place) + " | " + mistake.text + " | " + mistake.under + " | " + mistake.remedy;
    if (mistake.second) line += " | second " + printed(*mistake.second);
    return line;
}

std::vector<std::string> mistakes_in(std::string_view text) {
    std::vector<std::string> lines;
    for (const house::Mistake& mistake : sheet::read(text).mistakes) lines.push_back(printed(mistake));
    return lines;
}

std::vector<std::string> mistakes_after_first_line(std::string_view rest) {
    return mistakes_in("sheet = 1\n" + std::string(rest));
}

house::Place place_of(std::string_view text, std::string_view piece) {
    const auto at = text.find(piece);
    if (at == std::string_view::npos || text.find(piece, at + 1) != std::string_view::npos) return {};
    int line = 1, column = 1;
    for (const char c : text.substr(0, at)) {
        ++column;
        if (c == '\n') ++line, column = 1;
    }
    return {line, column, column + sheet::count_code_points(piece)};
}

namespace house {
void PrintTo(const Place& place, std::ostream* out) { *out << printed(place); }
}  // namespace house
