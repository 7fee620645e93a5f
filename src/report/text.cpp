#include "report/text.hpp"

#include <algorithm>

#include "report/figures.hpp"
#include "report/ink.hpp"
#include "report/table_text.hpp"
#include "report/wrap.hpp"

namespace report {
namespace {

constexpr std::size_t least_label = 14, most_label = 20;
constexpr std::size_t set_in = 2;  // what wraps, where a note has several paragraphs

std::size_t label_width(const std::vector<Note>& notes) {
    std::size_t widest = least_label;
    for (const Note& note : notes) widest = std::max(widest, columns(note.label) + 2);
    return std::min(widest, most_label);
}

std::string note_text(const Note& note, std::size_t label, Paper paper) {
    std::string drawn;
    std::string first = filled_to(note.label, label);
    if (columns(note.label) + 1 > label) {
        drawn = bold(note.label, paper) + "\n";
        first = spaces(label);
    } else {
        first = bold(note.label, paper) + spaces(label - columns(note.label));
    }
    const std::size_t indent = label + (note.lines.size() > 1 ? set_in : 0);
    for (const std::string& line : note.lines) {
        // The label's colour takes no columns, so it is put before a paragraph drawn without it.
        const std::string drawn_line = wrapped({spaces(label), indent}, line, width_of(paper));
        drawn += first + drawn_line.substr(label);
        first = spaces(label);
    }
    return drawn;
}

std::string paragraph(const std::string& sentence, Ink ink, Paper paper) {
    return sentence.empty() ? sentence : inked(ink, wrapped({}, sentence, width_of(paper)), paper);
}

}  // namespace

std::string text(const Page& page, Paper paper) {
    std::string drawn =
        paragraph(page.headline, Ink::bold, paper) + paragraph(page.verdict, Ink::plain, paper);
    for (const Table& table : page.tables) drawn += "\n" + table_text(table, paper);
    std::vector<Note> notes = page.notes;
    if (!page.cautions.empty()) notes.push_back({"take care", page.cautions});
    if (!notes.empty()) drawn += "\n";
    const std::size_t label = label_width(notes);
    for (const Note& note : notes) drawn += note_text(note, label, paper);
    return with_plain_spaces(std::move(drawn));
}

}  // namespace report
