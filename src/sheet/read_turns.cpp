// "3 square" or "2 rounded": the turns of a run whose fittings nobody can name.
#include <array>
#include <charconv>

#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr std::string_view sample = "\"3 square\", or \"2 rounded\"";
constexpr int most_turns = 50;
constexpr std::array<std::string_view, 2> kinds{"square", "rounded"};

}  // namespace

house::Maybe<house::Turns> read_turns(TableReader& table, std::string_view word) {
    const auto value = table.value(word);
    const auto text = value ? value->text(sample) : std::nullopt;
    if (!text) return std::nullopt;
    int count = 0;
    const char* const end = text->data() + text->size();
    const auto [after, error] = std::from_chars(text->data(), end, count);
    if (error != std::errc() || after == end || *after != ' ') {
        value->blame("is not a number of turns and their kind", {"", value->write(sample)});
        return std::nullopt;
    }
    const std::string_view kind(after + 1, static_cast<std::size_t>(end - after - 1));
    if (count < 0 || count > most_turns) {
        value->blame("must be from 0 to 50 turns", {"", value->write(sample)});
        return std::nullopt;
    }
    if (kind != kinds[0] && kind != kinds[1]) {
        blame_word(*value, kind, kinds);
        return std::nullopt;
    }
    return house::Given<house::Turns>{{count, kind == kinds[0]}, value->node->place};
}

}  // namespace sheet
