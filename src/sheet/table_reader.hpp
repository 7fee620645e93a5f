// Walks one table of the sheet: asks for its words by name, remembers which were asked for, and reports the
// rest.
//
//     TableReader duct(node, "duct 'main trunk'", mistakes);
//     survey.length = duct.quantity("length", distance);
//     duct.finish();   // every word nobody asked for is an unknown word
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "house/place.hpp"
#include "sheet/node.hpp"
#include "sheet/quantities.hpp"
#include "sheet/value.hpp"
#include "sheet/words.hpp"

namespace sheet {

class TableReader {
  public:
    // inside: the table this one stands in, read before it, so that a word written too low can be told from a
    // slip.
    TableReader(const Node& table, std::string owner, Mistakes& mistakes,
                const TableReader* inside = nullptr);
    TableReader(const TableReader&) = delete;
    TableReader& operator=(const TableReader&) = delete;

    std::optional<Value> value(std::string_view word);
    house::Maybe<std::string> text(std::string_view word, std::string_view sample = "\"...\"");
    house::Maybe<bool> yes_or_no(std::string_view word);
    house::Maybe<int> whole(std::string_view word, WholeRange range);
    std::vector<house::Given<std::string>> texts(std::string_view word, std::string_view sample);
    template <class Q>
    house::Maybe<Q> quantity(std::string_view word, const Kind<Q>& kind);
    template <class Q>
    house::Maybe<std::pair<Q, Q>> two(std::string_view word, const Kind<Q>& kind);
    template <class Q>
    house::Maybe<std::pair<Q, Q>> range(std::string_view word, const Kind<Q>& kind);
    template <class E>
    house::Maybe<E> one_of(std::string_view word);

    // A table that there is once, [word] or { }; and the tables of which there are several, by their heading
    // [[word]].
    const Node* table(std::string_view word, std::string_view sample);
    std::vector<const Node*> tables(std::string_view word, std::string_view heading);
    const Table& members() const { return *members_; }

    void finish();

    const std::string& owner() const { return owner_; }
    Mistakes& mistakes() const { return *mistakes_; }
    house::Place place() const { return place_; }

  private:
    bool knows(std::string_view word) const;
    void report_unknown(const Member& member) const;

    const Table* members_;
    house::Place place_;
    std::string owner_;
    Mistakes* mistakes_;
    const TableReader* inside_;
    std::vector<std::string_view> asked_;
};

// "duct 'main trunk'", or by its number where it has no name: "duct number 3".
std::string owner_by_name(std::string_view kind, const Node& table, std::size_t index);

template <class Q>
house::Maybe<Q> TableReader::quantity(std::string_view word, const Kind<Q>& kind) {
    const auto found = value(word);
    return found ? read_quantity(*found, kind) : std::nullopt;
}
template <class Q>
house::Maybe<std::pair<Q, Q>> TableReader::two(std::string_view word, const Kind<Q>& kind) {
    const auto found = value(word);
    return found ? read_two(*found, kind) : std::nullopt;
}
template <class Q>
house::Maybe<std::pair<Q, Q>> TableReader::range(std::string_view word, const Kind<Q>& kind) {
    const auto found = value(word);
    return found ? read_range(*found, kind) : std::nullopt;
}
template <class E>
house::Maybe<E> TableReader::one_of(std::string_view word) {
    const auto found = value(word);
    return found ? read_word<E>(*found) : std::nullopt;
}

}  // namespace sheet
