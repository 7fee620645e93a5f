#include "sheet/code_points.hpp"

namespace sheet {
namespace {

constexpr char32_t lift = 0x100000;
constexpr char32_t first_lifted = 0x80, last_lifted = 0xFEFF;
constexpr std::size_t longest_shown = 40;

bool is_surrogate(char32_t value) { return value >= 0xD800 && value <= 0xDFFF; }

std::size_t bytes_announced(unsigned char first) {
    if (first < 0x80) return 1;
    if (first >= 0xC2 && first <= 0xDF) return 2;
    if (first >= 0xE0 && first <= 0xEF) return 3;
    if (first >= 0xF0 && first <= 0xF4) return 4;
    return 0;
}

// Shorter spellings exist for these: not UTF-8.
bool is_overlong(char32_t value, std::size_t bytes) {
    return (bytes == 3 && value < 0x800) || (bytes == 4 && value < 0x10000);
}

bool is_ascii(char byte) { return static_cast<unsigned char>(byte) < 0x80; }

// Every code point beyond ASCII changed; ASCII, nearly all of a sheet, is copied in runs.
template <class Change>
std::string each_code_point(std::string_view text, Change change) {
    std::string changed;
    changed.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t run = at;
        while (at < text.size() && is_ascii(text[at])) ++at;
        changed.append(text, run, at - run);
        if (at == text.size()) break;
        const CodePoint c = code_point_at(text, at);
        if (c.bytes == 0) {
            changed += text[at++];  // left as it is: whoever parses it will refuse it
        } else {
            append_code_point(changed, change(c.value));
            at += c.bytes;
        }
    }
    return changed;
}

}  // namespace

CodePoint code_point_at(std::string_view text, std::size_t at) {
    if (at >= text.size()) return {};
    const auto first = static_cast<unsigned char>(text[at]);
    const std::size_t bytes = bytes_announced(first);
    if (bytes <= 1) return {first, bytes};
    if (at + bytes > text.size()) return {};
    char32_t value = first & (0x7Fu >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        const auto next = static_cast<unsigned char>(text[at + i]);
        if ((next & 0xC0u) != 0x80u) return {};
        value = (value << 6) | (next & 0x3Fu);
    }
    if (is_overlong(value, bytes) || is_surrogate(value) || value > 0x10FFFF) return {};
    return {value, bytes};
}

void append_code_point(std::string& text, char32_t value) {
    if (value < 0x80) {
        text += static_cast<char>(value);
        return;
    }
    const int following = value < 0x800 ? 1 : value < 0x10000 ? 2 : 3;
    const unsigned mark = following == 1 ? 0xC0u : following == 2 ? 0xE0u : 0xF0u;
    text += static_cast<char>(mark | (value >> (6 * following)));
    for (int i = following - 1; i >= 0; --i) text += static_cast<char>(0x80u | ((value >> (6 * i)) & 0x3Fu));
}

int count_code_points(std::string_view text) {
    int count = 0;
    for (const char byte : text)
        if ((static_cast<unsigned char>(byte) & 0xC0u) != 0x80u) ++count;
    return count;
}

bool is_control(char32_t value) { return value < 0x20 || (value >= 0x7F && value <= 0x9F); }

std::string lift_code_points(std::string_view text) {
    return each_code_point(text,
                           [](char32_t c) { return c >= first_lifted && c <= last_lifted ? c + lift : c; });
}

std::string lower_code_points(std::string_view text) {
    return each_code_point(text, [](char32_t c) {
        const bool was_lifted = c >= first_lifted + lift && c <= last_lifted + lift;
        // An escape may name a character that no lifting made; lowered, a few of those would be no characters
        // at all.
        return was_lifted && !is_surrogate(c - lift) ? c - lift : c;
    });
}

std::string shown(std::string_view text) {
    std::string result;
    std::size_t at = 0;
    for (std::size_t count = 0; at < text.size() && count < longest_shown; ++count) {
        const CodePoint c = code_point_at(text, at);
        append_code_point(result, c.bytes == 0 || is_control(c.value) ? U'?' : c.value);
        at += c.bytes == 0 ? 1 : c.bytes;
    }
    return at < text.size() ? result + "..." : result;
}

}  // namespace sheet
