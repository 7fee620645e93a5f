#include "sheet/written_twice.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>

#include "sheet/code_points.hpp"
#include "sheet/source_lines.hpp"

namespace sheet {
namespace {

std::string_view name_in(std::string_view heading) {
    const auto first = heading.find_first_not_of("[ \t");
    if (first == std::string_view::npos) return {};
    return heading.substr(first, heading.find_first_of("] \t", first) - first);
}

std::optional<house::Place> earlier_heading(const ParserStop& stop, const SheetLine& line) {
    for (int number = line.number - 1; number > 0; --number) {
        const SheetLine earlier = sheet_line(stop.lines, number);
        if (!earlier.heading.empty() && name_in(earlier.heading) == name_in(line.heading))
            return place_in(earlier, earlier.heading);
    }
    return std::nullopt;
}

// Within braces the word stands before the last equals sign on the left of where the parser stopped.
std::string_view word_before(const SheetLine& line, int column) {
    const auto end = line.whole.size() - from_column(line.whole, column).size();
    const std::string_view left = trimmed(line.whole.substr(0, line.whole.substr(0, end).rfind('=')));
    const auto start = left.find_last_of(" \t{,.");
    return start == std::string_view::npos ? left : left.substr(start + 1);
}

std::optional<house::Place> earlier_on_line(const SheetLine& line, std::string_view word) {
    for (auto at = line.whole.find(word); at != std::string_view::npos; at = line.whole.find(word, at + 1)) {
        const std::string_view found = line.whole.substr(at, word.size());
        if (found.data() >= word.data()) return std::nullopt;
        const bool begins =
            at == 0 || std::string_view(" \t{,.").find(line.whole[at - 1]) != std::string_view::npos;
        if (begins && trimmed(line.whole.substr(at + word.size())).starts_with('='))
            return place_in(line, found);
    }
    return std::nullopt;
}

std::optional<house::Place> earlier_word(const ParserStop& stop, const SheetLine& line,
                                         std::string_view word) {
    if (auto place = earlier_on_line(line, word)) return place;
    for (int number = line.number - 1; number > 0; --number) {
        const SheetLine earlier = sheet_line(stop.lines, number);
        if (!earlier.heading.empty()) return std::nullopt;
        // The first part of a dotted word counts too: house.name is in the table that "house" would be.
        const bool same = earlier.word.substr(0, earlier.word.find('.')) == word || earlier.word == word;
        if (earlier.mark == '=' && same) return place_in(earlier, earlier.word.substr(0, word.size()));
    }
    return std::nullopt;
}

}  // namespace

house::Mistake written_twice(const ParserStop& stop, const SheetLine& line) {
    if (!line.heading.empty()) {
        const auto first = earlier_heading(stop, line);
        const bool two_ways = stop.description.find("' as ") != std::string_view::npos;
        if (two_ways) {
            return {fmt::format("'{}' is written in two ways", shown(name_in(line.heading))), "",
                    "write [site] for what there is once, [[room]] for each of several",
                    place_in(line, line.heading), first};
        }
        return {fmt::format("{} is written twice", shown(line.heading)), "",
                "put both parts under one heading", place_in(line, line.heading), first};
    }
    const std::string_view word = word_before(line, stop.place.column);
    if (word.empty())
        return {"something is written twice here", "", "keep one of the two", stop.place, std::nullopt};
    return {fmt::format("'{}' is written twice", shown(word)), "", "keep one of the two",
            place_in(line, word), earlier_word(stop, line, word)};
}

}  // namespace sheet
