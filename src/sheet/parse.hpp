// TOML text to a tree of nodes, or the one mistake at which it stops being TOML. Never throws on any text.
#pragma once

#include <string_view>
#include <variant>

#include "house/place.hpp"
#include "sheet/node.hpp"

namespace sheet {

std::variant<Node, house::Mistake> parse(std::string_view text);

}  // namespace sheet
