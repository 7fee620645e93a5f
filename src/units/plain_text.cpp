#include "units/plain_text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace units {
namespace {

struct Sign {
    std::string_view written;
    std::string_view plain;
};

// Superscripts keep a mark before the digit, else "5²" would read as 52.
constexpr std::array signs{Sign{"′", "'"},     Sign{"’", "'"},    Sign{"‘", "'"},      Sign{"″", "\""},
                           Sign{"”", "\""},    Sign{"“", "\""},   Sign{"²", "^2"},     Sign{"³", "^3"},
                           Sign{"·", "."},     Sign{"⋅", "."},    Sign{"×", "x"},      Sign{"−", "-"},
                           Sign{"–", "-"},     Sign{"⁄", "/"},    Sign{"°", "deg"},    Sign{"º", "deg"},
                           Sign{"℃", "degC"},  Sign{"℉", "degF"}, Sign{"\u00a0", " "}, Sign{"\u2009", " "},
                           Sign{"\u202f", " "}};

constexpr std::array fractions{Sign{"½", "1/2"}, Sign{"¼", "1/4"}, Sign{"¾", "3/4"}, Sign{"⅛", "1/8"},
                               Sign{"⅜", "3/8"}, Sign{"⅝", "5/8"}, Sign{"⅞", "7/8"}};

template <std::size_t N>
std::string_view plain_of(const std::array<Sign, N>& table, std::string_view point) {
    const auto found =
        std::find_if(table.begin(), table.end(), [point](const Sign& sign) { return sign.written == point; });
    return found == table.end() ? std::string_view() : found->plain;
}

unsigned byte_at(std::string_view text, std::size_t at) {
    return at < text.size() ? static_cast<unsigned char>(text[at]) : 0;
}

// The bytes after the first that the first byte announces; none for ASCII and for a byte that starts nothing.
std::size_t announced(unsigned lead) {
    if (lead >= 0xC2 && lead <= 0xDF) return 1;
    if (lead >= 0xE0 && lead <= 0xEF) return 2;
    return lead >= 0xF0 && lead <= 0xF4 ? 3 : 0;
}

// Overlong forms, surrogates and what lies beyond the last code point show in the second byte.
bool second_byte_fits(unsigned lead, unsigned second) {
    if (lead == 0xE0) return second >= 0xA0;
    if (lead == 0xED) return second < 0xA0;
    if (lead == 0xF0) return second >= 0x90;
    return lead != 0xF4 || second < 0x90;
}

// The bytes of the code point the text starts with; a stray byte stands for itself.
std::size_t point_size(std::string_view text) {
    const std::size_t more = announced(byte_at(text, 0));
    if (more == 0 || !second_byte_fits(byte_at(text, 0), byte_at(text, 1))) return 1;
    for (std::size_t at = 1; at <= more; ++at) {
        if ((byte_at(text, at) & 0xC0) != 0x80) return 1;
    }
    return more + 1;
}

bool is_control(char c) { return (c >= 0 && c < ' ') || c == '\x7f'; }
bool is_stray(std::string_view point) { return point.size() == 1 && (point[0] < 0 || is_control(point[0])); }

}  // namespace

PlainText::PlainText(std::string_view written) {
    points_.reserve(written.size());
    plain_.reserve(written.size());
    point_of_.reserve(written.size());
    while (!written.empty()) {
        const std::string_view point = written.substr(0, point_size(written));
        add(point);
        written.remove_prefix(point.size());
    }
}

Excerpt PlainText::all() const { return {*this, 0, plain_.size()}; }

void PlainText::add(std::string_view point) {
    points_.push_back(point);
    if (point.size() == 1 && point[0] >= ' ' && point[0] != '\x7f') {  // nearly every character of a sheet
        plain_ += point[0];
        point_of_.push_back(points_.size() - 1);
        return;
    }
    const std::string_view fraction = plain_of(fractions, point);
    const std::string_view sign = plain_of(signs, point);
    if (!fraction.empty()) {
        add_fraction(fraction);
    } else if (!sign.empty()) {
        plain_ += sign;
    } else if (point == "\t" || point == "\n" || point == "\r") {
        plain_ += ' ';
    } else {
        plain_ += '?';
    }
    point_of_.resize(plain_.size(), points_.size() - 1);
}

// Kept apart from digits beside it: "6½" is six and a half, "½5" is nothing.
void PlainText::add_fraction(std::string_view fraction) {
    if (!plain_.empty() && is_digit(plain_.back())) plain_ += ' ';
    plain_ += fraction;
    plain_ += ' ';
}

Excerpt Excerpt::trimmed() const {
    const std::string_view text = view();
    const std::size_t begin = std::min(text.find_first_not_of(' '), text.size());
    const std::size_t last = text.find_last_not_of(' ');
    return {*text_, begin_ + begin, last == std::string_view::npos ? end_ : begin_ + last + 1};
}

std::size_t Excerpt::first_point() const {
    return begin_ < text_->point_of_.size() ? text_->point_of_[begin_] : text_->points_.size();
}

std::size_t Excerpt::point_count() const {
    return begin_ == end_ ? 0 : text_->point_of_[end_ - 1] + 1 - first_point();
}

std::string Excerpt::quoted() const {
    std::string text = "\"";
    for (std::size_t at = first_point(); at < first_point() + point_count(); ++at) {
        const std::string_view point = text_->points_[at];
        text += is_stray(point) ? "?" : point;
    }
    return text + "\"";
}

ReadProblem Excerpt::problem(std::string text, std::string_view remedy) const {
    return {std::move(text), std::string(remedy), static_cast<int>(first_point()),
            static_cast<int>(point_count())};
}

}  // namespace units
