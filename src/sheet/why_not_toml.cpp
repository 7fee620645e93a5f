#include "sheet/why_not_toml.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>

#include "sheet/code_points.hpp"
#include "sheet/sheet_line.hpp"
#include "sheet/written_twice.hpp"

namespace sheet {
namespace {

using Explained = std::optional<house::Mistake>;

// The words of a mistake, without its place.
struct Wording {
    std::string text;
    std::string under;
    std::string remedy;
};

bool says(const ParserStop& stop, std::string_view words) {
    return stop.description.find(words) != std::string_view::npos;
}

char32_t character_at(const SheetLine& line, int column) {
    return code_point_at(from_column(line.whole, column), 0).value;
}

std::string assignment(const SheetLine& line, std::string_view value) {
    return fmt::format("{} = {}", shown(line.word), value);
}

Explained curly_quotes(const ParserStop& stop, const SheetLine& line) {
    const std::string_view here = from_column(line.whole, stop.place.column);
    for (const std::string_view part : {here, line.value, trimmed(line.whole)}) {
        const CodePoint c = code_point_at(part, 0);
        if (c.bytes == 0 || !is_curly_quote(c.value)) continue;
        return house::Mistake{fmt::format("a curly quote {} stands where a straight one is needed",
                                          shown(part.substr(0, c.bytes))),
                              "pasted from a word processor?", "write the straight quote \" at both ends",
                              place_in(line, part.substr(0, c.bytes)), std::nullopt};
    }
    return std::nullopt;
}

Explained colon_for_equals(const ParserStop&, const SheetLine& line) {
    if (line.mark != ':') return std::nullopt;
    const auto after_word = static_cast<std::size_t>(line.word.data() - line.whole.data()) + line.word.size();
    const std::string value = line.value.starts_with('"') ? shown(line.value) : with_quotes(line.value);
    return house::Mistake{
        fmt::format("'{}' is followed by a colon", shown(line.word)), "an equals sign belongs here",
        "write " + assignment(line, value.empty() ? "\"...\"" : shown(value)),
        place_in(line, line.whole.substr(line.whole.find(':', after_word), 1)), std::nullopt};
}

Explained list_not_closed(const ParserStop& stop, const SheetLine& line) {
    if (!says(stop, "parsing array") || !(says(stop, "closing ']'") || says(stop, "end-of-file")))
        return std::nullopt;
    const bool opened_here = line.value.starts_with('[');
    if (opened_here && !says(stop, "end-of-file")) return std::nullopt;
    SheetLine opening = line;
    while (opening.number > 1 && !opening.value.starts_with('['))
        opening = sheet_line(stop.lines, opening.number - 1);
    if (!opening.value.starts_with('[')) return std::nullopt;
    house::Mistake mistake{
        fmt::format("the list of '{}' does not end, or a comma is missing in it", shown(opening.word)), "",
        "put a comma between its parts and ] at its end", place_in(opening, opening.value.substr(0, 1)),
        std::nullopt};
    if (!says(stop, "end-of-file")) mistake.second = stop.place;
    return mistake;
}

bool is_yes_or_no(std::string_view value) {
    for (const std::string_view word : {"True", "TRUE", "False", "FALSE", "yes", "no", "Yes", "No"})
        if (value == word) return true;
    return false;
}

// A value that is not in quotes: what it was meant to be decides what to write.
Wording for_bare_value(std::string_view word, std::string_view value) {
    if (is_yes_or_no(value)) {
        return {fmt::format("'{}' cannot be '{}'", word, value), "is it true or false?",
                fmt::format("write {0} = true or {0} = false", word)};
    }
    if (value.find_first_not_of("0123456789+-_.") == std::string_view::npos) {
        return {fmt::format("'{}' is not a number a sheet can hold", word), "",
                "write a plain number, as 1924 or 0.8"};
    }
    Wording wording{fmt::format("'{}' has no quotes", word), "a text needs quotes", ""};
    if (value.starts_with('[')) {
        wording.under = "every text in a list needs quotes";
    } else if (value.front() >= '0' && value.front() <= '9') {
        wording.under = "a number with a unit needs quotes";
    }
    const std::string quoted = with_quotes(value);
    wording.remedy =
        quoted.empty()
            ? fmt::format("write feet and inches as words, in quotes: {} = \"12 ft 6-1/2 in\"", word)
            : fmt::format("write {} = {}", word, shown(quoted));
    return wording;
}

Explained value_without_quotes(const ParserStop& stop, const SheetLine& line) {
    if (line.mark != '=' || line.value.empty() || says(stop, "string:")) return std::nullopt;
    const house::Place place = place_in(line, line.value);
    if (stop.place.column < place.column) return std::nullopt;
    if (std::string_view("\"'{=").find(line.value.front()) != std::string_view::npos) return std::nullopt;
    if (is_odd_space(code_point_at(line.value, 0).value)) return std::nullopt;
    if (line.value.starts_with('[') && with_quotes(line.value).empty()) return std::nullopt;
    const Wording wording = for_bare_value(shown(line.word), line.value);
    return house::Mistake{wording.text, wording.under, wording.remedy, place, std::nullopt};
}

// The same inside a list or braces: the mark goes under the bare word alone.
Explained part_without_quotes(const ParserStop& stop, const SheetLine& line) {
    const bool value = says(stop, "could not determine") || says(stop, "parsing boolean") ||
                       says(stop, "parsing floating-point") || says(stop, "parsing decimal") ||
                       says(stop, "parsing date");
    if (!value) return std::nullopt;
    const auto stopped = line.whole.size() - from_column(line.whole, stop.place.column).size();
    const auto before = line.whole.substr(0, stopped).find_last_of(" \t,[{=");
    std::string_view part = line.whole.substr(before == std::string_view::npos ? 0 : before + 1);
    part = trimmed(part.substr(0, part.find_first_of(",]}#")));
    if (part.empty() || part.find('"') != std::string_view::npos ||
        is_curly_quote(code_point_at(part, 0).value) || is_odd_space(code_point_at(part, 0).value))
        return std::nullopt;
    return house::Mistake{fmt::format("'{}' has no quotes", shown(part)), "a text needs quotes",
                          fmt::format("write \"{}\"", shown(part)), place_in(line, part), std::nullopt};
}

Explained comma_missing(const ParserStop& stop, const SheetLine& line) {
    if (!says(stop, "parsing array") || !says(stop, "expected comma")) return std::nullopt;
    return house::Mistake{fmt::format("a comma is missing in the list of '{}'", shown(line.word)),
                          "before this", "write [\"first\", \"second\"]", stop.place, std::nullopt};
}

// A text that runs into the line's end; or one of several lines that runs into the sheet's end.
Explained quote_not_closed(const ParserStop& stop, const SheetLine& line) {
    if (!says(stop, "string:") || !(says(stop, "control characters") || says(stop, "end-of-file")))
        return std::nullopt;
    const auto result = [](house::Place place, std::string_view quote) {
        return house::Mistake{"a text does not end", "it begins here", fmt::format("end it with {}", quote),
                              place, std::nullopt};
    };
    if (!trimmed(from_column(line.whole, stop.place.column)).empty()) return std::nullopt;
    for (int number = line.number; says(stop, "end-of-file") && number > 0; --number) {
        const SheetLine earlier = sheet_line(stop.lines, number);
        for (const std::string_view quote : {"\"\"\"", "'''"}) {
            if (const auto at = earlier.whole.rfind(quote); at != std::string_view::npos)
                return result(place_in(earlier, earlier.whole.substr(at, 3)), quote);
        }
        if (!unclosed_quote(earlier).empty()) break;
    }
    const std::string_view open = unclosed_quote(line);
    if (open.empty()) return std::nullopt;
    return result(place_in(line, open), open.substr(0, 1));
}

Explained braces_over_lines(const ParserStop& stop, const SheetLine& line) {
    if (!says(stop, "parsing inline table")) return std::nullopt;
    const bool at_end = trimmed(from_column(line.whole, stop.place.column)).empty();
    const bool at_comment = from_column(line.whole, stop.place.column).starts_with('#');
    if (at_end || at_comment) {
        return house::Mistake{"what stands in { } goes on over the end of the line", "",
                              "write all of it, from { to }, on one line", stop.place, std::nullopt};
    }
    return house::Mistake{"what stands in { } cannot be read from here on", "",
                          "write { word = \"text\", word = \"text\" } with quotes and commas", stop.place,
                          std::nullopt};
}

Explained word_without_value(const ParserStop& stop, const SheetLine& line) {
    if (line.word.empty()) return std::nullopt;
    const bool no_mark = line.mark == 0 && says(stop, "expected '='");
    const bool no_value = line.mark == '=' && line.value.empty();
    if (!no_mark && !no_value) return std::nullopt;
    const std::string_view rest = trimmed(from_column(line.whole, stop.place.column));
    if (no_mark && !rest.empty() && !rest.starts_with('#')) {
        return house::Mistake{fmt::format("an equals sign is missing after '{}'", shown(line.word)), "",
                              "write a word, an equals sign and a value: length = \"12 ft\"",
                              place_in(line, line.word), std::nullopt};
    }
    return house::Mistake{fmt::format("'{}' has no value", shown(line.word)), "",
                          "write " + assignment(line, "\"...\"") + ", or leave the line out",
                          place_in(line, line.word), std::nullopt};
}

Explained heading_unreadable(const ParserStop& stop, const SheetLine& line) {
    const bool heading = says(stop, "table header") || says(stop, "bare key starting");
    if (!heading || line.heading.empty()) return std::nullopt;
    return house::Mistake{
        "this heading cannot be read", "",
        "write [site] for what there is once, [[room]] for each of several, alone on its line",
        place_in(line, trimmed(line.whole)), std::nullopt};
}

Explained stray_character(const ParserStop& stop, const SheetLine& line) {
    const char32_t c = character_at(line, stop.place.column);
    house::Place place = stop.place;
    place.end_column = place.column + 1;
    if (is_odd_space(c)) {
        return house::Mistake{"a space here is not a plain space", "pasted from a page?",
                              "delete it and type a space", place, std::nullopt};
    }
    if (c < 0x80) return std::nullopt;
    std::string character;
    append_code_point(character, c);
    return house::Mistake{fmt::format("'{}' stands outside quotes", shown(character)), "",
                          "put the text it belongs to in straight quotes", place, std::nullopt};
}

Explained text_ended_early(const ParserStop& stop, const SheetLine& line) {
    if (says(stop, "unknown escape") || says(stop, "is not supported in TOML")) {
        return house::Mistake{"a backslash in a text has a meaning of its own", "",
                              "write \\\\ for a backslash, or put the text in single quotes", stop.place,
                              std::nullopt};
    }
    const bool text = line.value.starts_with('"') || line.value.starts_with('\'');
    if (!text || !says(stop, "expected a comment or whitespace")) return std::nullopt;
    return house::Mistake{"the text ends before this", "a quote mark inside a text ends it",
                          "write \\\" for a quote mark; for inches write in: \"12 ft 6 in\"", stop.place,
                          std::nullopt};
}

Explained control_character(const ParserStop& stop, const SheetLine& line) {
    const char32_t here = character_at(line, stop.place.column);
    const bool stands_here =
        here != '\t' && is_control(here) && !from_column(line.whole, stop.place.column).empty();
    if (!stands_here && !says(stop, "control character")) return std::nullopt;
    return house::Mistake{"an invisible control character stands here", "", "delete it", stop.place,
                          std::nullopt};
}

}  // namespace

house::Mistake nested_too_deeply(house::Place place) {
    return {"lists or tables stand inside each other more than 32 deep", "",
            "a sheet needs no more than four", place, std::nullopt};
}

house::Mistake why_not_toml(const ParserStop& stop) {
    const SheetLine line = sheet_line(stop.lines, stop.place.line);
    if (says(stop, "nested value depth")) return nested_too_deeply(stop.place);
    if (says(stop, "redefine") || says(stop, "existing inline table")) return written_twice(stop, line);
    // The surest signs first: each looks only for its own.
    for (const auto explain :
         {quote_not_closed, control_character, curly_quotes, colon_for_equals, list_not_closed,
          word_without_value, value_without_quotes, part_without_quotes, stray_character, comma_missing,
          braces_over_lines, heading_unreadable, text_ended_early})
        if (auto mistake = explain(stop, line)) return *mistake;
    return {"this is not written as a sheet needs it", "",
            "each line is a word, an equals sign and a value: length = \"12 ft\"", stop.place, std::nullopt};
}

}  // namespace sheet
