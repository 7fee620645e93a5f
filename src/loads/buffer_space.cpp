#include "loads/buffer_space.hpp"

#include <algorithm>

#include "loads/air.hpp"
#include "loads/below_grade.hpp"
#include "loads/known_transmittances.hpp"

namespace loads {
namespace {

constexpr units::Transmittance crawl_ground{0.30};
constexpr units::Resistance outside_film{0.030};  // loads/transmittance.hpp

bool faces(const house::Surface& surface, house::Space space) {
    const auto* beyond = std::get_if<house::Space>(&surface.beyond);
    return beyond && *beyond == space;
}

// Of the described rooms: what lies flat over or under the space, to judge the rooms not described by.
struct Flat {
    units::Area area;
    units::HeatLossPerKelvin conductance;
};

class Balance {
  public:
    Balance(const house::House& house, const house::BufferSpace& space, KnownTransmittances& known)
        : house_(house), space_(space), known_(known) {
        balance_.space = space.space;
        balance_.heat = space.heat;
    }

    SpaceBalance work_out() {
        for (const house::Room& room : house_.rooms) add_room(room);
        if (house_.other_rooms) add_other_rooms();
        for (const house::Surface& surface : space_.outer)
            add(surface.name, surface.area * known_.of(surface), house_.site.winter_outdoor);
        if (space_.on_the_ground) add_ground(*space_.on_the_ground);
        const Air indoors = air_at(house_.site.winter_indoor, site_pressure(house_.site));
        add("outdoor air", space_.outdoor_air * indoors.density * indoors.specific_heat,
            house_.site.winter_outdoor);
        balance_.temperature =
            balance_temperature(balance_.parts, balance_.heat).value_or(house_.site.winter_outdoor);
        return std::move(balance_);
    }

  private:
    void add(const std::string& name, units::HeatLossPerKelvin conductance, units::Temperature beyond) {
        if (conductance > units::HeatLossPerKelvin()) balance_.parts.push_back({name, conductance, beyond});
    }

    void add_room(const house::Room& room) {
        const auto flat_kind =
            space_.space == house::Space::attic ? house::SurfaceKind::ceiling : house::SurfaceKind::floor;
        units::HeatLossPerKelvin sum;
        for (const house::Surface& surface : room.surfaces) {
            if (!faces(surface, space_.space)) continue;
            const units::HeatLossPerKelvin conductance = surface.area * known_.of(surface);
            sum += conductance;
            if (surface.kind != flat_kind) continue;
            for (Flat* flat : {&all_, room.altered ? nullptr : &unaltered_}) {
                if (!flat) continue;
                flat->area += surface.area;
                flat->conductance += conductance;
            }
        }
        add("the " + room.name, sum, room.winter_indoor);
    }

    void add_other_rooms() {
        const Flat& like = unaltered_.area > units::Area() ? unaltered_ : all_;
        const units::Area rest = space_.floor_area - all_.area;
        if (like.area <= units::Area() || rest <= units::Area()) return;
        add("the rooms not described", (rest / like.area) * like.conductance, house_.site.winter_indoor);
    }

    void add_ground(const house::OnTheGround& on) {
        const bool crawl = space_.space == house::Space::crawl;
        const units::Transmittance floor =
            crawl ? crawl_ground
                  : below_grade_floor(std::max(on.shortest_width, units::Length(0.1)), on.depth,
                                      bare_concrete, usual_soil);
        add("ground under it", on.floor * floor, on.ground);
        if (on.depth <= units::Length()) return;
        const units::Resistance of_wall =
            std::max(1 / known_.of(on.wall) - outside_film, units::Resistance(0.01));
        add(on.wall.name, on.wall.area * below_grade_wall({}, on.depth, of_wall, usual_soil), on.ground);
    }

    const house::House& house_;
    const house::BufferSpace& space_;
    KnownTransmittances& known_;
    Flat all_, unaltered_;
    SpaceBalance balance_;
};

}  // namespace

std::optional<units::Temperature> balance_temperature(const std::vector<BalancePart>& parts,
                                                      units::Power heat) {
    // Counted from the first part's temperature, so that like temperatures give just that temperature.
    units::HeatLossPerKelvin sum;
    units::Power flow = heat;
    for (const BalancePart& part : parts) {
        sum += part.conductance;
        flow += part.conductance * (part.beyond - parts.front().beyond);
    }
    if (sum <= units::HeatLossPerKelvin()) return std::nullopt;
    return parts.front().beyond + flow / sum;
}

SpacesInWinter spaces_in_winter(const house::House& house, KnownTransmittances& known) {
    SpacesInWinter spaces{house.space_winter, {}};
    for (const house::BufferSpace& space : house.buffer_spaces) {
        spaces.balances.push_back(Balance(house, space, known).work_out());
        spaces.temperature[static_cast<std::size_t>(space.space)] = spaces.balances.back().temperature;
    }
    return spaces;
}

SpacesInWinter spaces_in_winter(const house::House& house) {
    KnownTransmittances known(house.empty_bay);
    return spaces_in_winter(house, known);
}

}  // namespace loads
