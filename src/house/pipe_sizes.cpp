#include "house/pipe_sizes.hpp"

#include <algorithm>

#include "units/unit.hpp"

namespace house {
namespace {

using units::unit::inch;

constexpr std::string_view plastic = "ASTM D2665 barrel (read) and least socket walls (memory), derived";
constexpr std::string_view plastic_4 = "ASTM D2665 barrel (memory) and least socket walls (memory), derived";
constexpr std::string_view no_hub = "makers' tables of no-hub pipe: barrel and bead (read)";
constexpr std::string_view service =
    "makers' tables of service pipe: inside and walls of the hub (read), derived";

constexpr PipeSize rows[] = {
    {"1-1/2 in PVC", 2.21 * inch, plastic},
    {"2 in PVC", 2.69 * inch, plastic},
    {"3 in PVC", 3.94 * inch, plastic},
    {"4 in PVC", 4.97 * inch, plastic_4},
    {"1-1/2 in ABS", 2.21 * inch, plastic},
    {"2 in ABS", 2.69 * inch, plastic},
    {"3 in ABS", 3.94 * inch, plastic},
    {"4 in ABS", 4.97 * inch, plastic_4},
    {"1-1/2 in no-hub cast iron", 1.96 * inch, no_hub},
    {"2 in no-hub cast iron", 2.41 * inch, no_hub},
    {"3 in no-hub cast iron", 3.41 * inch, no_hub},
    {"4 in no-hub cast iron", 4.44 * inch, no_hub},
    {"2 in service hub cast iron", 3.62 * inch, service},
    {"3 in service hub cast iron", 4.68 * inch, service},
    {"4 in service hub cast iron", 5.68 * inch, service},
};

}  // namespace

std::span<const PipeSize> pipe_sizes() { return rows; }

const PipeSize* pipe_size_named(std::string_view name) {
    const auto* const found =
        std::find_if(std::begin(rows), std::end(rows), [&](const PipeSize& row) { return row.name == name; });
    return found == std::end(rows) ? nullptr : found;
}

std::vector<std::string_view> pipe_size_names() {
    std::vector<std::string_view> names;
    for (const PipeSize& row : rows) names.push_back(row.name);
    return names;
}

}  // namespace house
