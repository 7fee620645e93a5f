// What is under and on the floor of a room on paper: joists and fixtures.
#include <fmt/format.h>

#include <algorithm>

#include "report/place_drawing.hpp"

namespace report {
namespace {

constexpr double letters = 12;

struct Word {
    Frame frame;
    bool turned = false;
};

// Somewhere in the outline where the words fit and nothing stands: the middle, else as near to it as can be.
std::optional<Word> room_for(const RoomDrawing& room, const Frame& outline, double width) {
    constexpr double shares[] = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};
    constexpr double half = letters / 2 + 1, margin = 3;
    for (const bool turned : {false, true}) {
        const double half_width = turned ? half : width / 2 + margin;
        const double half_height = turned ? width / 2 + margin : half;
        const double free_x = outline.width() - 2 * half_width, free_y = outline.height() - 2 * half_height;
        if (free_x < 0 || free_y < 0) continue;
        for (const double y : shares)
            for (const double x : shares) {
                const Frame frame =
                    around({outline.left + half_width + x * free_x, outline.top + half_height + y * free_y},
                           half_width, half_height);
                if (room.is_free(frame)) return Word{frame, turned};
            }
    }
    return std::nullopt;
}

void write_in(RoomDrawing& room, const Word& word, const std::string& text) {
    const Pixel middle = word.frame.middle();
    const Pixel base =
        word.turned ? Pixel{middle.x + letters / 3, middle.y} : Pixel{middle.x, middle.y + letters / 3};
    room.drawing.text(base, text, {letters, Anchor::middle, false, word.turned ? -90.0 : 0.0});
    room.taken.push_back(word.frame);
}

void draw_joist(RoomDrawing& room, const house::Joist& joist, house::JoistsRun run) {
    constexpr double out = wall_thickness + 14;
    const Frame inside = room.room();
    const Pixel from = room.scale.at(joist.from, joist.from), to = room.scale.at(joist.to, joist.to);
    Pixel number{inside.left - out, (from.y + to.y) / 2 + 4};
    if (run == house::JoistsRun::north_south) {
        for (const double x : {from.x, to.x})
            room.drawing.line({x, inside.top}, {x, inside.bottom}, stroke::dashed);
        number = {(from.x + to.x) / 2, inside.bottom + out};
    } else {
        for (const double y : {from.y, to.y})
            room.drawing.line({inside.left, y}, {inside.right, y}, stroke::dashed);
    }
    room.drawing.text(number, fmt::format("{}", joist.number), {11, Anchor::middle, false, 0, "#444"});
    room.taken.push_back(around({number.x, number.y - 4}, 8, 7));
}

}  // namespace

Frame PlanScale::of(const house::Box& box) const {
    const Pixel low = at(box.west, box.south), high = at(box.east, box.north);
    return {low.x, high.y, high.x, low.y};
}

bool RoomDrawing::is_free(const Frame& frame) const {
    return std::none_of(taken.begin(), taken.end(),
                        [&](const Frame& other) { return overlap(frame, other); });
}

std::string letter_of(std::size_t position) {
    return std::string(1, static_cast<char>('a' + position % 26)) + std::string(position / 26, '\'');
}

void draw_joists(RoomDrawing& room) {
    if (!room.plan().floor) return;
    room.drawing.open_group("joists");
    for (const house::Joist& joist : room.plan().floor->joists)
        draw_joist(room, joist, room.plan().floor->run);
    room.drawing.close_group();
}

void draw_fixtures(RoomDrawing& room) {
    room.drawing.open_group("fixtures");
    for (const house::Fixture& fixture : room.plan().fixtures)
        room.drawing.rectangle(room.scale.of(fixture.box),
                               R"(fill="#fff" fill-opacity="0.85" stroke="#000" stroke-width="1.2" rx="4")");
    room.drawing.close_group();
}

std::vector<std::string> name_fixtures(RoomDrawing& room) {
    std::vector<std::string> lettered;
    room.drawing.open_group("fixture-names");
    for (const house::Fixture& fixture : room.plan().fixtures) {
        const Frame outline = room.scale.of(fixture.box);
        std::string text = fixture.name;
        std::optional<Word> word = room_for(room, outline, text_width(text, letters));
        if (!word) {
            text = letter_of(lettered.size());
            lettered.push_back(fixture.name);
            word = room_for(room, outline, text_width(text, letters));
        }
        write_in(room, word.value_or(Word{around(outline.middle(), 5, 7)}), text);
    }
    room.drawing.close_group();
    return lettered;
}

}  // namespace report
