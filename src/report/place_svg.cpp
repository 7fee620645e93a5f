// The plan of a room to scale with every place for its register, as SVG.
#include <fmt/format.h>

#include <algorithm>

#include "report/drawings.hpp"
#include "report/figures.hpp"
#include "report/place_drawing.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

constexpr double paper_width = 900, legend_left = 610;
constexpr double plan_left = 70, plan_top = 112, most_width = 490, most_height = 620;

PlanScale scale_of(const house::Plan& plan) {
    const double width = plan.width.si(), depth = plan.depth.si();
    PlanScale scale;
    scale.per_metre = std::min(most_width / width, most_height / depth);
    scale.left = plan_left + (most_width - width * scale.per_metre) / 2;
    scale.bottom = plan_top + depth * scale.per_metre;
    return scale;
}

void draw_title(RoomDrawing& room) {
    const PlaceView& view = room.view;
    room.drawing.text({plan_left - wall_thickness, 32},
                      with_plain_spaces(fmt::format("{}: places for the register", view.room().name)),
                      {18, Anchor::start, true});
    room.drawing.text({plan_left - wall_thickness, 52},
                      with_plain_spaces(fmt::format("{} from west to east, {} from south to north, inside",
                                                    figure(room.plan().width, view.system),
                                                    figure(room.plan().depth, view.system))),
                      {12});
}

// Of whole feet, or of half metres, no longer than a third of the plan.
void draw_scale_bar(RoomDrawing& room, double y) {
    const bool us = room.view.system == units::System::us;
    const units::Length step = us ? units::unit::foot : 0.5 * units::unit::metre;
    const double step_px = step.si() * room.scale.per_metre;
    const int steps = std::clamp(static_cast<int>(most_width / 3 / step_px), 1, us ? 10 : 8);
    const double left = room.room().left;
    room.drawing.open_group("scale");
    for (int i = 0; i < steps; ++i)
        room.drawing.rectangle({left + i * step_px, y, left + (i + 1) * step_px, y + 6},
                               i % 2 == 0 ? stroke::filled : stroke::outline);
    room.drawing.text({left + steps * step_px + 8, y + 8},
                      with_plain_spaces(figure(static_cast<double>(steps) * step, room.view.system)), {12});
    room.drawing.close_group();
}

void draw_north(RoomDrawing& room) {
    constexpr double x = paper_width - 40, top = 20;
    room.drawing.open_group("north");
    room.drawing.polygon({{x, top}, {x - 8, top + 26}, {x, top + 19}}, stroke::filled);
    room.drawing.polygon({{x, top}, {x + 8, top + 26}, {x, top + 19}}, stroke::outline);
    room.drawing.text({x, top + 42}, "N", {14, Anchor::middle, true});
    room.drawing.close_group();
}

}  // namespace

std::string place_svg(const questions::PlaceAnswer& answer, units::System system) {
    const PlaceView view{answer, system};
    if (!view.room().plan) return {};
    Drawing drawing;
    RoomDrawing room{view, drawing, scale_of(*view.room().plan)};
    drawing.define_clip("inside", room.room());
    draw_title(room);
    draw_joists(room);
    draw_fixtures(room);
    draw_throw(room);
    draw_falling_air(room);
    draw_walls(room);
    draw_doors(room);
    draw_windows(room);
    draw_places(room);
    const std::vector<std::string> lettered = name_fixtures(room);
    draw_north(room);
    const double below = room.room().bottom + wall_thickness + 50;
    draw_scale_bar(room, below);
    const double legend_ends = draw_legend(room, {legend_left, plan_top + 4}, lettered);
    return drawing.svg(paper_width, std::max(below + 30, legend_ends + 10),
                       view.room().name + ": places for the register");
}

}  // namespace report
