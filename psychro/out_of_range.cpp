#include "psychro/out_of_range.hpp"

#include <locale>
#include <sstream>
#include <string>

namespace psychro {
namespace {

std::string message(const char* quantity, double value, Range allowed) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text << quantity << ' ' << value << " is outside " << allowed.low << " to " << allowed.high;
    return text.str();
}

}  // namespace

OutOfRange::OutOfRange(const char* quantity, double value, Range allowed)
    : std::domain_error(message(quantity, value, allowed)),
      quantity_(quantity),
      value_(value),
      allowed_(allowed) {}

void require_in_range(const char* quantity, double value, Range allowed) {
    // Written so that NaN, which compares false with everything, is refused.
    const bool inside = value >= allowed.low && value <= allowed.high;
    if (!inside) {
        throw OutOfRange(quantity, value, allowed);
    }
}

}  // namespace psychro
