// Outsides of drain and vent pipes by their trade names, over the hub, where they are widest.
//
//     PVC, ABS                barrel + two walls of the socket; within 0.1 in
//     no-hub cast iron        barrel + 0.06 in, the bead at its ends; the clamp over a joint is wider yet
//     service hub cast iron   inside of the hub + two of its walls
//
// 1-1/2 to 4 in. Source: barrels ASTM D2665 and makers' tables (read; 4 in PVC from memory), hubs derived
// from barrel and least walls. Old pipe differs: what a tape says goes before.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "units/quantity.hpp"

namespace house {

struct PipeSize {
    std::string_view name;  // "3 in PVC"
    units::Length outside;
    std::string_view source;
};

std::span<const PipeSize> pipe_sizes();
const PipeSize* pipe_size_named(std::string_view name);  // nullptr where none is so called
std::vector<std::string_view> pipe_size_names();

}  // namespace house
