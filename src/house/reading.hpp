// What was measured in the house as found, to be shown beside what is predicted.
#pragma once

#include <variant>

#include "house/ids.hpp"
#include "house/place.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

// A bag on a frame, held empty over a register.
struct BagFilled {
    units::Volume bag;
    units::Duration time;
    units::Airflow airflow;  // house/bag.hpp
};

struct WholeHouse {};  // of a temperature rise: that of the heater
struct Plenum {
    DuctSide side = DuctSide::supply;
};

struct Reading {
    ReadingKind what = ReadingKind::airflow;
    std::variant<WholeHouse, Plenum, OutletId, RoomId> at;
    // A static pressure is that against the room: below zero in the return plenum.
    std::variant<units::Airflow, BagFilled, units::Pressure, units::TemperatureDifference, units::Temperature>
        value;
    Place place;
};

}  // namespace house
