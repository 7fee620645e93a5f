// Reads the tables of published values that stand beside this header.
//
//     for (const auto& row : published::read("ducts_friction.csv")) row.number("D_in"); row.text("surface");
//
// Lines that begin with '#' and empty lines are skipped; the first other line names the columns. A cell may
// be quoted ("6 in, bare"), a quote inside it doubled. Every error is a std::runtime_error "file:line: what".
#pragma once

#include <cstddef>
#include <fstream>
#include <locale>
#include <map>
#include <memory>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace published {

// Where a row stands, to be named in errors and in the message of a failed test.
struct Origin {
    std::string file;
    int line = 0;
    [[noreturn]] void fail(const std::string& what) const { throw std::runtime_error(text() + ": " + what); }
    std::string text() const { return file + ":" + std::to_string(line); }
};

using Columns = std::map<std::string, std::size_t>;

class Row {
  public:
    Row(Origin origin, std::shared_ptr<const Columns> columns, std::vector<std::string> cells)
        : origin_(std::move(origin)), columns_(std::move(columns)), cells_(std::move(cells)) {}

    const std::string& text(const std::string& column) const {
        const auto found = columns_->find(column);
        if (found == columns_->end()) origin_.fail("no column \"" + column + "\"");
        return cells_[found->second];
    }
    bool has(const std::string& column) const { return !text(column).empty(); }
    double number(const std::string& column) const {
        const std::string& cell = text(column);
        std::istringstream in(cell);
        in.imbue(std::locale::classic());
        double value = 0;
        if (!(in >> value) || !in.eof())
            origin_.fail("column \"" + column + "\": no number: \"" + cell + "\"");
        return value;
    }
    std::string where() const { return origin_.text(); }

  private:
    Origin origin_;
    std::shared_ptr<const Columns> columns_;
    std::vector<std::string> cells_;
};

using Table = std::vector<Row>;

inline std::vector<std::string> cells_of(const std::string& line, const Origin& origin) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool doubled = quoted && line.compare(i, 2, "\"\"") == 0;
        if (doubled)
            cells.back() += line[++i];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            cells.emplace_back();
        else
            cells.back() += line[i];
    }
    if (quoted) origin.fail("a quoted cell does not end");
    return cells;
}

inline std::shared_ptr<const Columns> columns_of(const std::vector<std::string>& names,
                                                 const Origin& origin) {
    auto columns = std::make_shared<Columns>();
    for (const auto& name : names)
        if (!columns->emplace(name, columns->size()).second) origin.fail("column \"" + name + "\" twice");
    return columns;
}

inline Table read(const std::string& file) {
    std::ifstream in(std::string(SILLFLOW_SOURCE_DIR "/tests/published/") + file);
    Origin origin{file, 0};
    if (!in) origin.fail("cannot be opened");
    Table table;
    std::shared_ptr<const Columns> columns;
    for (std::string line; std::getline(in, line);) {
        ++origin.line;
        if (line.empty() || line[0] == '#') continue;
        auto cells = cells_of(line, origin);
        if (!columns) {
            columns = columns_of(cells, origin);
        } else if (cells.size() != columns->size()) {
            origin.fail(std::to_string(cells.size()) + " cells under " + std::to_string(columns->size()) +
                        " columns");
        } else {
            table.emplace_back(origin, columns, std::move(cells));
        }
    }
    if (table.empty()) origin.fail("no rows");
    return table;
}

}  // namespace published
