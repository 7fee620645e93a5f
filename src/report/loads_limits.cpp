// Where the method fits badly, a plain sentence for each; nothing where it fits.
#include <fmt/format.h>

#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"

namespace report {
namespace {

using questions::Limit;

std::string glass_sentence(const std::string& glass, double share, double most) {
    return fmt::format("{} is {} of its floor area; the method was made for up to {}", glass, percent(share),
                       percent(most));
}

std::string elevation_sentence(units::System system) {
    return fmt::format(
        "the site is above {}, where the method was not tried; the thinner air itself is counted",
        unbroken(system == units::System::us ? "6,560 ft" : "2,000 m"));
}

std::string limit_sentence(const LoadsView& view, const questions::BeyondLimit& beyond) {
    const house::House& house = view.planned().house;
    const std::string room = questions::is_of_a_room(beyond.limit) ? the_room(house, beyond.room) : "";
    switch (beyond.limit) {
        case Limit::glass_on_a_side:
            return glass_sentence(
                fmt::format("on the {} side the glass of {}", house::word(beyond.side), room), beyond.glass,
                questions::most_glass_on_a_side);
        case Limit::glass_in_all:
            return glass_sentence("all the glass of " + room, beyond.glass, questions::most_glass_in_all);
        case Limit::masonry:
            return room +
                   " has a solid masonry wall; the method was made for light frames, and a heavy wall "
                   "evens out a short cold spell";
        case Limit::no_outside_surface:
            return room + " has no outside surface: what it loses hangs on how warm its neighbours are";
        case Limit::elevation:
            return elevation_sentence(view.system);
        case Limit::storeys:
            break;
    }
    return fmt::format("the house has {} storeys; the formula for air leakage was made for up to {}",
                       house.storeys, questions::most_storeys);
}

}  // namespace

std::vector<Note> limits_notes(const LoadsView& view) {
    Note note{"fits badly", {}};
    for (const questions::BeyondLimit& beyond : view.answer.beyond_limits)
        if (!questions::is_of_a_room(beyond.limit) || view.tells(static_cast<std::size_t>(beyond.room.index)))
            note.lines.push_back(limit_sentence(view, beyond));
    if (note.lines.empty()) return {};
    return {note};
}

}  // namespace report
