#include "report/wrap.hpp"

#include <algorithm>

namespace report {
namespace {

bool continues_code_point(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

}  // namespace

std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return !continues_code_point(c); }));
}

std::string_view first_columns(std::string_view text, std::size_t count) {
    std::size_t end = 0;
    for (std::size_t seen = 0; end < text.size(); ++end)
        if (!continues_code_point(text[end]) && seen++ == count) break;
    return text.substr(0, end);
}

std::string spaces(std::size_t count) { return std::string(count, ' '); }

std::string filled_to(std::string text, std::size_t width) {
    const std::size_t taken = columns(text);
    if (taken < width) text += spaces(width - taken);
    return text;
}

std::vector<std::string> wrap(std::string_view text, std::size_t width) { return wrap(text, width, width); }

std::vector<std::string> wrap(std::string_view text, std::size_t first_width, std::size_t width) {
    if (columns(text) <= first_width) return {std::string(text)};
    std::vector<std::string> lines{{}};
    std::size_t taken = 0;  // columns of the last line
    const auto room = [&] { return std::max<std::size_t>(1, lines.size() == 1 ? first_width : width); };
    const auto begin_line = [&] { lines.emplace_back(), taken = 0; };
    for (std::string_view word : words_of(text)) {
        std::size_t length = columns(word);
        if (taken > 0 && taken + 1 + length <= room()) {
            lines.back() += ' ', ++taken;
        } else if (taken > 0) {
            begin_line();
        }
        for (; taken + length > room(); length = columns(word), begin_line()) {
            const std::string_view part = first_columns(word, room() - taken);
            lines.back() += part;
            word.remove_prefix(part.size());
        }
        lines.back() += word, taken += length;
    }
    return lines;
}

std::string wrapped(const Paragraph& paragraph, std::string_view text, int width) {
    constexpr std::size_t least_room = 20;  // on a very narrow paper rather too long than one word a line
    const auto room_after = [&](std::size_t indent) {
        const std::size_t whole = static_cast<std::size_t>(std::max(width, 1));
        return std::max(whole - std::min(whole, indent), least_room);
    };
    std::string drawn, begin = paragraph.first;
    for (const std::string& line :
         wrap(text, room_after(columns(paragraph.first)), room_after(paragraph.indent))) {
        drawn += begin + line + "\n";
        begin = spaces(paragraph.indent);
    }
    return drawn;
}

}  // namespace report
