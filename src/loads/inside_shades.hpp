// What an inside shade leaves of the sun's heat, by its plain name and the glass it hangs behind.
//
//     share left = 1 + closed share x (share left when all closed - 1)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29 and table 14. Changed: triple glass counts as
// double with the same coating, glass of unknown make as clear double. Accuracy: +-0.1 (estimate): shades of
// one name differ, and so does how they are used.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "house/place.hpp"
#include "loads/method.hpp"

namespace loads {

inline constexpr Method inside_shade_method{"share of the sun's heat an inside shade leaves",
                                            "1 + closed share x (share left when closed - 1)",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29, table 14"};

struct InsideShade {
    std::string_view name;                      // "roller, white"
    double single, double_clear, double_low_e;  // share left when all closed
};

std::span<const InsideShade> inside_shades();
std::variant<InsideShade, house::Mistake> look_up_shade(const house::CatalogueName& name);
// The column of a glass by its name (loads/materials.hpp); of clear double glass where none is so called.
double left_when_closed(const InsideShade& shade, std::string_view glass);
double left_by_shade(double when_closed, double closed_share);

}  // namespace loads
