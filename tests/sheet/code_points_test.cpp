// UTF-8 decoding, lifting out of the parser's way and back, and what is shown in messages.
#include "sheet/code_points.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

namespace {

using namespace sheet;

std::string one(char32_t c) {
    std::string text;
    append_code_point(text, c);
    return text;
}

TEST(CodePoints, DecodesEachLength) {
    const std::string text = "a\u00E9\u20AC\U0001F600";
    const char32_t values[] = {U'a', U'\u00E9', U'\u20AC', U'\U0001F600'};
    std::size_t at = 0, expected_bytes = 1;
    for (const char32_t value : values) {
        const CodePoint c = code_point_at(text, at);
        EXPECT_EQ(c.value, value);
        EXPECT_EQ(c.bytes, expected_bytes++);
        at += c.bytes;
    }
    EXPECT_EQ(at, text.size());
    EXPECT_EQ(code_point_at(text, at).bytes, 0u);
    EXPECT_EQ(count_code_points(text), 4);
}

TEST(CodePoints, RefusesWhatIsNotUtf8) {
    const std::vector<std::string> broken = {
        "\x80", "\xC3",  "\xC0\x80",        "\xE0\x80\x80", "\xED\xA0\x80", "\xE2\x82", "\xF4\x90\x80\x80",
        "\xFF", "\xC3(", "\xF0\x8F\xBF\xBF"};
    for (const std::string& text : broken) EXPECT_EQ(code_point_at(text, 0).bytes, 0u) << shown(text);
}

TEST(CodePoints, LiftsOnlyWhatTheParserCannotTake) {
    EXPECT_EQ(lift_code_points("12 ft"), "12 ft");
    EXPECT_EQ(lift_code_points("\u00B0"), one(0x1000B0));
    EXPECT_EQ(lift_code_points("\uFEFF"), one(0x10FEFF));
    EXPECT_EQ(lift_code_points("\U0001F600"), "\U0001F600");
}

TEST(CodePoints, LoweringNeverMakesASurrogate) {
    const std::string from_an_escape = one(0x10D800);
    EXPECT_EQ(lower_code_points(from_an_escape), from_an_escape);
    EXPECT_EQ(lower_code_points(one(0x10E000)), one(0xE000));
}

TEST(CodePoints, LeavesBrokenBytesAlone) {
    EXPECT_EQ(lift_code_points("a\xFF"), "a\xFF");
    EXPECT_EQ(lower_code_points("a\xFF"), "a\xFF");
}

TEST(CodePoints, ControlCharacters) {
    for (const char32_t c : {U'\x00', U'\t', U'\n', U'\x1B', U'\x1F', U'\x7F', U'\x80', U'\x9F'})
        EXPECT_TRUE(is_control(c)) << static_cast<unsigned>(c);
    for (const char32_t c : {U' ', U'~', U'\u00A0', U'\u00E9'})
        EXPECT_FALSE(is_control(c)) << static_cast<unsigned>(c);
}

TEST(CodePoints, ShownIsShortAndPrintable) {
    EXPECT_EQ(shown("bath"), "bath");
    EXPECT_EQ(shown("a\nb\x1B[31m\xFF"), "a?b?[31m?");
    EXPECT_EQ(shown(std::string(40, 'x')), std::string(40, 'x'));
    EXPECT_EQ(shown(std::string(41, 'x')), std::string(40, 'x') + "...");
}

// Any text of characters below U+100000, surrogates aside, which are none.
std::string some_text() {
    const auto points = *rc::gen::container<std::vector<int>>(rc::gen::oneOf(
        rc::gen::inRange(0, 0x80), rc::gen::inRange(0x80, 0xD800), rc::gen::inRange(0xE000, 0x100000)));
    std::string text;
    for (const int point : points) append_code_point(text, static_cast<char32_t>(point));
    return text;
}

RC_GTEST_PROP(CodePoints, LoweringUndoesLifting, ()) {
    const std::string text = some_text();
    RC_ASSERT(lower_code_points(lift_code_points(text)) == text);
}

RC_GTEST_PROP(CodePoints, LiftingKeepsColumnsAndClosesTheHole, ()) {
    const std::string text = some_text();
    const std::string lifted = lift_code_points(text);
    RC_ASSERT(count_code_points(lifted) == count_code_points(text));
    for (std::size_t at = 0; at < lifted.size();) {
        const CodePoint c = code_point_at(lifted, at);
        RC_ASSERT(c.bytes > 0u);
        RC_ASSERT(c.value < 0x80 || c.value > 0xFEFF);
        at += c.bytes;
    }
}

RC_GTEST_PROP(CodePoints, DecodingGivesWhatWasAppended, ()) {
    const auto value = static_cast<char32_t>(
        *rc::gen::oneOf(rc::gen::inRange(0, 0xD800), rc::gen::inRange(0xE000, 0x110000)));
    const CodePoint c = code_point_at(one(value), 0);
    RC_ASSERT(c.value == value);
    RC_ASSERT(c.bytes == one(value).size());
}

}  // namespace
