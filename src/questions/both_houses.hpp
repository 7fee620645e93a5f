// The house as found and as planned, with one machine in both: what a question about the whole system starts
// from.
//
// The machine (blower, leaks) is what the house as found shows; where nothing is blown into that house, what
// the planned one shows. Throws house::CannotAnswer where the system is split in zones, which no answer
// covers.
#pragma once

#include <vector>

#include "house/build.hpp"
#include "loads/room_heat_loss.hpp"
#include "network/calibrate.hpp"
#include "network/design_night.hpp"
#include "network/operating_point.hpp"
#include "units/unit.hpp"

namespace questions {

// What a new duct without a shape is taken for until it is sized.
inline constexpr house::Round first_try{6 * units::unit::inch};

struct HouseAtWork {
    house::House house;
    loads::HouseHeatLoss loss;
    network::Machine machine;
};

struct BothHouses {
    HouseAtWork found, planned;
    network::AirflowKnown known_by = network::AirflowKnown::assumed_rise;
    bool found_is_supplied = true;
    std::vector<house::Assumption> assumptions;  // of both, each once, in the defaults' order
};

// `size`: of new ducts without a shape, where the planned house alone tells of its machine. The survey must
// be free of mistakes.
BothHouses both_houses(const house::Survey& survey, const house::Defaults& defaults,
                       const house::Shape& size);

struct AtWork {
    network::OperatingPoint point;
    network::DesignNight night;
};
AtWork at_work(const HouseAtWork& house, const std::optional<house::Shape>& size,
               network::Fans fans = network::Fans::off);

}  // namespace questions
