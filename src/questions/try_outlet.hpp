// What a proposed outlet gets, and what it does to every room: the one way to it.
//
// The planned house is changed as proposed (another size, tap, damper, a shut door), its whole system solved
// and its design night found. `branch` varies the size, `trunk` the tap.
#pragma once

#include <optional>
#include <vector>

#include "questions/both_houses.hpp"

namespace questions {

// Where a run leaves: a duct so far along, or the plenum.
struct Tap {
    std::optional<house::DuctId> duct;  // empty: the plenum
    units::Length at;
};

struct DamperAt {
    int outlet = 0;  // position in House::outlets
    double degrees = 0;
};

struct Proposal {
    std::optional<house::Shape> size;  // of ducts without a shape
    std::optional<Tap> tap;            // of the run's first duct, instead of the sheet's
    std::vector<DamperAt> dampers;
    bool door_shut = false;  // of the outlet's room
    network::Fans fans = network::Fans::off;
    units::MassFlow made_for = {};  // what its register is chosen for; 0: as the plan shares the air
};

struct OutletTrial {
    AtWork work;
    units::Airflow airflow;  // of the outlet, as it leaves the register
    units::Temperature arrives, reaches;
};

// `outlet`: position in the planned house's outlets.
OutletTrial try_outlet(const HouseAtWork& planned, int outlet, const Proposal& proposal);

// The first duct of the run to an outlet: the new one nearest to plenum or trunk. -1: nothing on it is new.
int first_new_duct(const house::House& house, int outlet);
// All of a room's supply air as it leaves the registers.
units::Airflow supply_air(const HouseAtWork& at, const AtWork& work, house::RoomId room);
// As it leaves one outlet.
units::Airflow airflow_of(const HouseAtWork& at, const AtWork& work, int outlet);

}  // namespace questions
