// U-factors of one house, each make of surface worked out once: looking its layers up costs more than all
// else a heat loss takes, and a house is asked for its heat loss many times over when assumptions are
// weighed.
#pragma once

#include <vector>

#include "house/house.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/quantity.hpp"

namespace loads {

// Keeps addresses of the surfaces it has seen: not to outlive their house.
class KnownTransmittances {
  public:
    explicit KnownTransmittances(units::Resistance empty_bay) : empty_bay_(empty_bay) {}
    units::Transmittance of(const house::Surface& surface);

  private:
    struct Known {
        const house::Layers* layers;
        units::Resistance films;
        units::Transmittance u;
    };
    units::Resistance empty_bay_;
    std::vector<Known> known_;
};

// What the rooms of a house share on the design night.
struct Night {
    const house::House& house;
    const Infiltration& leakage;
    const SpacesInWinter& spaces;
    KnownTransmittances& known;
};
RoomHeatLoss room_heat_loss(const Night& night, house::RoomId room);
units::HeatLossPerKelvin to_warm_the_air(const house::House& house, units::Airflow leakage);

}  // namespace loads
