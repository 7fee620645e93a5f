// How far a damper is closed: a word, or its angle from open.
#include <fmt/format.h>

#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr double shut = 90;  // degrees from open

double degrees(house::DamperSetting setting) {
    switch (setting) {
        case house::DamperSetting::open:
            return 0;
        case house::DamperSetting::half:
            return shut / 2;
        case house::DamperSetting::shut:
            break;
    }
    return shut;
}

house::Maybe<double> read_angle_from_open(const Value& value) {
    const auto turn = read_quantity(value, angle);
    if (!turn) {
        value.mistakes->back().remedy = "write open, half, shut, or its angle from open, as \"30 deg\"";
        return std::nullopt;
    }
    if (turn->value.degrees >= 0 && turn->value.degrees <= shut)
        return house::Given<double>{turn->value.degrees, turn->place};
    value.blame(fmt::format("is {:.4g} deg", turn->value.degrees),
                {"a damper turns from 0 deg, open, to 90 deg, shut", ""});
    return std::nullopt;
}

}  // namespace

house::Maybe<double> read_damper(TableReader& table) {
    const auto value = table.value("damper");
    if (!value) return std::nullopt;
    const std::string* text = value->plain_text();
    if (text == nullptr || text->find_first_of("0123456789") != std::string::npos)
        return read_angle_from_open(*value);
    if (const auto word = read_word<house::DamperSetting>(*value))
        return house::Given<double>{degrees(word->value), word->place};
    value->mistakes->back().remedy += ", or its angle from open: \"30 deg\"";
    return std::nullopt;
}

}  // namespace sheet
