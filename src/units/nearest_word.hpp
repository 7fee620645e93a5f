// The known words a mistyped one is likely a slip for.
//
// Near is counted in slips: a letter left out, put in, changed, or swapped with its neighbour. Case does not
// matter; equally near words keep their order. Only the first 64 bytes of a word count.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace units {

// The nearest word, or "" when none is within one slip for every three letters (one at least).
std::string nearest_word(std::string_view word, std::span<const std::string_view> words);

// The nearest words, at most so many, however far.
std::vector<std::string> nearest_words(std::string_view word, std::span<const std::string_view> words,
                                       std::size_t count);

}  // namespace units
