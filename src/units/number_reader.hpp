// Reads the number a text starts with: 3.8, 1/2, 6-1/2, 6 1/2, 64,000, 1.2e3, each with at most one sign.
#pragma once

#include <cstddef>
#include <string_view>

#include "units/plain_text.hpp"
#include "units/read.hpp"

namespace units {

struct Number {
    double value = 0;
    std::size_t size = 0;  // characters it takes up
    bool has_sign = false;
    bool is_whole = false;  // written without point, exponent or fraction
};

// The text starts at the number; what follows the number is left to the caller.
Reading<Number> read_number(const Excerpt& text, std::string_view remedy);

}  // namespace units
