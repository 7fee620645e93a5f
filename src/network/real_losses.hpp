// What every link of a wired house loses at given flows, with the fittings at the real split of the air;
// private to this folder.
//
// A fitting is taken at its section's flow and at that of the section before it, the trunk. It rises from no
// flow as a plain square up to a twentieth of the trunk's, as a takeoff takes its toll for the trunk's
// velocity however little air leaves there; air that runs backwards meets it likewise; and a trunk counts as
// carrying as much as what leaves it, at least, so that there is no jump where its air stands or turns
// around. Slopes of fittings by differences of a hundred thousandth of the flow.
#pragma once

#include <vector>

#include "network/coupled.hpp"
#include "network/wiring.hpp"

namespace network {

class RealLosses {
  public:
    RealLosses(const house::House& house, const Machine& machine, ducts::DuctSystem& system, Wired& wired);

    // Takes the flows over into the sections, and how warm the blower's air leaves the heater.
    void take(const std::vector<double>& flows);
    // Losses and slopes at flows, which are taken over.
    void at(const std::vector<double>& flows, LinkLosses& losses);
    // The wired network's laws as they stand at the last flows, every fitting as a square of its own flow.
    void set_squares();
    const SystemAir& air() const { return air_; }

  private:
    struct Toll {
        double loss, by_own, by_trunk;  // Pa; Pa s/kg
    };
    const loads::Air& air_of(bool supply) const { return supply ? air_.supply : air_.returns; }
    ducts::Side& side(bool supply) { return supply ? system_.supply : system_.return_side; }
    SideLinks& links(bool supply) { return supply ? wired_.supply : wired_.return_side; }
    Link& link(int at) { return wired_.network.links[static_cast<std::size_t>(at)]; }
    void warm_up(units::MassFlow blower);
    void set_terminals();
    double fittings(bool supply, const ducts::SystemSection& section, double own, double trunk) const;
    double trunk_flow(bool supply, std::size_t i) {
        return trunk_of(supply, i) ? trunk_of(supply, i)->flow.si() : 0;
    }
    const ducts::SystemSection* trunk_of(bool supply, std::size_t i);
    Toll toll(bool supply, std::size_t i);
    void add_fittings(bool supply, LinkLosses& losses);
    void add_velocities(bool supply, LinkLosses& losses);

    const Machine& machine_;
    const house::House& house_;
    ducts::DuctSystem& system_;
    Wired& wired_;
    SystemAir air_;
};

}  // namespace network
