#include "loads/inside_shades.hpp"

#include "loads/named_rows.hpp"

namespace loads {
namespace {

constexpr InsideShade rows[] = {
    {"open-weave drape, light", 0.64, 0.72, 0.79},
    {"closed-weave drape, dark", 0.71, 0.81, 0.88},
    {"closed-weave drape, light", 0.45, 0.57, 0.68},
    {"roller, dark", 0.64, 0.76, 0.85},
    {"roller, white", 0.34, 0.48, 0.60},
    {"roller, translucent", 0.44, 0.55, 0.66},
    {"blind, medium", 0.74, 0.82, 0.88},
    {"blind, white", 0.66, 0.74, 0.82},
};

}  // namespace

std::span<const InsideShade> inside_shades() { return rows; }

std::variant<InsideShade, house::Mistake> look_up_shade(const house::CatalogueName& name) {
    return row_named(name, inside_shades(), "shade", "shades");
}

double left_when_closed(const InsideShade& shade, std::string_view glass) {
    if (glass == "single") return shade.single;
    if (glass == "double, low-e" || glass == "triple, low-e") return shade.double_low_e;
    return shade.double_clear;
}

double left_by_shade(double when_closed, double closed_share) { return 1 + closed_share * (when_closed - 1); }

}  // namespace loads
