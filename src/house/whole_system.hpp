// What a question about all ducts at once asks of the house beside the ducts themselves.
//
// Leakage by class: airflow = class x pressure^0.65, cfm per 100 ft2 of duct wall at 1 in.wc. Classes of
// unsealed ducts and of the sealing grades: a duct tester's manual that quotes the table of 1985 (read);
// which seams each grade seals, and unsealed round pipe (taken as flexible duct): memory. Good to a factor
// of two. A test of both sides together is carried to other pressures by its own exponent, 0.6 (memory).
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "house/ids.hpp"
#include "house/place.hpp"
#include "house/shape.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

inline constexpr double leakage_test_exponent = 0.6;

// cfm per 100 ft2 at 1 in.wc.
constexpr double leakage_class(DuctSealing sealing, bool round) {
    switch (sealing) {
        case DuctSealing::unsealed:
            return round ? 30 : 48;
        case DuctSealing::joints:
            return round ? 12 : 24;
        case DuctSealing::joints_and_seams:
            return round ? 6 : 12;
        case DuctSealing::all:
            break;
    }
    return round ? 3 : 6;
}

struct LeakageShares {  // of the blower's airflow
    double supply = 0, return_side = 0;
};
struct DuctTest {  // supply and return together, blower off
    units::Airflow flow;
    units::Pressure at;
};
using DuctLeakage = std::variant<DuctSealing, LeakageShares, DuctTest>;

// How the air gets out of a room once its doors are closed.
struct WayOut {
    units::Area undercut;                           // under all its inside doors
    units::Area transfer;                           // face of an opening or a grille; 0: there is none
    std::optional<units::Area> transfer_free_area;  // of that face; empty: not known
    bool shut = false;                              // every inside door is shut at night, as a rule
    Place place;
};

struct WholeSystem {
    DuctLeakage leakage;
    std::vector<std::optional<WayOut>> ways_out;  // by RoomId; empty: no supply outlet, so none is asked for
    double blower_fall = 0;  // 1/Pa, share of its airflow; of a falling blower without a table
    units::Pressure constant_airflow_limit;  // of a motor that holds its airflow; 0: another kind
};

// --- what needs nothing assumed, and is there for every question

struct ExhaustFan {
    RoomId room;
    units::Airflow flow;  // 0: not known, which only one that runs at times may be
    FanRuns runs = FanRuns::at_times;
};

// Of a system split in zones.
struct ZoneDevice {
    DeviceKind kind = DeviceKind::zone_damper;
    std::string name;
    Place place;
};

}  // namespace house
