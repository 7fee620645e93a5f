// How a step of work is put together; private to this folder.
#pragma once

#include <string>
#include <vector>

#include "loads/method.hpp"
#include "report/counting_units.hpp"
#include "report/figures.hpp"
#include "report/steps.hpp"
#include "report/worked.hpp"
#include "units/quantity.hpp"

namespace report {

inline constexpr loads::Method sum_method{"sum", "sum of its parts", "arithmetic"};

// The step whose sum gives `result`: a quantity, its printed form as the answers write it.
Step finished_step(std::string what, const loads::Method& method, const Worked& sum, double result,
                   std::string printed);
template <class Q>
Step step(std::string what, const loads::Method& method, const Worked& sum, Q result, units::System system) {
    return finished_step(std::move(what), method, sum, count(result, system), figure(result, system));
}
// The same of a plain number with so many decimals.
Step plain_step(std::string what, const loads::Method& method, const Worked& sum, double result, int digits);

// Quantities as figures of a sum, in the counting units of the system.
template <class Q>
Worked in_sum(Q quantity, units::System system) {
    return printed_to(count(quantity, system), 5);
}
inline Worked in_sum(units::Temperature temperature, units::System system) {
    return printed(count(temperature, system), 2);
}
std::string mass_text(units::MassFlow flow, units::System system);  // "4,520 lb/h"
Worked plus_all(const std::vector<Worked>& parts);                  // "0" of none

// The parts of the work, one file each.
struct RoomWork {  // room_steps.cpp: a room's surfaces, its leakage, its sum
    const house::House& house;
    const loads::HouseHeatLoss& loss;
    units::System system;
};
void add_spaces(std::vector<Step>& steps, const RoomWork& work);         // space_steps.cpp
void add_house_leakage(std::vector<Step>& steps, const RoomWork& work);  // leakage_steps.cpp, with the next
struct LeakageShare {
    Worked sum;
    const loads::Method* method;
};
LeakageShare leakage_share(const loads::LeakageShares& shares, const house::Room& room, units::System system);
Worked share_by_volume(const loads::LeakageShares& shares, const house::Room& room, units::System system);
Worked with_ventilation(const loads::OutdoorAir& air, units::Airflow leakage, units::System system);
// Airflow through the house's leaks; wind and stack: the method's two figures for the season.
Worked leaking_air(const loads::Infiltration& leaks, units::TemperatureDifference difference,
                   const Worked& wind, const Worked& stack, units::System system);
void add_room(std::vector<Step>& steps, const RoomWork& work, const loads::RoomHeatLoss& room);

// gain_steps.cpp: what the house gains in summer, room by room, and the air that takes; window_steps.cpp.
struct GainWork {
    const house::House& house;
    const loads::Infiltration& winter;
    const questions::HouseGains& gains;
    units::System system;
};
void add_gains(std::vector<Step>& steps, const GainWork& work);
void add_window_gain(std::vector<Step>& steps, const GainWork& work, const house::Surface& window,
                     const loads::SurfaceGain& gain, const std::string& where);

struct MachineWork {  // machine_steps.cpp: heat loss of the house, output, on-time, supply air
    const house::House& house;
    const loads::HouseHeatLoss& loss;
    const loads::OnTime& on_time;
    const ducts::DesignBlower& blower;
    units::Temperature supply;
    units::System system;
};
void add_machine(std::vector<Step>& steps, const MachineWork& work);
// The airflow the plan starts from, where only the heater's temperature rise tells of it.
void add_airflow_by_rise(std::vector<Step>& steps, const MachineWork& work);

void add_coldest_surface(std::vector<Step>& steps, const RoomWork& work, const loads::ColdestSurface& coldest,
                         const loads::RoomHeatLoss& room);  // warmth_steps.cpp
void add_as_the_house(std::vector<Step>& steps, const questions::HouseLoads& loads, std::size_t room,
                      units::System system);  // warmth_steps.cpp

void add_need(std::vector<Step>& steps, const questions::BranchAnswer& answer, units::System system);
void add_friction_rate(std::vector<Step>& steps, const questions::BranchAnswer& answer, units::System system);
void add_carried(std::vector<Step>& steps, const questions::BranchAnswer& answer, units::System system);
void add_judged(std::vector<Step>& steps, const questions::BranchAnswer& answer, units::System system);
void add_way_back(std::vector<Step>& steps, const questions::WayBack& back,
                  units::System system);  // return_steps.cpp, with the next
void add_return_faces(std::vector<Step>& steps, const questions::ReturnFaces& faces, units::System system);
void add_reached(std::vector<Step>& steps, const questions::BranchAnswer& answer, units::System system);

}  // namespace report
