// Yes, probably, probably not or no: by what something gives less what it needs, and how far that may be off.
//
// Low above zero: yes. Middle at or above zero: probably. Middle below, high above: probably not. High below
// zero: no.
#pragma once

namespace questions {

enum class Verdict { yes, probably, probably_not, no };

// A figure with its honest range.
struct Range {
    double low = 0, value = 0, high = 0;
};

constexpr Verdict verdict(Range margin) {
    if (margin.low > 0) return Verdict::yes;
    if (margin.value >= 0) return Verdict::probably;
    return margin.high > 0 ? Verdict::probably_not : Verdict::no;
}

constexpr bool holds(Verdict v) { return v == Verdict::yes || v == Verdict::probably; }

}  // namespace questions
