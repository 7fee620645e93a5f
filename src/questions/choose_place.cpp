// Limits first, then what differs; no sum of points.
#include <algorithm>
#include <tuple>

#include "questions/place.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

constexpr double air_accuracy = 0.1;                            // of what an outlet gets
constexpr units::Length run_told_apart{2 * units::unit::foot};  // of an estimated way

bool is_dry(const PlaceFigures& figures) {
    return !figures.from_water || *figures.from_water >= registers::splash;
}

bool gives_enough(const PlaceFigures& figures) { return figures.trial.holds(); }

// What counts before the length of the run, better ones higher.
std::tuple<bool, bool> rank(const PlaceFigures& figures) { return {gives_enough(figures), is_dry(figures)}; }

// Of two equals the shorter run, then the one farther south and west: never the sheet's order.
bool comes_before(const Place& a, const Place& b) {
    const auto key = [](const Place& place) {
        return std::tuple(place.figures->run, place.location.middle.north, place.location.middle.east,
                          static_cast<int>(place.location.mount));
    };
    return key(a) < key(b);
}

}  // namespace

Washes washes_by(const PlaceFigures& figures) {
    if (!figures.washes) return Washes::no;
    return figures.surely_washes ? Washes::surely : Washes::just;
}

RuledOut ruled_out(const Place& place) {
    if (place.location.stopped || !place.figures) return RuledOut::stopped;
    const PlaceFigures& figures = *place.figures;
    const auto& needs = figures.trial.needs;
    if (!needs || figures.trial.gives < (1 - air_accuracy) * needs->airflow) return RuledOut::too_little_air;
    if (figures.warm.from_high_up && figures.warm.from_high_up->warm_air == registers::WarmAir::stays_up)
        return RuledOut::stays_up;
    if (figures.in_cold_wall && !figures.in_cold_wall->enough()) return RuledOut::cold_wall;
    if (figures.sound == registers::Sound::loud) return RuledOut::loud;
    return RuledOut::no;
}

Choice choose_place(const std::vector<Place>& places, WindowSide side, const std::vector<Washes>& washes) {
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < places.size(); ++i)
        if (places[i].ruled_out == RuledOut::no) left.push_back(i);
    // Those that wash it best: a jet that is surely stronger before one that just is.
    Washes best_wash = Washes::no;
    for (const std::size_t i : left) best_wash = std::max(best_wash, washes[i]);
    if (side != WindowSide::indifferent)
        std::erase_if(left, [&](std::size_t i) { return washes[i] < best_wash; });
    if (left.empty()) return {};
    const auto best = std::max_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) {
        return rank(*places[a].figures) < rank(*places[b].figures);
    });
    const auto best_rank = rank(*places[*best].figures);
    std::erase_if(left, [&](std::size_t i) { return rank(*places[i].figures) != best_rank; });
    std::sort(left.begin(), left.end(),
              [&](std::size_t a, std::size_t b) { return comes_before(places[a], places[b]); });
    Choice choice{left.front(), {}};
    const units::Length shortest = places[left.front()].figures->run;
    for (std::size_t i = 1; i < left.size(); ++i)
        if (places[left[i]].figures->run < shortest + run_told_apart) choice.as_good.push_back(left[i]);
    std::sort(choice.as_good.begin(), choice.as_good.end());
    return choice;
}

}  // namespace questions
