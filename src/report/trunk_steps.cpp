// The work behind the air that really flows: its balances, done again with the printed figures.
#include <algorithm>

#include "ducts/friction.hpp"
#include "report/step_building.hpp"
#include "report/steps.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method mass_balance{"mass balance", "all registers + leaks", "conservation of mass"};
constexpr loads::Method volume_method{"airflow", "mass flow / density", "definition"};
constexpr loads::Method rise_method{"temperature rise", "output / (mass flow x specific heat)",
                                    "energy balance"};
constexpr loads::Method pressure_method{"pressure along the way", "friction and fittings of each section",
                                        "Darcy-Weisbach; each fitting's coefficient at the real split"};
constexpr loads::Method left_method{"pressure left", "plenum - way", "conservation of energy along the way"};
constexpr loads::Method room_method{
    "temperature a room reaches",
    "(sum of conductance x beyond + sum of brought x arrival) / (conductance + brought)",
    "energy balance of the room"};
constexpr loads::Method brings_method{"heat brought for each degree", "on-time x mass flow x specific heat",
                                      "energy balance"};
constexpr loads::Method on_time_method{"on-time", "heat that leaves the house / heat that reaches the rooms",
                                       "energy balance of the house"};

class TrunkWork {
  public:
    TrunkWork(const questions::TrunkAnswer& answer, System system)
        : answer_(answer),
          house_(answer.house()),
          point_(answer.after.point),
          night_(answer.after.night),
          loss_(answer.both.planned.loss),
          system_(system) {}

    std::vector<Step> steps() {
        const RoomWork room{house_, loss_, system_};
        add_spaces(steps_, room);
        add_house_leakage(steps_, room);
        add_room(steps_, room, loss_.rooms[index_of(answer_.new_outlet().room)]);
        add_blower();
        add_pressures();
        add_outlet();
        for (const questions::RoomShare& share : answer_.rooms)
            if (share.room && stands_alone(*share.room)) add_reached_by(*share.room);
        add_on_time();
        return std::move(steps_);
    }

  private:
    static std::size_t index_of(house::RoomId room) { return static_cast<std::size_t>(room.index); }

    void add_blower() {
        std::vector<Worked> parts;
        for (std::size_t i = 0; i < house_.outlets.size(); ++i)
            if (house_.is_supply(house_.outlets[i])) parts.push_back(in_sum(point_.outlets[i], system_));
        if (house_.other_rooms) parts.push_back(in_sum(point_.other_rooms, system_));
        if (point_.supply_leak.si() != 0) parts.push_back(in_sum(point_.supply_leak, system_));
        steps_.push_back(finished_step("mass flow of the blower", mass_balance, plus_all(parts),
                                       count(point_.blower, system_), mass_text(point_.blower, system_)));
        steps_.push_back(step("return air of the blower", volume_method,
                              volume(point_.blower, point_.return_air),
                              point_.blower / point_.return_air.density, system_));
        const Worked rise =
            in_sum(answer_.both.planned.machine.output, system_) /
            (in_sum(point_.blower, system_) * in_sum(point_.return_air.specific_heat, system_));
        steps_.push_back(
            step("temperature rise of the heater", rise_method, rise, answer_.blower_after.rise, system_));
    }

    // cfm of lb/h and lb/ft3, L/s of kg/s and kg/m3.
    Worked volume(units::MassFlow flow, const loads::Air& air) const {
        const Worked by_mass = in_sum(flow, system_) / in_sum(air.density, system_);
        return system_ == System::us ? by_mass / given(60, "60") : given(1000, "1000") * by_mass;
    }

    void add_pressures() {
        const ducts::Side& supply = point_.system.supply;
        std::vector<Worked> losses;
        units::Pressure sum;
        for (const int at : ducts::way_to(supply, house_, answer_.outlet)) {
            const ducts::SystemSection& section = supply[static_cast<std::size_t>(at)];
            const units::Airflow flow = section.flow / point_.supply_air.density;
            const units::Pressure friction =
                section.loss_factor *
                (ducts::friction(section.section, flow, point_.supply_air) * section.length);
            const units::Pressure fittings =
                section.loss_factor * ducts::fittings_loss(supply, section, point_.supply_air);
            for (const units::Pressure loss : {friction, fittings})
                if (loss.si() != 0) losses.push_back(in_sum(loss, system_));
            sum += friction + fittings;
        }
        steps_.push_back(step("pressure lost on the way to the new outlet", pressure_method, plus_all(losses),
                              sum, system_));
        steps_.push_back(step("pressure left for its damper and register", left_method,
                              in_sum(point_.supply_plenum, system_) - in_sum(sum, system_),
                              point_.supply_plenum - sum, system_));
    }

    void add_outlet() {
        const auto outlet = static_cast<std::size_t>(answer_.outlet);
        const loads::Air air = loads::air_at(night_.arrivals[outlet], answer_.both.planned.machine.pressure);
        steps_.push_back(step("supply air of the new outlet, as it leaves the register", volume_method,
                              volume(point_.outlets[outlet], air), point_.outlets[outlet] / air.density,
                              system_));
    }

