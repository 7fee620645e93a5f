// The only file that sees the TOML library. Three holes of version 3.3 are closed here:
// 1. its asserts abort on texts such as "[,a]", and with NDEBUG turn into assumptions that such a text
// breaks;
// 2. dotted keys of many thousand parts overflow the stack: see refuse.hpp, and the nesting limit below;
// 3. non-ASCII characters outside quotes run into undefined behaviour: see code_points.hpp.
#undef NDEBUG
#define TOML_ASSERT(expr) static_assert(true)
#define TOML_MAX_NESTED_VALUES 32
#define TOML_ENABLE_FORMATTERS 0
#include <toml++/toml.h>

#include <algorithm>
#include <optional>

#include "sheet/code_points.hpp"
#include "sheet/parse.hpp"
#include "sheet/refuse.hpp"
#include "sheet/source_lines.hpp"
#include "sheet/why_not_toml.hpp"

namespace sheet {
namespace {

constexpr int most_levels = 32;

house::Place place_of(const toml::source_region& region) {
    const int line = std::max(static_cast<int>(region.begin.line), 1);
    const int column = std::max(static_cast<int>(region.begin.column), 1);
    const bool one_line = region.end.line == region.begin.line;
    return {line, column, std::max(one_line ? static_cast<int>(region.end.column) : 0, column + 1)};
}

bool comes_before(const house::Place& a, const house::Place& b) {
    return a.line != b.line ? a.line < b.line : a.column < b.column;
}

class Converter {
  public:
    explicit Converter(const SourceLines& lines) : lines_(lines) {}
    Node node(const toml::node& from, int level);
    const std::optional<house::Mistake>& too_deep() const { return too_deep_; }

  private:
    Node list(const toml::array& from, int level);
    Node table(const toml::table& from, int level);
    house::Place heading(const toml::node& from) const;

    const SourceLines& lines_;
    std::optional<house::Mistake> too_deep_;
};

// The library lets a table's region run on over its lines; the heading alone is what a mistake should mark.
house::Place Converter::heading(const toml::node& from) const {
    house::Place place = place_of(from.source());
    const std::string_view line = lines_.line(place.line);
    const std::string_view rest = from_column(line, place.column);
    const auto* table = from.as_table();
    if (!rest.starts_with('[') || (table != nullptr && table->is_inline())) return place;
    const auto end = rest.find_first_not_of(']', std::min(rest.find(']'), rest.size()));
    return place_of_part(place.line, line, rest.substr(0, end));
}

Node Converter::list(const toml::array& from, int level) {
    List items;
    for (const toml::node& item : from) items.push_back(node(item, level + 1));
    return {std::move(items), from.is_array_of_tables() ? heading(from) : place_of(from.source())};
}

// The library keeps its keys in alphabetical order; the sheet's own order is the one to keep.
Node Converter::table(const toml::table& from, int level) {
    Table members;
    for (auto&& [key, value] : from) {
        members.push_back(
            Member{lower_code_points(key.str()), place_of(key.source()), node(value, level + 1)});
    }
    std::stable_sort(members.begin(), members.end(),
                     [](const Member& a, const Member& b) { return comes_before(a.place, b.place); });
    return {std::move(members), heading(from)};
}

Node Converter::node(const toml::node& from, int level) {
    const house::Place place = place_of(from.source());
    if (level > most_levels) {
        if (!too_deep_) too_deep_ = nested_too_deeply(place);
        return {Date{}, place};
    }
    if (const auto* inner_table = from.as_table()) return table(*inner_table, level);
    if (const auto* inner_list = from.as_array()) return list(*inner_list, level);
    if (const auto* text = from.as_string()) return {lower_code_points(text->get()), place};
    if (const auto* whole = from.as_integer()) return {whole->get(), place};
    if (const auto* number = from.as_floating_point()) return {number->get(), place};
    if (const auto* yes = from.as_boolean()) return {yes->get(), place};
    return {Date{}, place};
}

}  // namespace

std::variant<Node, house::Mistake> parse(std::string_view text) {
    if (auto mistake = refuse(text)) return std::move(*mistake);
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);  // a byte-order mark is no character of the sheet
    const SourceLines lines(text);
    try {
        const toml::table parsed = toml::parse(lift_code_points(text));
        Converter converter(lines);
        Node root = converter.node(parsed, 0);
        if (converter.too_deep()) return *converter.too_deep();
        return root;
    } catch (const toml::parse_error& error) {
        return why_not_toml({lines, place_of(error.source()), error.description()});
    }
}

}  // namespace sheet
