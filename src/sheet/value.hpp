// One value of the sheet, with the word it stands under and what that word belongs to, so that every mistake
// can say
//     'length' in duct 'main trunk' has no unit
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "house/place.hpp"
#include "sheet/node.hpp"
#include "units/read.hpp"

namespace sheet {

using Mistakes = std::vector<house::Mistake>;

// What stands beside and below the mark of a mistake.
struct Advice {
    std::string under;
    std::string remedy;
};

struct Value {
    const Node* node = nullptr;
    std::string_view word;   // "length"
    std::string_view owner;  // "duct 'main trunk'"
    Mistakes* mistakes = nullptr;
    bool is_part = false;  // of a list

    // "'length' in duct 'main trunk'" and what is wrong with it.
    void blame(std::string_view what, Advice advice) const;
    void blame(const units::ReadProblem& problem) const;
    // What kind of value stands where a sample of another kind is needed: "is a number, not text".
    void blame_kind(std::string_view needed, std::string_view sample) const;

    // A part of this list, blamed under the same word.
    Value at(const Node& item) const { return {&item, word, owner, mistakes, true}; }

    // "'length' in duct 'main trunk'".
    std::string called() const;
    // "write length = " and a sample; for a part of a list the sample alone.
    std::string write(std::string_view sample) const;
    // The place of a part of a text, offset and length in code points; the whole text where escapes blur the
    // columns.
    house::Place part(int offset, int length) const;

    // A text that is not empty, at most 120 characters long and free of control characters.
    std::optional<std::string> text(std::string_view sample) const;
    // Text as it is, before any of that: to tell kinds of value apart.
    const std::string* plain_text() const;
    // The parts of a list of at most 500; empty after a mistake.
    std::optional<std::vector<Value>> list(std::string_view sample) const;
    // Exactly so many parts; what is what the mistake calls them: "two lengths".
    std::optional<std::vector<Value>> list_of(std::size_t count, std::string_view what,
                                              std::string_view sample) const;
};

house::Maybe<std::string> read_text(const Value& value, std::string_view sample);
house::Maybe<bool> read_yes_or_no(const Value& value);

struct WholeRange {
    int least = 0;
    int most = 0;
};
house::Maybe<int> read_whole(const Value& value, WholeRange range);

}  // namespace sheet
