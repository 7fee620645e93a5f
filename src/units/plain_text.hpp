// A text folded to plain ASCII, so that the readers meet one spelling of each sign: "6½″" becomes "6 1/2 \"",
// "m²" becomes "m^2", "−3 °C" becomes "-3 degC". Every folded character remembers the code point it came
// from, so that a problem points at, and quotes, what was written.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "units/read.hpp"

namespace units {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

class Excerpt;

// Views the text it was made from, which has to outlive it.
class PlainText {
  public:
    explicit PlainText(std::string_view written);
    Excerpt all() const;

  private:
    friend class Excerpt;
    void add(std::string_view point);
    void add_fraction(std::string_view fraction);

    std::vector<std::string_view> points_;
    std::string plain_;
    std::vector<std::size_t> point_of_;  // for each character of plain_
};

// A part of a PlainText, which has to outlive it.
class Excerpt {
  public:
    Excerpt(const PlainText& text, std::size_t begin, std::size_t end)
        : text_(&text), begin_(begin), end_(end) {}

    std::string_view view() const { return std::string_view(text_->plain_).substr(begin_, end_ - begin_); }
    Excerpt first(std::size_t count) const { return {*text_, begin_, begin_ + count}; }
    Excerpt from(std::size_t count) const { return {*text_, begin_ + count, end_}; }
    Excerpt trimmed() const;

    std::string quoted() const;  // as it was written, in quotation marks
    ReadProblem problem(std::string text, std::string_view remedy) const;

  private:
    std::size_t first_point() const;
    std::size_t point_count() const;

    const PlainText* text_;
    std::size_t begin_;
    std::size_t end_;
};

}  // namespace units
