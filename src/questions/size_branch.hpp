// Sizes the branch to one new outlet: from the room's heat loss to a stock pipe.
//
//     room heat loss -> airflow that holds the room -> friction rate -> stock size -> friction
//
// and then the proof: what each size really gets with the whole system at work (questions/try_outlet.hpp).
// Each size has its own arrival temperature and so its own need; the smallest stock pipe that gets its need,
// no faster than is quiet, is chosen. The friction rate is the plan the search begins with, by the
// blower's plan; the supply air is as warm as the air the blower really moves makes it; without a whole
// system (`whole` empty) it is what a size carries at that rate that counts. Ducts whose shape the sheet
// gives keep it. Where a room has several supply outlets each is asked for an equal part of its heat. What
// the room reaches is with every other room held; `trunk` tells all rooms at once.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ducts/airflow_that_holds.hpp"
#include "ducts/friction_rate.hpp"
#include "ducts/stock_sizes.hpp"
#include "house/house.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "questions/both_houses.hpp"

namespace questions {

// What does not depend on the pipe's size.
struct BranchSetting {
    int outlet = 0;  // position in House::outlets
    loads::HouseHeatLoss loss;
    loads::RoomHeatLoss asked;  // the part of the room's loss this outlet has to bring
    int outlets_in_room = 1;
    loads::OnTime on_time;
    ducts::DesignBlower blower;  // of the plan, which the friction rate starts from
    units::MassFlow moved;       // by the blower, with the whole system at work; else the plan's
    ducts::Supply supply;
    loads::Air supply_air, return_air;
    ducts::DesignFlows flows;
    ducts::DuctSystem system;                  // at these flows; ducts to be sized have a shape on trial
    std::vector<int> way;                      // of the outlet's air, positions in system.supply
    bool to_size = true;                       // false: the sheet gives every shape on the way
    house::Round largest;                      // no run is wider than what it leaves, nor than 12 in
    ducts::Stock stock = ducts::Stock::us;     // what the shop has
    std::shared_ptr<const HouseAtWork> whole;  // the planned house with its machine; empty: the plan alone
};

// One size tried.
struct BranchTrial {
    house::Shape pipe;
    std::optional<ducts::Holding> needs;  // empty: no airflow through this pipe holds the room
    units::FrictionRate rate;
    units::Airflow carries;        // at the friction rate, as it leaves the register
    units::Airflow gives;          // with the whole system at work; without one as `carries`
    units::MassFlow gives_mass;    // the same air by mass
    units::Temperature arrives;    // at that airflow
    units::Temperature reaches;    // the room, with that airflow
    units::Velocity speed;         // at that airflow
    units::Velocity speed_needed;  // at the airflow needed
    bool quiet = true;             // speed_needed within the limit of a branch
    bool holds() const { return needs && gives >= needs->airflow && quiet; }
    units::Airflow margin() const;  // gives less needs; below zero where nothing would do
};

struct BranchSizing {
    BranchSetting setting;
    std::vector<BranchTrial> trials;   // smaller to larger, pipes before stacks
    std::size_t chosen = 0;            // position in trials
    bool to_size = true;               // false: the sheet gives every shape
    ducts::FrictionRateBudget budget;  // with the chosen size
    ducts::HeatWay way;                // with the chosen size
    const BranchTrial& choice() const { return trials[chosen]; }
};

// The choice, as a word, where no stock pipe holds the room.
inline constexpr std::string_view no_pipe_holds = "none";

// Of a room with several outlets, what one of them is asked for.
loads::RoomHeatLoss part_of(loads::RoomHeatLoss loss, int parts);

BranchSetting branch_setting(const house::House& house, house::OutletId outlet,
                             ducts::Stock stock = ducts::Stock::us,
                             std::shared_ptr<const HouseAtWork> whole = nullptr);
BranchTrial try_size(const house::House& house, const BranchSetting& setting,
                     const std::optional<house::Shape>& pipe);
BranchSizing size_branch(const house::House& house, house::OutletId outlet,
                         ducts::Stock stock = ducts::Stock::us,
                         std::shared_ptr<const HouseAtWork> whole = nullptr);
// Makes another trial the choice.
void choose(const house::House& house, BranchSizing& sizing, std::size_t trial);

// The smallest stock pipe that holds the room, searched from one already tried; the largest branch pipe where
// none does.
BranchTrial choose_pipe(const house::House& house, const BranchSetting& setting, BranchTrial tried);

}  // namespace questions
