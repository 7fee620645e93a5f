// See design_night.hpp. The rooms' balances are A0 + f A1 in their temperatures, f the on-time.
#include "network/design_night.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "ducts/duct_temperatures.hpp"
#include "house/cannot_answer.hpp"
#include "units/unit.hpp"

namespace network {
namespace {

using Row = Eigen::RowVectorXd;

constexpr const char* scalding =
    "so little air passes the heater through these ducts that it would leave scalding hot: check output "
    "under "
    "[heater], points and measured under [blower], shapes and dampers of the ducts";

// A temperature as a mix of the rooms' and a part that is known.
struct Mix {
    Row rooms;
    double known = 0;
};
Mix operator*(double factor, Mix mix) { return {factor * mix.rooms, factor * mix.known}; }
Mix operator+(Mix a, const Mix& b) { return {a.rooms + b.rooms, a.known + b.known}; }

class Night {
  public:
    Night(const house::House& house, const loads::HouseHeatLoss& loss, const Machine& machine,
          const OperatingPoint& point)
        : house_(house),
          loss_(loss),
          machine_(machine),
          point_(point),
          cp_(point.return_air.specific_heat.si()),
          rooms_(static_cast<int>(house.rooms.size())),
          size_(rooms_ + (house.other_rooms ? 1 : 0)),
          still_(Eigen::MatrixXd::Zero(size_, size_)),
          blown_(still_),
          still_known_(Eigen::VectorXd::Zero(size_)),
          blown_known_(still_known_),
          supplied_(static_cast<std::size_t>(size_)),
          drawn_(supplied_) {
        share_the_air();
        find_arrivals();
        for (const loads::RoomHeatLoss& room : loss.rooms) add_losses(room);
        if (house.other_rooms) add_losses_of_the_others();
        for (int i = 0; i < rooms_; ++i)
            if (supplied_[static_cast<std::size_t>(i)] <= 0 && drawn_[static_cast<std::size_t>(i)] <= 0)
                open_the_door(i);
        for (int i = 0; i < size_; ++i) {
            add_heat_of_the_air(i);
            const auto room = static_cast<std::size_t>(i);
            const bool closed = still_.row(i).sum() < 1e-9 && supplied_[room] <= 0 && drawn_[room] <= 0;
            if (closed) lose(i, 1e-6, known(house.site.winter_indoor.si()));
        }
    }

    DesignNight solved() const {
        DesignNight night;
        night.on_time_wanted = on_time_that_holds();
        night.on_time = std::min(1.0, night.on_time_wanted);
        const Eigen::VectorXd at = temperatures(night.on_time);
        for (int i = 0; i < rooms_; ++i) night.rooms.emplace_back(at(i));
        night.other_rooms = house_.other_rooms ? units::Temperature(at(rooms_)) : house_.site.winter_indoor;
        night.supply = units::Temperature(value(supply(), at));
        if (night.supply > units::unit::celsius(90))  // as in ducts/plenum.hpp
            throw house::CannotAnswer({}, scalding);
        for (std::size_t i = 0; i < house_.outlets.size(); ++i)
            night.arrivals.emplace_back(house_.is_supply(house_.outlets[i])
                                            ? value(arrival_[i], at)
                                            : at(house_.outlets[i].room.index));
        night.others_arrival =
            house_.other_rooms ? units::Temperature(value(others_arrival_, at)) : night.supply;
        // What the rooms get, by the air's own balance: what the heater gives less what never comes.
        night.delivered = units::Power((blown_known_ - blown_ * at).sum());
        night.lost_on_the_way = machine_.output - night.delivered;
        return night;
    }

  private:
    Mix of_room(int i) const {
        Mix mix{Row::Zero(size_), 0};
        mix.rooms(i) = 1;
        return mix;
    }
    Mix known(double kelvin) const { return {Row::Zero(size_), kelvin}; }
    static double value(const Mix& mix, const Eigen::VectorXd& at) { return mix.rooms.dot(at) + mix.known; }

