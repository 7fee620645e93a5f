#include "sheet/table_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "sheet/code_points.hpp"
#include "units/nearest_word.hpp"

namespace sheet {
namespace {

const Table no_members;

const Table& members_of(const Node& node) {
    const Table* members = std::get_if<Table>(&node.value);
    return members != nullptr ? *members : no_members;
}

}  // namespace

TableReader::TableReader(const Node& table, std::string owner, Mistakes& mistakes, const TableReader* inside)
    : members_(&members_of(table)),
      place_(table.place),
      owner_(std::move(owner)),
      mistakes_(&mistakes),
      inside_(inside) {}

std::optional<Value> TableReader::value(std::string_view word) {
    asked_.push_back(word);
    for (const Member& member : *members_)
        if (member.word == word) return Value{&member.node, word, owner_, mistakes_};
    return std::nullopt;
}

house::Maybe<std::string> TableReader::text(std::string_view word, std::string_view sample) {
    const auto found = value(word);
    return found ? read_text(*found, sample) : std::nullopt;
}

house::Maybe<bool> TableReader::yes_or_no(std::string_view word) {
    const auto found = value(word);
    return found ? read_yes_or_no(*found) : std::nullopt;
}

house::Maybe<int> TableReader::whole(std::string_view word, WholeRange range) {
    const auto found = value(word);
    return found ? read_whole(*found, range) : std::nullopt;
}

std::vector<house::Given<std::string>> TableReader::texts(std::string_view word, std::string_view sample) {
    const auto found = value(word);
    const auto parts = found ? found->list(fmt::format("[{}]", sample)) : std::nullopt;
    std::vector<house::Given<std::string>> result;
    if (!parts) return result;
    for (const Value& part : *parts)
        if (auto text = read_text(part, "\"...\"")) result.push_back(std::move(*text));
    return result;
}

const Node* TableReader::table(std::string_view word, std::string_view sample) {
    const auto found = value(word);
    if (!found) return nullptr;
    if (std::holds_alternative<Table>(found->node->value)) return found->node;
    found->blame_kind("one table", sample);
    return nullptr;
}

std::vector<const Node*> TableReader::tables(std::string_view word, std::string_view heading) {
    const auto found = value(word);
    if (!found) return {};
    if (std::holds_alternative<Table>(found->node->value)) {
        found->blame("needs two brackets", {"there can be several", fmt::format("write {}", heading)});
        return {found->node};  // read all the same: its other mistakes count too
    }
    std::vector<const Node*> result;
    const auto parts = found->list(fmt::format("[{{ ... }}], or a heading {}", heading));
    if (!parts) return result;
    for (const Value& part : *parts) {
        if (std::holds_alternative<Table>(part.node->value)) {
            result.push_back(part.node);
        } else {
            part.blame_kind("a table", fmt::format("{{ ... }}, or a heading {}", heading));
        }
    }
    return result;
}

bool TableReader::knows(std::string_view word) const {
    return std::find(asked_.begin(), asked_.end(), word) != asked_.end();
}

void TableReader::finish() {
    for (const Member& member : *members_)
        if (!knows(member.word)) report_unknown(member);
}

void TableReader::report_unknown(const Member& member) const {
    house::Mistake mistake;
    mistake.text = fmt::format("unknown word '{}' in {}", shown(member.word), owner_);
    mistake.place = member.place;
    const std::string nearest = units::nearest_word(member.word, asked_);
    if (inside_ != nullptr && inside_->knows(member.word)) {
        mistake.under = fmt::format("this belongs to {}", inside_->owner());
        mistake.remedy = fmt::format("move it above line {}, where {} begins", place_.line, owner_);
    } else if (!nearest.empty()) {
        mistake.under = fmt::format("did you mean '{}'?", nearest);
    } else {
        mistake.remedy = fmt::format("the words here are: {}", fmt::join(asked_, ", "));
    }
    mistakes_->push_back(std::move(mistake));
}

std::string owner_by_name(std::string_view kind, const Node& table, std::size_t index) {
    for (const Member& member : members_of(table)) {
        const auto* name = std::get_if<std::string>(&member.node.value);
        if (member.word == "name" && name != nullptr && !name->empty())
            return fmt::format("{} '{}'", kind, shown(*name));
    }
    return fmt::format("{} number {}", kind, index + 1);
}

}  // namespace sheet
