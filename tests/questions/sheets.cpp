#include "questions/sheets.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "questions/check_sheet.hpp"
#include "sheet/read.hpp"
#include "units/unit.hpp"

namespace sheets {
namespace {

constexpr std::string_view bath_sheet = R"(sheet = 1
[house]
built = 1924
storeys = 2
air_leakage = "leaky"
[site]
winter_outdoor = "3 F"
winter_indoor = "70 F"
[construction.wall]
layers = ["lap siding", "board sheathing, 3/4 in", "empty stud bay, 3-5/8 in", "plaster on wood lath"]
studs = "16 in"
[construction.filled]
layers = ["lap siding", "board sheathing, 3/4 in", "dense cellulose, 3-5/8 in", "plaster on wood lath"]
studs = "16 in"
[[room]]
name = "bath"
storey = 2
size = ["7 ft 6 in", "9 ft"]
ceiling = "8 ft"
winter_indoor = "74 F"
[room.wall.north]
faces = "outdoors"
construction = "wall"
[[room.window]]
name = "north window"
wall = "north"
size = ["2 ft 4 in", "3 ft 6 in"]
glass = "single + storm"
[[room]]
name = "bedroom"
storey = 2
size = ["12 ft", "12 ft"]
ceiling = "8 ft"
[room.wall.north]
faces = "outdoors"
construction = "wall"
[other_rooms]
floor_area = "1150 ft2"
outlets = 8
[heater]
kind = "furnace"
output = "64000 Btu/h"
rise = ["40 F", "70 F"]
max_static = "0.50 in.wc"
[blower]
points = [["0.2 in.wc", "1180 cfm"], ["0.4 in.wc", "1080 cfm"], ["0.6 in.wc", "950 cfm"]]
includes = ["filter"]
[[duct]]
name = "trunk"
side = "supply"
from = "plenum"
shape = "8 x 16 in"
length = "22 ft"
fittings = ["trunk start, square"]
runs_in = "basement"
[[duct]]
name = "bedroom run"
side = "supply"
from = "trunk"
at = "18 ft"
shape = "6 in"
length = "12 ft"
fittings = ["side takeoff, straight", "round elbow 90, adjustable"]
[[outlet]]
name = "bedroom register"
duct = "bedroom run"
room = "bedroom"
[[duct]]
name = "new run"
side = "supply"
from = "trunk"
at = "20 ft"
length = "17 ft"
fittings = ["top takeoff", "round elbow 90, adjustable", "floor boot, end entry"]
state = "new"
[[outlet]]
name = "new register"
duct = "new run"
room = "bath"
mount = "floor"
state = "new"
[[duct]]
name = "return"
side = "return"
to = "blower"
shape = "14 x 20 in"
length = "18 ft"
fittings = ["return grille into a box"]
[[outlet]]
name = "grille"
duct = "return"
room = "bedroom"
face = "30 x 12 in"
)";

// Writes each quantity so exactly that nothing is lost on the way through the text.
class Writer {
  public:
    explicit Writer(bool si) : si_(si) {}
    std::string length(double m) const { return si_ ? text(m, "m") : text(m / 0.3048, "ft"); }
    std::string area(double m2) const { return si_ ? text(m2, "m2") : text(m2 / (0.3048 * 0.3048), "ft2"); }
    std::string temperature(double c) const { return si_ ? text(c, "C") : text(c * 1.8 + 32, "F"); }
    std::string power(double w) const {
        return si_ ? text(w, "W") : text(w / units::unit::btu_per_hour.si(), "Btu/h");
    }
    std::string airflow(double m3_s) const {
        return si_ ? text(m3_s * 1000, "L/s") : text(m3_s / units::unit::cfm.si(), "cfm");
    }
    std::string pressure(double pa) const {
        return si_ ? text(pa, "Pa") : text(pa / units::unit::inch_wc.si(), "in.wc");
    }
    std::string u(double w) const {
        return si_ ? text(w, "W/m2K")
                   : text(w / units::unit::btu_per_hour_square_foot_fahrenheit.si(), "Btu/h.ft2.F");
    }
    std::string r(double r) const {
        return si_ ? text(r, "m2K/W") : text(r / units::unit::r_value_us.si(), "h.ft2.F/Btu");
    }