    // What each room is supplied and what its grilles draw.
    void share_the_air() {
        for (std::size_t i = 0; i < house_.outlets.size(); ++i) {
            const auto room = static_cast<std::size_t>(house_.outlets[i].room.index);
            const double flow = std::max(0.0, point_.outlets[i].si());
            (house_.is_supply(house_.outlets[i]) ? supplied_ : drawn_)[room] += flow;
        }
        if (house_.other_rooms) supplied_.back() = std::max(0.0, point_.other_rooms.si());
        const double supplied = std::accumulate(supplied_.begin(), supplied_.end(), 0.0);
        const double drawn = std::accumulate(drawn_.begin(), drawn_.end(), 0.0);
        if (supplied <= 0) throw house::CannotAnswer({}, "no air comes out of any register");
        // By a return that nobody described, and by return ducts whose grille is not described.
        const double not_described = std::max(0.0, (point_.blower - point_.return_leak).si() - drawn);
        if (house_.other_rooms) drawn_.back() += not_described;
        for (std::size_t i = 0; i < supplied_.size() && !house_.other_rooms; ++i)
            drawn_[i] += not_described * supplied_[i] / supplied;
    }

    // The air that rooms give the house, as one temperature.
    Mix house_mix() const {
        Mix mix = known(0);
        double given = 0;
        for (int i = 0; i < size_; ++i) {
            const double surplus = surplus_of(i);
            if (surplus <= 0) continue;
            mix = mix + surplus * of_room(i);
            given += surplus;
        }
        return given > 0 ? (1 / given) * mix : known(house_.site.winter_indoor.si());
    }
    double surplus_of(int i) const {
        return supplied_[static_cast<std::size_t>(i)] - drawn_[static_cast<std::size_t>(i)];
    }

    Mix supply() const {
        Mix mix = known(0);
        double drawn = 0;
        for (int i = 0; i < size_; ++i) {
            mix = mix + drawn_[static_cast<std::size_t>(i)] * of_room(i);
            drawn += drawn_[static_cast<std::size_t>(i)];
        }
        const double leak = std::max(0.0, point_.return_leak.si());
        mix = (1 / (drawn + leak)) * (mix + leak * known(around_the_return()));
        return mix + known(machine_.output.si() / (point_.blower.si() * cp_));
    }

    double around_the_return() const {
        double area = 0, sum = 0;
        for (const ducts::SystemSection& section : point_.system.return_side) {
            const double wall = (section.section.perimeter * section.length).si();
            area += wall, sum += wall * section.surroundings.si();
        }
        return area > 0 ? sum / area : house_.site.winter_indoor.si();
    }

    // Along each run the temperature is linear in the one it starts with: two starts tell all.
    void find_arrivals() {
        const Mix start = supply();
        arrival_.assign(house_.outlets.size(), start);
        constexpr units::Temperature cold{280}, hot{330};
        const auto cp = point_.return_air.specific_heat;
        const auto from_cold = ducts::leaving_temperatures(point_.system.supply, cold, cp);
        const auto from_hot = ducts::leaving_temperatures(point_.system.supply, hot, cp);
        for (std::size_t i = 0; i < point_.system.supply.size(); ++i) {
            const int outlet = point_.system.supply[i].outlet;
            if (outlet < 0) continue;
            const double kept = (from_hot[i] - from_cold[i]) / (hot - cold);
            arrival_[static_cast<std::size_t>(outlet)] =
                kept * start + known(from_cold[i].si() - kept * cold.si());
        }
        const double leaked = std::max(0.0, point_.supply_leak / point_.blower);
        const double comes = std::min(1.0, 1 / (1 + house_.heater.duct_loss) / (1 - std::min(leaked, 0.9)));
        if (!house_.other_rooms) return;
        others_arrival_ = comes * start + (1 - comes) * of_room(rooms_);
    }

    void add_losses(const loads::RoomHeatLoss& lost) {
        const int i = lost.room.index;
        const house::Room& room = house_.room(lost.room);
        double through_faces = 0;
        for (std::size_t s = 0; s < room.surfaces.size(); ++s) {
            const double conductance = (lost.surfaces[s].area * lost.surfaces[s].u).si();
            through_faces += conductance;
            lose(i, conductance, beyond(room.surfaces[s], lost.surfaces[s]));
        }
        lose(i, lost.conductance.si() - through_faces, known(house_.site.winter_outdoor.si()));
    }

    Mix beyond(const house::Surface& surface, const loads::SurfaceLoss& lost) const {
        if (const auto* room = std::get_if<house::RoomId>(&surface.beyond)) return of_room(room->index);
        return lost.to_neighbour && house_.other_rooms ? of_room(rooms_) : known(lost.beyond.si());
    }

    void lose(int i, double conductance, const Mix& to) {
        still_.row(i) -= conductance * to.rooms;
        still_(i, i) += conductance;
        still_known_(i) += conductance * to.known;
    }

