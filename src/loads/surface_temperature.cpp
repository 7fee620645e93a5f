#include "loads/surface_temperature.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"
#include "loads/transmittance.hpp"
#include "psychro/saturation.hpp"
#include "units/unit.hpp"

namespace loads {

double temperature_factor(units::Transmittance u, units::Resistance inside_film) {
    return std::max(0.0, 1 - u * inside_film);
}

units::Temperature inside_surface_temperature(double temperature_factor, units::Temperature inside,
                                              units::Temperature beyond) {
    return beyond + temperature_factor * (inside - beyond);
}

units::Pressure saturation_pressure(units::Temperature temperature) {
    try {
        return units::Pressure(psychro::saturation_pressure_pa(units::unit::in_celsius(temperature)));
    } catch (const psychro::OutOfRange& range) {
        throw house::CannotAnswer(
            {}, std::string("no saturation pressure is known at this temperature: ") + range.what());
    }
}

double sweating_humidity(units::Temperature surface, units::Temperature room) {
    return saturation_pressure(surface) / saturation_pressure(room);
}

std::optional<ColdestSurface> coldest_surface(const house::Room& room, const RoomHeatLoss& loss) {
    std::optional<ColdestSurface> coldest;
    for (std::size_t i = 0; i < loss.surfaces.size(); ++i) {
        const SurfaceLoss& surface = loss.surfaces[i];
        if (surface.to_neighbour || surface.beyond >= loss.inside) continue;
        const units::Resistance film = inside_film(room.surfaces[i]);
        const units::Temperature temperature =
            inside_surface_temperature(temperature_factor(surface.u, film), loss.inside, surface.beyond);
        if (!coldest || temperature < coldest->temperature)
            coldest = ColdestSurface{surface, film, temperature, 1};
    }
    if (coldest) coldest->sweats_above = sweating_humidity(coldest->temperature, loss.inside);
    return coldest;
}

}  // namespace loads
