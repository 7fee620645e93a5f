#include "units/nearest_word.hpp"

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>

namespace units {
namespace {

constexpr std::size_t longest = 64;

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string counted_letters(std::string_view word) {
    std::string letters(word.substr(0, longest));
    std::transform(letters.begin(), letters.end(), letters.begin(), lower);
    return letters;
}

// Row i holds the slips between the first i letters of a and every beginning of b.
using Row = std::array<std::size_t, longest + 1>;

bool are_swapped(std::string_view a, std::string_view b, std::size_t i, std::size_t j) {
    return i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
}

std::size_t slips_between(std::string_view a, std::string_view b) {
    Row before{};
    Row above{};
    Row row{};
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        before = std::exchange(above, row);
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, changed});
            if (are_swapped(a, b, i, j)) row[j] = std::min(row[j], before[j - 2] + 1);
        }
    }
    return row[b.size()];
}

// Words that share no letter are not near, however short.
bool is_near(std::size_t slips, std::size_t word_size, std::size_t known_size) {
    return slips <= std::max<std::size_t>(1, word_size / 3) &&
           slips < std::max<std::size_t>(1, std::max(word_size, known_size));
}

struct Candidate {
    std::size_t slips;
    std::string_view word;
};

std::vector<Candidate> nearest_first(std::string_view letters, std::span<const std::string_view> words) {
    std::vector<Candidate> candidates;
    for (const std::string_view word : words) {
        candidates.push_back({slips_between(letters, counted_letters(word)), word});
    }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.slips < b.slips; });
    return candidates;
}

}  // namespace

std::string nearest_word(std::string_view word, std::span<const std::string_view> words) {
    const std::string letters = counted_letters(word);
    for (const Candidate& candidate : nearest_first(letters, words)) {
        if (is_near(candidate.slips, letters.size(), candidate.word.size()))
            return std::string(candidate.word);
    }
    return {};
}

std::vector<std::string> nearest_words(std::string_view word, std::span<const std::string_view> words,
                                       std::size_t count) {
    std::vector<std::string> nearest;
    for (const Candidate& candidate : nearest_first(counted_letters(word), words)) {
        if (nearest.size() == count) break;
        nearest.emplace_back(candidate.word);
    }
    return nearest;
}

}  // namespace units
