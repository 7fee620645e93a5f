// The sheet's tree of tables, lists and values, each with its place; no TOML library is seen beyond
// parse.cpp.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "house/place.hpp"

namespace sheet {

struct Node;
struct Member;
struct Date {};  // TOML has dates; a sheet has none
using List = std::vector<Node>;
using Table = std::vector<Member>;  // in the sheet's order

struct Node {
    std::variant<Date, std::string, std::int64_t, double, bool, List, Table> value;
    house::Place place;  // of a table: its heading, or its opening brace
};

struct Member {
    std::string word;
    house::Place place;  // of the word
    Node node;
};

}  // namespace sheet
