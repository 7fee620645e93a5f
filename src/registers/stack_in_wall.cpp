#include "registers/stack_in_wall.hpp"

#include <algorithm>

#include "loads/materials.hpp"
#include "loads/named_rows.hpp"
#include "loads/surface_temperature.hpp"

namespace registers {
namespace {

units::Resistance board(units::Length thick) {
    const loads::Layer inch = loads::found_or_throw(loads::look_up_layer({"XPS board, 1 in", {}}));
    return thick / inch.thickness * inch.resistance;
}

}  // namespace

bool holds_a_stack(const loads::OutsideTheBay& wall) { return wall.bay >= stack_depth; }

StackInWall stack_in_wall(const StackSetting& setting) {
    StackInWall stack;
    stack.wall_assumed = setting.wall.assumed;
    stack.left = std::max(units::Length(), setting.wall.bay - stack_depth - stack_seam);
    stack.behind = setting.wall.layers + board(stack.left);
    const units::Resistance to_outdoors = stack_outside_film + stack.behind;
    stack.at_rest = setting.outdoors +
                    to_outdoors / (to_outdoors + stack_covered_film) * (setting.room - setting.outdoors);
    stack.sweats_above = std::min(1.0, loads::sweating_humidity(stack.at_rest, setting.room));
    stack.loses = std::max(
        units::Power(), setting.face * (setting.air - setting.outdoors) / (to_outdoors + stack_inner_film));
    return stack;
}

}  // namespace registers
