#include "report/table_text.hpp"

#include <algorithm>
#include <vector>

#include "report/ink.hpp"
#include "report/wrap.hpp"

namespace report {
namespace {

constexpr std::size_t wide_gap = 3, narrow_gap = 2;
constexpr std::size_t mark_width = 2;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Columns of a cell that stand left of its decimal point: "113 F" 3, "0.464" 1, "1,570" 5; 0 of a word.
std::size_t before_point(const std::string& cell) {
    if (cell.empty() || !(is_digit(cell[0]) || (cell[0] == '-' && cell.size() > 1))) return 0;
    std::size_t end = 1;
    while (end < cell.size() && (is_digit(cell[end]) || cell[end] == ',')) ++end;
    return end;
}

// One column of a table, its heading and its cells by lines.
struct SetColumn {
    Align align = Align::left;
    std::string heading;
    std::vector<std::string> cells;  // set under each other
    std::size_t width = 0;

    std::vector<std::string> heading_lines() const { return wrap(heading, width); }
    std::vector<std::string> cell_lines(std::size_t row) const { return wrap(cells[row], width); }
};

void align_cells(SetColumn& column) {
    std::size_t most = 0;
    for (const std::string& cell : column.cells)
        most = std::max(most, column.align == Align::decimal ? before_point(cell) : columns(cell));
    for (std::string& cell : column.cells) {
        const std::size_t here = column.align == Align::decimal ? before_point(cell) : columns(cell);
        const bool moves = column.align == Align::right || (column.align == Align::decimal && here > 0);
        if (moves) cell.insert(0, spaces(most - here));
    }
}

std::size_t widest_cell(const SetColumn& column) {
    std::size_t widest = 0;
    for (const std::string& cell : column.cells) widest = std::max(widest, columns(cell));
    return widest;
}

std::vector<SetColumn> set_columns(const Table& table) {
    std::vector<SetColumn> set;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        SetColumn column{table.columns[i].align, table.columns[i].heading, {}, 0};
        for (const Row& row : table.rows) column.cells.push_back(i < row.cells.size() ? row.cells[i] : "");
        align_cells(column);
        column.width = std::max(columns(column.heading), widest_cell(column));
        set.push_back(std::move(column));
    }
    return set;
}

std::size_t total_width(const std::vector<SetColumn>& set, std::size_t gap) {
    std::size_t sum = mark_width;
    for (const SetColumn& column : set) sum += column.width + gap;
    return sum - (set.empty() ? 0 : gap);
}

std::size_t longest_word(const std::string& heading) {
    std::size_t longest = 0;
    for (std::size_t start = 0; start <= heading.size();) {
        const std::size_t end = std::min(heading.find(' ', start), heading.size());
        longest = std::max(longest, columns(heading.substr(start, end - start)));
        start = end + 1;
    }
    return longest;
}

// How narrow a column may become: headings break between words; cells only of words, and only at last.
std::size_t least_width(const SetColumn& column, bool at_last) {
    constexpr std::size_t least_of_words = 12;
    if (at_last && column.align == Align::left) return least_of_words;
    return std::max(longest_word(column.heading), widest_cell(column));
}

// Makes the widest column that gives one narrower, again and again, until the table fits or none gives.
void narrow_to(std::vector<SetColumn>& set, std::size_t width, std::size_t gap, bool at_last) {
    while (total_width(set, gap) > width) {
        SetColumn* widest = nullptr;
        for (SetColumn& column : set)
            if (column.width > least_width(column, at_last) && (!widest || column.width > widest->width))
                widest = &column;
        if (!widest) return;
        --widest->width;
    }
}

// A row of cells or headings, each of several lines, from the top.
std::string rows_text(const std::vector<SetColumn>& set, std::string mark, std::size_t gap,
                      const std::vector<std::vector<std::string>>& cells) {
    std::size_t lines = 0;
    for (const auto& cell : cells) lines = std::max(lines, cell.size());
    std::string drawn;
    for (std::size_t at = 0; at < lines; ++at) {
        std::string line = mark;
        for (std::size_t i = 0; i < set.size(); ++i) {
            const std::string text = at < cells[i].size() ? cells[i][at] : std::string();
            const std::size_t slack = set[i].width - std::min(set[i].width, columns(text));
            if (i > 0) line += spaces(gap);
            line += set[i].align == Align::right ? spaces(slack) + text : filled_to(text, set[i].width);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        drawn += line + "\n";
        mark = spaces(mark_width);
    }
    return drawn;
}

}  // namespace

std::string table_text(const Table& table, Paper paper) {
    std::vector<SetColumn> set = set_columns(table);
    const auto width = static_cast<std::size_t>(width_of(paper));
    narrow_to(set, width, wide_gap, false);
    const std::size_t gap = total_width(set, wide_gap) > width ? narrow_gap : wide_gap;
    narrow_to(set, width, gap, true);
    std::vector<std::vector<std::string>> cells;
    for (const SetColumn& column : set) cells.push_back(column.heading_lines());
    std::string drawn = table.title.empty() ? "" : wrapped({}, table.title, width_of(paper));
    drawn += inked(Ink::dim, rows_text(set, spaces(mark_width), gap, cells), paper);
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        cells.clear();
        for (const SetColumn& column : set) cells.push_back(column.cell_lines(row));
        const bool recommended = table.rows[row].recommended;
        const std::string text = rows_text(set, recommended ? "> " : spaces(mark_width), gap, cells);
        drawn += inked(recommended ? Ink::bold : Ink::plain, text, paper);
    }
    return drawn;
}

}  // namespace report