    // Its heat is that of its own surfaces and registers: no grille draws more than they bring, and no room
    // without an outlet leans on it through its door.
    bool stands_alone(house::RoomId room) const {
        units::MassFlow surplus;
        for (std::size_t i = 0; i < house_.outlets.size(); ++i) {
            const house::Outlet& outlet = house_.outlets[i];
            if (outlet.room == room)
                surplus += house_.is_supply(outlet) ? point_.outlets[i] : -1.0 * point_.outlets[i];
        }
        return surplus.si() > 0 && (house_.other_rooms || every_room_has_an_outlet());
    }
    bool every_room_has_an_outlet() const {
        return std::all_of(house_.rooms.begin(), house_.rooms.end(), [&](const house::Room& room) {
            return std::any_of(house_.outlets.begin(), house_.outlets.end(),
                               [&](const house::Outlet& outlet) { return outlet.room == room.id; });
        });
    }

    // What is beyond a surface, as warm as it comes out on that night; `inside`: it is heated.
    struct Beyond {
        units::Temperature at;
        bool inside = false;
    };
    Beyond beyond(const house::Surface& surface, const loads::SurfaceLoss& lost) const {
        if (const auto* room = std::get_if<house::RoomId>(&surface.beyond))
            return {night_.rooms[index_of(*room)], true};
        if (lost.to_neighbour && house_.other_rooms) return {night_.other_rooms, true};
        return {lost.beyond, false};
    }

    void add_reached_by(house::RoomId id) {
        const house::Room& room = house_.room(id);
        const loads::RoomHeatLoss& lost = loss_.rooms[index_of(id)];
        std::vector<Worked> above, below;
        const auto count_in = [&](units::HeatLossPerKelvin conductance, units::Temperature beyond) {
            if (conductance.si() == 0) return;
            above.push_back(in_sum(conductance, system_) * in_sum(beyond, system_));
            below.push_back(in_sum(conductance, system_));
        };
        for (std::size_t s = 0; s < room.surfaces.size(); ++s)
            count_in(lost.surfaces[s].area * lost.surfaces[s].u,
                     beyond(room.surfaces[s], lost.surfaces[s]).at);
        count_in(leaking(lost), house_.site.winter_outdoor);
        for (std::size_t i = 0; i < house_.outlets.size(); ++i) {
            if (house_.outlets[i].room != id || !house_.is_supply(house_.outlets[i])) continue;
            const units::MassFlow flow = std::max(units::MassFlow(), point_.outlets[i]);
            count_in(add_brought(flow, house_.outlets[i].name), night_.arrivals[i]);
        }
        steps_.push_back(step("temperature the " + room.name + " reaches", room_method,
                              plus_all(above) / plus_all(below), night_.rooms[index_of(id)], system_));
    }

    units::HeatLossPerKelvin add_brought(units::MassFlow flow, const std::string& outlet) {
        const units::HeatLossPerKelvin brings = night_.on_time * (flow * point_.return_air.specific_heat);
        const CountingUnit unit = unit_of(brings, system_);
        steps_.push_back(
            finished_step("heat the " + outlet + " brings for each degree", brings_method,
                          printed_to(night_.on_time, 5) * in_sum(flow, system_) *
                              in_sum(point_.return_air.specific_heat, system_),
                          count(brings, system_),
                          units::decimal(count(brings, system_), 1) + " " + std::string(unit.name)));
        return brings;
    }

    static units::HeatLossPerKelvin leaking(const loads::RoomHeatLoss& lost) {
        units::HeatLossPerKelvin through;
        for (const loads::SurfaceLoss& surface : lost.surfaces) through += surface.area * surface.u;
        return lost.conductance - through;
    }

    units::Power out_of_the_house(const house::Room& room) const {
        const loads::RoomHeatLoss& lost = loss_.rooms[index_of(room.id)];
        const units::Temperature at = night_.rooms[index_of(room.id)];
        units::Power sum = leaking(lost) * (at - house_.site.winter_outdoor);
        for (std::size_t s = 0; s < room.surfaces.size(); ++s)
            if (const Beyond to = beyond(room.surfaces[s], lost.surfaces[s]); !to.inside)
                sum += lost.surfaces[s].area * lost.surfaces[s].u * (at - to.at);
        return sum;
    }

    void add_on_time() {
        std::vector<Worked> parts;
        for (const house::Room& room : house_.rooms)
            if (const units::Power out = out_of_the_house(room); out.si() != 0)
                parts.push_back(in_sum(out, system_));
        const house::Site& site = house_.site;
        if (house_.other_rooms && site.winter_indoor > site.winter_outdoor) {
            const units::HeatLossPerKelvin of_others =
                loss_.other_rooms / (site.winter_indoor - site.winter_outdoor);
            parts.push_back(in_sum(of_others * (night_.other_rooms - site.winter_outdoor), system_));
        }
        steps_.push_back(plain_step("on-time of the heater, every room as warm as it comes out",
                                    on_time_method, plus_all(parts) / in_sum(night_.delivered, system_),
                                    night_.on_time, 3));
    }

    const questions::TrunkAnswer& answer_;
    const house::House& house_;
    const network::OperatingPoint& point_;
    const network::DesignNight& night_;
    const loads::HouseHeatLoss& loss_;
    System system_;
    std::vector<Step> steps_;
};

}  // namespace

std::vector<Step> trunk_steps(const questions::TrunkAnswer& answer, System system) {
    return TrunkWork(answer, system).steps();
}

}  // namespace report
