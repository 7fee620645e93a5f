// An answer as a page: what is said, in order, without saying how it is drawn. report/text.hpp draws it on a
// terminal.
//
// The order is that of every answer: the number asked for; the verdict in a sentence; the table; the why; the
// assumptions that matter; what to buy or do; cautions, once. A no-break space (U+00A0) keeps a figure with
// its unit and is drawn as a space.
#pragma once

#include <string>
#include <vector>

namespace report {

enum class Align { left, right, decimal };  // decimal: numbers line up at their point

struct Column {
    std::string heading;
    Align align = Align::left;
};
struct Row {
    bool recommended = false;  // marked with ">"
    std::vector<std::string> cells;
};
struct Table {
    std::string title;  // a sentence above it; may be empty
    std::vector<Column> columns;
    std::vector<Row> rows;
};

// "why 52 cfm    at 74 F inside ...": a label and its text, wrapped under itself. Several lines: one
// paragraph each, what wraps set in a little.
struct Note {
    std::string label;
    std::vector<std::string> lines;
};

struct Page {
    std::string headline;
    std::string verdict;
    std::vector<Table> tables;
    std::vector<Note> notes;
    std::vector<std::string> cautions;
};

}  // namespace report
