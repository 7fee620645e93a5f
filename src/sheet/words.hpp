// Reads a text that must be one of a closed list of words.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "house/words.hpp"
#include "sheet/value.hpp"

namespace sheet {

// Blames a word that is none of the words: the nearest beside the mark, all of them below it.
void blame_word(const Value& value, std::string_view written, std::span<const std::string_view> words);

template <class E>
std::vector<std::string_view> spellings() {
    std::vector<std::string_view> result;
    for (const auto& row : house::words<E>()) result.push_back(row.text);
    return result;
}

template <class E>
house::Maybe<E> read_word(const Value& value) {
    const auto words = spellings<E>();
    const auto text = value.text('"' + std::string(words.front()) + '"');
    if (!text) return std::nullopt;
    for (const auto& row : house::words<E>())
        if (row.text == *text) return house::Given<E>{row.value, value.node->place};
    blame_word(value, *text, words);
    return std::nullopt;
}

}  // namespace sheet
