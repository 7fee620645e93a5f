#include "sheet/refuse.hpp"

#include "sheet/code_points.hpp"

namespace sheet {
namespace {

constexpr std::size_t most_bytes = 1 << 20;
constexpr int most_dots = 64;
constexpr char32_t first_refused = 0x100000;

house::Mistake at(int line, int column, const char* text, const char* remedy) {
    return {text, "", remedy, {line, column, column + 1}, std::nullopt};
}

std::optional<house::Mistake> refuse_characters(std::string_view text) {
    int line = 1, column = 1, dots = 0;
    for (std::size_t i = 0; i < text.size();) {
        const CodePoint c = code_point_at(text, i);
        if (c.bytes == 0) {
            return at(line, column, "the sheet is not UTF-8 text from here on",
                      "save it as UTF-8 in the editor, or write this line again");
        }
        if (c.value >= first_refused)
            return at(line, column, "a character here is none that a sheet can hold", "leave it out");
        dots += c.value == U'.' ? 1 : 0;
        if (dots > most_dots)
            return at(line, column, "more than 64 dots on one line", "break the line in two");
        i += c.bytes;
        ++column;
        if (c.value == U'\n') ++line, column = 1, dots = 0;
    }
    return std::nullopt;
}

}  // namespace

std::optional<house::Mistake> refuse(std::string_view text) {
    if (text.size() > most_bytes)
        return at(1, 1, "the sheet is larger than 1 MiB", "one sheet describes one house");
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // no column of its own
    return refuse_characters(text);
}

}  // namespace sheet
