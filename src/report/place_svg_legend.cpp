// What the marks of the drawing stand for, beside it.
#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "report/figures.hpp"
#include "report/place_drawing.hpp"
#include "report/wrap.hpp"

namespace report {
namespace {

constexpr double letters = 12, line_height = 16, least_height = 20, words_in = 34;
constexpr std::size_t columns_wide = 36;

struct Legend {
    RoomDrawing& room;
    double left = 0, y = 0;

    // A mark round its middle, and words beside it.
    void entry(const std::function<void(Pixel)>& mark, const std::string& words) {
        const double started = y;
        mark({left + 14, y - 4});
        for (const std::string& line : wrap(words, columns_wide)) {
            room.drawing.text({left + words_in, y}, with_plain_spaces(line), {letters});
            y += line_height;
        }
        y = std::max(y, started + least_height) + 6;
    }
};

void add_places(Legend& legend) {
    const PlaceView& view = legend.room.view;
    Drawing& drawing = legend.room.drawing;
    for (const std::size_t index : view.rows()) {
        const questions::Place& place = view.place(index);
        const bool chosen = view.is_chosen(index);
        std::string words = where_words(view, place.location);
        if (chosen) words += ": chosen";
        if (place.ruled_out != questions::RuledOut::no) words += ": ruled out";  // the page says why
        legend.entry([&](Pixel at) { draw_number(drawing, at, view.number_of(index), chosen); }, words);
    }
}

bool any_not_possible(const PlaceView& view) { return view.rows().size() < view.answer.places.size(); }

void add_air(Legend& legend) {
    Drawing& drawing = legend.room.drawing;
    if (any_not_possible(legend.room.view))
        legend.entry([&](Pixel at) { draw_cross(drawing, at); }, "no register can be built here");
    if (const std::string words = throw_words(legend.room.view); !words.empty())
        legend.entry([&](Pixel at) { drawing.circle(at, place_radius - 2, shaded); }, words);
    if (const std::string words = falling_words(legend.room.view); !words.empty())
        legend.entry([&](Pixel at) { drawing.arrow({at.x - 13, at.y}, {at.x + 13, at.y}); }, words);
}

void add_building(Legend& legend, const std::vector<std::string>& lettered) {
    Drawing& drawing = legend.room.drawing;
    const house::Plan& plan = legend.room.plan();
    const auto strip = [&](Pixel at, std::string_view drawn) { drawing.rectangle(around(at, 13, 6), drawn); };
    legend.entry([&](Pixel at) { strip(at, hatched); }, "wall to outdoors or to a space without heat");
    legend.entry([&](Pixel at) { strip(at, grey); }, "wall to heated rooms");
    if (plan.floor && !plan.floor->joists.empty())
        legend.entry(
            [&](Pixel at) {
                for (const double y : {at.y - 3, at.y + 3})
                    drawing.line({at.x - 13, y}, {at.x + 13, y}, stroke::dashed);
            },
            "joist under the floor, its number outside the wall");
    if (std::any_of(plan.walls.begin(), plan.walls.end(),
                    [](const house::PlanWall& wall) { return !wall.studs.empty(); }))
        legend.entry([&](Pixel at) { drawing.rectangle(around(at, 5, 6), stroke::outline); },
                     "stud of an opened wall");
    for (std::size_t i = 0; i < lettered.size(); ++i)
        legend.entry(
            [&](Pixel at) {
                drawing.text({at.x, at.y + 4}, letter_of(i), {letters, Anchor::middle});
            },
            lettered[i]);
}

}  // namespace

double draw_legend(RoomDrawing& room, Pixel top_left, const std::vector<std::string>& lettered) {
    room.drawing.open_group("legend");
    Legend legend{room, top_left.x, top_left.y};
    add_places(legend);
    add_air(legend);
    legend.y += 6;
    add_building(legend, lettered);
    room.drawing.close_group();
    return legend.y;
}

}  // namespace report
