// Whatever becomes of a good sheet, reading it ends, points into it and says something with every mistake.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "full_sheet.hpp"
#include "sheet/read.hpp"

namespace {

std::vector<std::string> lines_of(std::string_view text) {
    std::vector<std::string> lines;
    for (auto end = text.find('\n'); end != std::string_view::npos; end = text.find('\n')) {
        lines.emplace_back(text.substr(0, end));
        text.remove_prefix(end + 1);
    }
    return lines;
}

// Every mistake says something, lies within the text, and comes after the one before it.
void check_mistakes(const sheet::Read& read, std::string_view text) {
    const auto line_count = static_cast<int>(std::count(text.begin(), text.end(), '\n')) + 1;
    std::pair<int, int> last{0, 0};
    for (const house::Mistake& mistake : read.mistakes) {
        const house::Place& place = mistake.place;
        RC_ASSERT(!mistake.text.empty());
        RC_ASSERT(place.line >= 1 && place.line <= line_count);
        RC_ASSERT(place.column >= 1 && place.end_column > place.column);
        RC_ASSERT(last <= std::pair(place.line, place.column));
        last = {place.line, place.column};
    }
}

RC_GTEST_PROP(ReadLaws, AnySubsetOfLinesIsRead, ()) {
    std::string text;
    for (const std::string& line : lines_of(full_sheet))
        if (*rc::gen::inRange(0, 4) > 0) text += line + "\n";
    check_mistakes(sheet::read(text), text);
}

RC_GTEST_PROP(ReadLaws, AnyOrderOfLinesIsRead, ()) {
    auto lines = lines_of(full_sheet);
    for (std::size_t left = lines.size(); left > 1; --left)
        std::swap(lines[left - 1], lines[*rc::gen::inRange<std::size_t>(0, left)]);
    std::string text;
    for (const std::string& line : lines) text += line + "\n";
    check_mistakes(sheet::read(text), text);
}

RC_GTEST_PROP(ReadLaws, AnyCutAndAnyChangedByteIsRead, ()) {
    std::string text(full_sheet.substr(0, *rc::gen::inRange<std::size_t>(0, full_sheet.size())));
    if (!text.empty())
        text[*rc::gen::inRange<std::size_t>(0, text.size())] =
            static_cast<char>(*rc::gen::inRange(-128, 128));
    check_mistakes(sheet::read(text), text);
}

// Every line of the full sheet that gives a word, left out or misspelt, costs that word and nothing else.
RC_GTEST_PROP(ReadLaws, OneMisspeltWordIsOneMistakeThere, ()) {
    auto lines = lines_of(full_sheet);
    const auto index = *rc::gen::suchThat(
        rc::gen::inRange<std::size_t>(2, lines.size()),
        [&lines](std::size_t i) { return !lines[i].starts_with('[') && !lines[i].starts_with("name"); });
    lines[index] = "zz" + lines[index];
    std::string text;
    for (const std::string& line : lines) text += line + "\n";
    const sheet::Read read = sheet::read(text);
    RC_ASSERT(read.mistakes.size() == 1u);
    RC_ASSERT(read.mistakes[0].place.line == static_cast<int>(index) + 1);
    RC_ASSERT(read.mistakes[0].place.column == 1);
}

}  // namespace
