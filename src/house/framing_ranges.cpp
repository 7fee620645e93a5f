#include "house/framing_ranges.hpp"

#include "units/write.hpp"

namespace house {

bool within(Ledger& ledger, Place place, units::Length length, const LengthRange& range,
            const std::string& what) {
    if (range.holds(length)) return true;
    const auto words = [](units::Length l) { return units::write(l, units::System::us).text(); };
    const bool more = length > range.most;
    ledger.blame(place,
                 what + " is " + words(length) + ", " + (more ? "more" : "less") + " than any: " +
                     words(more ? range.most : range.least) + " at " + (more ? "most" : "least"),
                 "check the unit: in for inches, ft for feet, mm");
    return false;
}

}  // namespace house
