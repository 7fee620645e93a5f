#include "sheet/words.hpp"

#include <fmt/format.h>

#include "sheet/code_points.hpp"
#include "units/nearest_word.hpp"

namespace sheet {

void blame_word(const Value& value, std::string_view written, std::span<const std::string_view> words) {
    const std::string nearest = units::nearest_word(written, words);
    value.blame(fmt::format("cannot be '{}'", shown(written)),
                {nearest.empty() ? std::string() : fmt::format("did you mean '{}'?", nearest),
                 fmt::format("write one of: {}", fmt::join(words.begin(), words.end(), ", "))});
}

}  // namespace sheet
