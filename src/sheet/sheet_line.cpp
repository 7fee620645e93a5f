#include "sheet/sheet_line.hpp"

namespace sheet {
namespace {

constexpr std::string_view word_characters =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-.";

std::string_view without_comment(std::string_view value) {
    char open = 0;
    for (std::size_t i = 0; i < value.size(); ++i) {
        const char c = value[i];
        if (open == 0 && c == '#') return value.substr(0, i);
        if (open == 0 && (c == '"' || c == '\'')) {
            open = c;
        } else if (c == open) {
            open = 0;
        }
    }
    return value;
}

std::string_view heading_of(std::string_view line) {
    line = trimmed(line);
    if (!line.starts_with('[')) return {};
    const auto end = line.find(']');
    if (end == std::string_view::npos) return line;
    return line.substr(0, line.find_first_not_of(']', end));
}

std::string in_quotes(std::string_view text) { return '"' + std::string(trimmed(text)) + '"'; }

}  // namespace

SheetLine sheet_line(const SourceLines& lines, int number) {
    SheetLine line;
    line.number = number;
    line.whole = lines.line(number);
    line.heading = heading_of(line.whole);
    std::string_view rest = trimmed(line.whole);
    line.word = rest.substr(0, rest.find_first_not_of(word_characters));
    rest = trimmed(rest.substr(line.word.size()));
    if (line.word.empty() || !(rest.starts_with('=') || rest.starts_with(':'))) return line;
    line.mark = rest.front();
    line.value = trimmed(without_comment(rest.substr(1)));
    return line;
}

house::Place place_in(const SheetLine& line, std::string_view part) {
    return place_of_part(line.number, line.whole, part);
}

std::string_view unclosed_quote(const SheetLine& line) {
    std::size_t opened = 0;
    char open = 0;
    for (std::size_t i = 0; i < line.whole.size(); ++i) {
        const char c = line.whole[i];
        if (open == 0 && c == '#') break;
        if (open == '"' && c == '\\') {
            ++i;  // the next character is no closing quote
        } else if (open == 0 && (c == '"' || c == '\'')) {
            open = c, opened = i;
        } else if (c == open) {
            open = 0;
        }
    }
    return open == 0 ? std::string_view() : line.whole.substr(opened);
}

bool is_curly_quote(char32_t c) { return (c >= 0x2018 && c <= 0x201F) || c == 0xAB || c == 0xBB; }

bool is_odd_space(char32_t c) {
    return c == 0xA0 || c == 0x85 || c == 0x1680 || c == 0x180E || (c >= 0x2000 && c <= 0x200D) ||
           (c >= 0x2028 && c <= 0x2029) || c == 0x202F || c == 0x205F || c == 0x2060 || c == 0x3000 ||
           c == 0xFEFF;
}

std::string with_quotes(std::string_view value) {
    if (value.find_first_of("\"'{}") != std::string_view::npos) return {};
    if (!value.starts_with('[')) return in_quotes(value);
    if (value.size() < 2 || value.find_first_of("[]", 1) != value.size() - 1) return {};
    value = value.substr(1, value.size() - 2);
    std::string list = "[";
    for (auto comma = value.find(','); comma != std::string_view::npos; comma = value.find(',')) {
        list += in_quotes(value.substr(0, comma)) + ", ";
        value.remove_prefix(comma + 1);
    }
    return list + in_quotes(value) + "]";
}

}  // namespace sheet
