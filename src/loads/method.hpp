// The name, formula and source of a method, kept beside the code that computes it so that an answer can show
// its work.
#pragma once

#include <string_view>

namespace loads {

struct Method {
    std::string_view name;
    std::string_view formula;  // in words and plain signs: "area x U x difference"
    std::string_view source;
};

}  // namespace loads