  private:
    static std::string text(double number, const char* unit) {
        return fmt::format("\"{:.17g} {}\"", number, unit);
    }
    bool si_;
};

constexpr std::string_view one_room_sheet = R"(sheet = 1
[house]
storeys = 1
air_leakage = "{leakage}"
[site]
elevation = {elevation}
winter_outdoor = {outdoors}
winter_indoor = {indoors}
[space.crawl]
winter = {surroundings}
[construction.wall]
u = {wall_u}
[[room]]
name = "den"
size = [{width}, {depth}]
ceiling = {ceiling}
[room.wall.north]
faces = "outdoors"
construction = "wall"
[room.wall.east]
faces = "outdoors"
construction = "wall"
[[room.window]]
name = "big window"
wall = "north"
centre = {middle}
size = [{window_width}, {window_height}]
u = {window_u}
[other_rooms]
floor_area = {other_floor}
{other_loss}outlets = 7
[heater]
output = {output}
max_static = {max_static}
[blower]
measured = {airflow}
[[duct]]
name = "run"
side = "supply"
from = "plenum"
length = {run}
fittings = ["plenum collar, square", "round elbow 90, adjustable"]
runs_in = "crawl"
wrap = {wrap}
state = "new"
[[outlet]]
name = "register"
duct = "run"
room = "den"
state = "new"
)";

std::string filled(std::string text, std::string_view name, const std::string& value) {
    const std::string slot = "{" + std::string(name) + "}";
    for (std::size_t at = text.find(slot); at != std::string::npos; at = text.find(slot))
        text.replace(at, slot.size(), value);
    return text;
}

}  // namespace

std::string bath() { return std::string(bath_sheet); }

std::string a_case(const std::string& name) {
    std::ifstream file(std::string(SILLFLOW_SOURCE_DIR) + "/cases/" + name + "/house.toml");
    EXPECT_TRUE(file) << name;
    return {std::istreambuf_iterator<char>(file), {}};
}

Pieces pieces_of(const std::string& sheet) {
    Pieces pieces;
    const auto next = [&](std::size_t from) {
        return std::min(sheet.find("[[duct]]", from), sheet.find("[[outlet]]", from));
    };
    std::size_t at = next(0);
    pieces.top = sheet.substr(0, at);
    while (at < sheet.size()) {
        const std::size_t end = std::min(next(at + 1), sheet.size());
        pieces.ducts_and_outlets.push_back(sheet.substr(at, end - at));
        at = end;
    }
    return pieces;
}

std::string without_the_new(const std::string& sheet) {
    const Pieces pieces = pieces_of(sheet);
    std::string rest = pieces.top;
    for (const std::string& piece : pieces.ducts_and_outlets)
        if (piece.find("state = \"new\"") == std::string::npos) rest += piece;
    return rest;
}

std::string with(std::string sheet, std::string_view from, std::string_view to) {
    const std::size_t at = sheet.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    EXPECT_EQ(sheet.find(from, at + 1), std::string::npos) << from << " stands there twice";
    return at == std::string::npos ? sheet : sheet.replace(at, from.size(), to);
}

house::Survey survey(const std::string& sheet) {
    sheet::Read read = sheet::read(sheet);
    for (const auto& mistake : questions::check_sheet(read.survey, read.mistakes).mistakes)
        ADD_FAILURE() << mistake.place.line << ": " << mistake.text << "; " << mistake.under
                      << mistake.remedy;
    return read.survey;
}

std::string OneRoom::sheet(bool si) const {
    const Writer write(si);
    std::string text(one_room_sheet);
    const std::pair<const char*, std::string> slots[] = {
        {"leakage", leakage},
        {"elevation", write.length(100)},
        {"outdoors", write.temperature(outdoors)},
        {"indoors", write.temperature(indoors)},
        {"surroundings", write.temperature(surroundings)},
        {"wall_u", write.u(wall_u)},
        {"width", write.length(width)},
        {"depth", write.length(depth)},
        {"ceiling", write.length(ceiling)},
        {"middle", write.length(width / 2)},
        {"window_width", write.length(window_width)},
        {"window_height", write.length(window_height)},
        {"window_u", write.u(window_u)},
        {"other_floor", write.area(other_floor)},
        {"other_loss", other_loss > 0 ? "heat_loss = " + write.power(other_loss) + "\n" : ""},
        {"output", write.power(output)},
        {"max_static", write.pressure(max_static)},
        {"airflow", write.airflow(airflow)},
        {"run", write.length(run)},
        {"wrap", write.r(wrap)}};
    for (const auto& slot : slots) text = filled(std::move(text), slot.first, slot.second);
    return text;
}

}  // namespace sheets
