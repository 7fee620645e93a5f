// The one error of the folder: a quantity outside the range its equation is good for.
//
// Every public function checks its arguments and throws psychro::OutOfRange rather than return a number
// that the source of the equation does not support. NaN is outside every range.
#pragma once

#include <stdexcept>

namespace psychro {

struct Range {
    double low;
    double high;
};

class OutOfRange : public std::domain_error {
  public:
    // `quantity` must be a string literal: the exception keeps the pointer, so that copying cannot throw.
    OutOfRange(const char* quantity, double value, Range allowed);

    const char* quantity() const noexcept { return quantity_; }
    double value() const noexcept { return value_; }
    double low() const noexcept { return allowed_.low; }
    double high() const noexcept { return allowed_.high; }

  private:
    const char* quantity_;
    double value_;
    Range allowed_;
};

// Both ends are inside. Throws OutOfRange.
void require_in_range(const char* quantity, double value, Range allowed);

}  // namespace psychro
