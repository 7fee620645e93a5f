// Mistakes over the lines of the sheet that hold them. Columns are code points; a tab of the sheet is copied
// under itself, so that the mark stands right in any editor and terminal.
#include <fmt/format.h>

#include <algorithm>

#include "report/ink.hpp"
#include "report/text.hpp"
#include "report/wrap.hpp"

namespace report {
namespace {

std::string_view line_of(std::string_view sheet, int number) {
    for (int i = 1; i < number; ++i) {
        const std::size_t end = sheet.find('\n');
        if (end == std::string_view::npos) return {};
        sheet.remove_prefix(end + 1);
    }
    std::string_view line = sheet.substr(0, sheet.find('\n'));
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    return line;
}

std::string_view from_column(std::string_view line, std::size_t column) {
    return line.substr(first_columns(line, column).size());
}

// A terminal must not be steered by what stands in a sheet.
std::string without_controls(std::string_view text) {
    std::string shown(text);
    for (char& c : shown)
        if ((static_cast<unsigned char>(c) < 0x20 && c != '\t') || c == 0x7f) c = '?';
    return shown;
}

// The part of a line that is shown, and what of it is marked; columns from 0.
struct Excerpt {
    std::string text;
    std::size_t mark = 0, length = 1;
};

// A line longer than the room is cut around its mark.
Excerpt excerpt(std::string_view line, house::Place place, std::size_t room) {
    constexpr std::string_view cut = "...";
    const std::size_t all = columns(line);
    const std::size_t mark = std::min(static_cast<std::size_t>(std::max(place.column - 1, 0)), all);
    const auto end = static_cast<std::size_t>(std::max(place.end_column - 1, 0));
    const std::size_t marked = std::max<std::size_t>(1, std::min(std::max(end, mark), all) - mark);
    if (all <= room) return {without_controls(line), mark, marked};
    const std::size_t inner = room - 2 * cut.size();
    const std::size_t before = marked >= inner ? 0 : (inner - marked) / 2;
    std::size_t from = mark > before ? mark - before : 0;
    from = std::min(from, all > inner ? all - inner : 0);
    const bool cut_left = from > 0, cut_right = from + inner < all;
    Excerpt shown;
    shown.text = (cut_left ? std::string(cut) : std::string()) +
                 without_controls(first_columns(from_column(line, from), inner)) +
                 (cut_right ? std::string(cut) : std::string());
    shown.mark = mark - from + (cut_left ? cut.size() : 0);
    shown.length = std::min(marked, inner - std::min(inner, mark - from));
    return shown;
}

std::string under_mark(const Excerpt& shown) {
    std::string indent;
    for (const char c : first_columns(shown.text, shown.mark)) {
        if (c == '\t') indent += '\t';
        if (c != '\t' && (static_cast<unsigned char>(c) & 0xC0U) != 0x80U) indent += ' ';
    }
    return indent + std::string(std::max<std::size_t>(1, shown.length), '^');
}

constexpr std::string_view margin = "   ";

std::string marked_line(std::string_view sheet, const house::Mistake& mistake, Paper paper) {
    const std::string number = std::to_string(mistake.place.line);
    const std::string before = std::string(margin) + number + " | ";
    const std::size_t width = static_cast<std::size_t>(std::max(width_of(paper), 40));
    const Excerpt shown = excerpt(line_of(sheet, mistake.place.line), mistake.place, width - columns(before));
    const std::string blank = std::string(margin) + spaces(number.size()) + " | ";
    const std::string mark = under_mark(shown);
    std::string drawn = before + shown.text + "\n" + blank + bold(mark, paper);
    if (mistake.under.empty()) return drawn + "\n";
    const std::size_t taken = columns(blank) + columns(mark) + 1;
    if (taken + columns(mistake.under) <= width) return drawn + " " + mistake.under + "\n";
    return drawn + "\n" + wrapped({blank, columns(blank)}, mistake.under, width_of(paper));
}

// One thing too many, as a name given twice; other mistakes' second place is a cause, not a first.
bool is_repeated(const house::Mistake& mistake) {
    return mistake.text.find("twice") != std::string::npos || mistake.text.find("two ") != std::string::npos;
}

std::string mistake_text(std::string_view file, std::string_view sheet, const house::Mistake& mistake,
                         Paper paper) {
    const house::Place place = mistake.place;
    const std::string where = place.line > 0 ? fmt::format("{}:{}:{}: ", file, place.line, place.column)
                                             : fmt::format("{}: ", file);
    std::string drawn = bold(where + mistake.text, paper) + "\n";
    if (place.line > 0)
        drawn += marked_line(sheet, mistake, paper);
    else if (!mistake.under.empty())
        drawn += wrapped({std::string(margin), margin.size()}, mistake.under, width_of(paper));
    if (mistake.second && mistake.second->line > 0)
        drawn += fmt::format("{}{}line {})\n", margin,
                             is_repeated(mistake) ? "first written here (" : "the other place (",
                             mistake.second->line);
    if (!mistake.remedy.empty())
        drawn += wrapped({std::string(margin), margin.size()}, mistake.remedy, width_of(paper));
    return drawn;
}

}  // namespace

std::string mistakes_text(std::string_view file, std::string_view sheet,
                          const std::vector<house::Mistake>& mistakes, Paper paper) {
    std::string drawn;
    for (const house::Mistake& mistake : mistakes) drawn += mistake_text(file, sheet, mistake, paper);
    const std::size_t count = mistakes.size();
    return drawn + fmt::format("{} mistake{}; nothing was computed.\n", count, count == 1 ? "" : "s");
}

}  // namespace report