    // Through their own surfaces, and to the rooms that are described.
    void add_losses_of_the_others() {
        const double difference = (house_.site.winter_indoor - house_.site.winter_outdoor).si();
        if (difference > 0)
            lose(rooms_, loss_.other_rooms.si() / difference, known(house_.site.winter_outdoor.si()));
        for (const loads::RoomHeatLoss& lost : loss_.rooms) {
            const house::Room& room = house_.room(lost.room);
            for (std::size_t s = 0; s < room.surfaces.size(); ++s)
                if (lost.surfaces[s].to_neighbour &&
                    std::holds_alternative<house::Space>(room.surfaces[s].beyond))
                    lose(rooms_, (lost.surfaces[s].area * lost.surfaces[s].u).si(), of_room(lost.room.index));
        }
    }

    void open_the_door(int i) {
        constexpr double through_a_door = 100;  // W/K
        std::vector<int> towards;
        if (house_.other_rooms) towards.push_back(rooms_);
        for (int other = 0; other < rooms_ && !house_.other_rooms; ++other)
            if (supplied_[static_cast<std::size_t>(other)] > 0) towards.push_back(other);
        for (const int other : towards) {
            const double share = through_a_door / static_cast<double>(towards.size());
            lose(i, share, of_room(other));
            lose(other, share, of_room(i));
        }
    }

    void bring(int i, double flow, const Mix& air) {
        blown_.row(i) -= flow * cp_ * air.rooms;
        blown_(i, i) += flow * cp_;
        blown_known_(i) += flow * cp_ * air.known;
    }

    void add_heat_of_the_air(int i) {
        for (std::size_t o = 0; o < house_.outlets.size(); ++o)
            if (house_.outlets[o].room.index == i && house_.is_supply(house_.outlets[o]))
                bring(i, std::max(0.0, point_.outlets[o].si()), arrival_[o]);
        if (i == rooms_) bring(i, supplied_.back(), others_arrival_);
        if (surplus_of(i) < 0) bring(i, -surplus_of(i), house_mix());
    }

    Eigen::VectorXd temperatures(double on_time) const {
        return (still_ + on_time * blown_).partialPivLu().solve(still_known_ + on_time * blown_known_);
    }

    // What the thermostat feels, less what it is set to.
    double too_warm(double on_time) const {
        const Eigen::VectorXd at = temperatures(on_time);
        const int felt = thermostat();
        if (felt >= 0 && felt < rooms_)
            return at(felt) - house_.rooms[static_cast<std::size_t>(felt)].winter_indoor.si();
        if (house_.other_rooms) return at(rooms_) - house_.site.winter_indoor.si();
        double weight = 0, sum = 0;
        for (const loads::RoomHeatLoss& lost : loss_.rooms) {
            const double part = std::max(0.0, lost.conductance.si());
            weight += part, sum += part * (at(lost.room.index) - lost.inside.si());
        }
        return weight > 0 ? sum / weight : 0;
    }
    // -1: the sheet names none that the air passes.
    int thermostat() const {
        if (!house_.thermostat) return -1;
        const auto i = static_cast<std::size_t>(house_.thermostat->index);
        return supplied_[i] > 0 || drawn_[i] > 0 ? house_.thermostat->index : -1;
    }

    double on_time_that_holds() const {
        constexpr double longest = 64;
        if (too_warm(0) >= 0) return 0;
        double low = 0, high = 1;
        while (too_warm(high) < 0) {
            low = high, high *= 2;
            if (high > longest)
                throw house::CannotAnswer({},
                                          "the warm air does not reach the room of the thermostat: no "
                                          "on-time of the heater holds it");
        }
        // Halving: the feel of the thermostat need not be straight, but it rises.
        for (int i = 0; i < 60 && high - low > 1e-13 * high; ++i) {
            const double middle = 0.5 * (low + high);
            (too_warm(middle) < 0 ? low : high) = middle;
        }
        return 0.5 * (low + high);
    }

    const house::House& house_;
    const loads::HouseHeatLoss& loss_;
    const Machine& machine_;
    const OperatingPoint& point_;
    double cp_;
    int rooms_, size_;
    Eigen::MatrixXd still_, blown_;  // by what the rooms lose, and by the air while the heater is on
    Eigen::VectorXd still_known_, blown_known_;
    std::vector<double> supplied_, drawn_;  // kg/s
    std::vector<Mix> arrival_;
    Mix others_arrival_;
};

}  // namespace

DesignNight design_night(const house::House& house, const loads::HouseHeatLoss& loss, const Machine& machine,
                         const OperatingPoint& point) {
    if (point.blower.si() <= 0) throw house::CannotAnswer({}, "the blower moves no air");
    return Night(house, loss, machine, point).solved();
}

}  // namespace network
