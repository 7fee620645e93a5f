// Compares a value of the survey read from the full sheet, with its place in it.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <string_view>
#include <utility>

#include "full_sheet.hpp"
#include "printed.hpp"
#include "sheet/read.hpp"
#include "units/unit.hpp"

inline constexpr double tolerance = 1e-9;

inline const house::Survey& survey() {
    static const house::Survey read = sheet::read(full_sheet).survey;
    return read;
}

// The piece may run on over the line's end to be found once; its place is that of its first line.
inline house::Place at(std::string_view piece) {
    const house::Place whole = place_of(full_sheet, piece);
    const auto length = static_cast<int>(piece.substr(0, piece.find('\n')).size());
    return {whole.line, whole.column, whole.column + length};
}

// A value with its place, where the piece is the value as it stands in the sheet.
template <class T>
void expect_given(const house::Maybe<T>& given, const T& value, std::string_view piece) {
    ASSERT_TRUE(given) << piece;
    EXPECT_EQ(given->value, value) << piece;
    EXPECT_EQ(given->place, at(piece)) << piece;
    EXPECT_GT(given->place.line, 0) << piece << " does not stand in the sheet once";
}
inline void expect_given(const house::Maybe<std::string>& given, std::string_view value) {
    expect_given(given, std::string(value), '"' + std::string(value) + '"');
}
template <class Q>
void expect_quantity(const house::Maybe<Q>& given, Q value, std::string_view piece) {
    ASSERT_TRUE(given) << piece;
    EXPECT_NEAR(given->value.si(), value.si(), tolerance * std::abs(value.si())) << piece;
    EXPECT_EQ(given->place, at(piece)) << piece;
    EXPECT_GT(given->place.line, 0) << piece << " does not stand in the sheet once";
}
template <class Q>
void expect_two(const house::Maybe<std::pair<Q, Q>>& given, std::pair<Q, Q> two, std::string_view piece) {
    ASSERT_TRUE(given) << piece;
    EXPECT_NEAR(given->value.first.si(), two.first.si(), tolerance) << piece;
    EXPECT_NEAR(given->value.second.si(), two.second.si(), tolerance) << piece;
    EXPECT_EQ(given->place, at(piece)) << piece;
    EXPECT_GT(given->place.line, 0) << piece << " does not stand in the sheet once";
}
inline std::pair<units::Length, units::Length> two(units::Length a, units::Length b) { return {a, b}; }
