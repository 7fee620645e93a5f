#include "sheet/value.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "sheet/code_points.hpp"

namespace sheet {
namespace {

constexpr int longest_text = 120;
constexpr std::size_t longest_list = 500;

std::string_view kind_of(const Node& node) {
    struct Kinds {
        std::string_view operator()(const Date&) const { return "a date"; }
        std::string_view operator()(const std::string&) const { return "text"; }
        std::string_view operator()(std::int64_t) const { return "a number"; }
        std::string_view operator()(double) const { return "a number"; }
        std::string_view operator()(bool) const { return "true or false"; }
        std::string_view operator()(const List&) const { return "a list"; }
        std::string_view operator()(const Table&) const { return "a table"; }
    };
    return std::visit(Kinds{}, node.value);
}

bool holds_control_character(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint c = code_point_at(text, at);
        if (c.bytes == 0 || is_control(c.value)) return true;
        at += c.bytes;
    }
    return false;
}

// The number as it should have been written, where it can be guessed from what was.
std::string whole_number_in(const Value& value, WholeRange range) {
    const std::string* text = value.plain_text();
    const bool digits = text != nullptr && !text->empty() && text->size() <= 4 &&
                        text->find_first_not_of("0123456789") == std::string::npos;
    return digits ? *text : fmt::format("{}", range.least);
}

}  // namespace

void Value::blame(std::string_view what, Advice advice) const {
    mistakes->push_back({fmt::format("{} {}", called(), what), std::move(advice.under),
                         std::move(advice.remedy), node->place, std::nullopt});
}

void Value::blame(const units::ReadProblem& problem) const {
    const bool guess = problem.remedy.starts_with("did you mean");
    mistakes->push_back({fmt::format("{}: {}", called(), problem.text),
                         guess ? problem.remedy : std::string(), guess ? std::string() : problem.remedy,
                         part(problem.offset, problem.length), std::nullopt});
}

void Value::blame_kind(std::string_view needed, std::string_view sample) const {
    blame(fmt::format("is {}, not {}", kind_of(*node), needed), {"", write(sample)});
}

std::string Value::called() const {
    return fmt::format("{}'{}' in {}", is_part ? "a part of " : "", word, owner);
}

std::string Value::write(std::string_view sample) const {
    return is_part ? fmt::format("write {}", sample) : fmt::format("write {} = {}", word, sample);
}

house::Place Value::part(int offset, int length) const {
    const house::Place& whole = node->place;
    const std::string* text = plain_text();
    // As wide as its characters and two quotes: nothing in it is escaped, and it stands on one line.
    const bool plain = text != nullptr && whole.end_column - whole.column == count_code_points(*text) + 2;
    if (!plain) return whole;
    const int first = std::clamp(whole.column + 1 + offset, whole.column, whole.end_column - 1);
    return {whole.line, first, std::clamp(first + length, first + 1, whole.end_column)};
}

std::optional<std::string> Value::text(std::string_view sample) const {
    const std::string* text = plain_text();
    if (text == nullptr) {
        blame_kind("text", sample);
    } else if (text->find_first_not_of(" \t") == std::string::npos) {
        blame("is empty", {"", write(sample) + ", or leave it out"});
    } else if (count_code_points(*text) > longest_text) {
        blame("is longer than 120 characters", {"", "write it shorter"});
    } else if (holds_control_character(*text)) {
        blame("holds an invisible control character", {"", "write it again without \\ and on one line"});
    } else {
        return *text;
    }
    return std::nullopt;
}

const std::string* Value::plain_text() const { return std::get_if<std::string>(&node->value); }

std::optional<std::vector<Value>> Value::list(std::string_view sample) const {
    const List* items = std::get_if<List>(&node->value);
    if (items == nullptr) {
        blame_kind("a list", sample);
        return std::nullopt;
    }
    if (items->size() > longest_list) {
        Value{&(*items)[longest_list], word, owner, mistakes}.blame("has more than 500 parts",
                                                                    {"", "a house needs fewer"});
        return std::nullopt;
    }
    std::vector<Value> parts;
    for (const Node& item : *items) parts.push_back(at(item));
    return parts;
}

std::optional<std::vector<Value>> Value::list_of(std::size_t count, std::string_view what,
                                                 std::string_view sample) const {
    auto parts = list(sample);
    if (!parts || parts->size() == count) return parts;
    blame(fmt::format("needs {}, and has {}", what, parts->size()), {"", write(sample)});
    return std::nullopt;
}

house::Maybe<std::string> read_text(const Value& value, std::string_view sample) {
    if (auto text = value.text(sample)) return house::Given<std::string>{std::move(*text), value.node->place};
    return std::nullopt;
}

house::Maybe<bool> read_yes_or_no(const Value& value) {
    if (const bool* yes = std::get_if<bool>(&value.node->value))
        return house::Given<bool>{*yes, value.node->place};
    value.blame_kind("true or false", "true, or false");
    return std::nullopt;
}

house::Maybe<int> read_whole(const Value& value, WholeRange range) {
    const auto* whole = std::get_if<std::int64_t>(&value.node->value);
    if (whole == nullptr && std::holds_alternative<double>(value.node->value)) {
        value.blame("is not a whole number",
                    {"", value.write(fmt::format("{}, without a point", range.least))});
        return std::nullopt;
    }
    if (whole == nullptr) {
        const std::string_view quotes = value.plain_text() != nullptr ? ", without quotes" : "";
        value.blame_kind("a whole number", fmt::format("{}{}", whole_number_in(value, range), quotes));
        return std::nullopt;
    }
    if (*whole >= range.least && *whole <= range.most)
        return house::Given<int>{static_cast<int>(*whole), value.node->place};
    value.blame(fmt::format("is {}", *whole),
                {fmt::format("it must be from {} to {}", range.least, range.most), ""});
    return std::nullopt;
}

}  // namespace sheet
