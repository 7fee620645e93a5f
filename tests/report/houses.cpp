#include "report/houses.hpp"

#include <gtest/gtest.h>

#include <map>

#include "sheet/read.hpp"

namespace report_test {
namespace {

constexpr std::string_view bath = R"(sheet = 1
[house]
name = "Tannery Row"
built = 1924
storeys = 2
frame = "balloon"
air_leakage = "leaky"
[site]
elevation = "620 ft"
winter_outdoor = "3 F"
winter_indoor = "70 F"
[construction.bare_wall]
layers = ["lap siding", "board sheathing, 3/4 in", "empty stud bay, 3-5/8 in", "plaster on wood lath"]
studs = "16 in"
[construction.filled_wall]
layers = ["lap siding", "board sheathing, 3/4 in", "dense cellulose, 3-5/8 in", "gypsum board, 1/2 in"]
studs = "16 in"
[construction.attic_ceiling]
layers = ["plaster on wood lath", "loose cellulose, 8 in"]
[[room]]
name = "bath"
storey = 2
corner = ["0 ft", "19 ft"]
size = ["7 ft 6 in", "9 ft"]
ceiling = "8 ft 2 in"
above = { space = "attic", construction = "attic_ceiling" }
winter_indoor = "74 F"
[room.wall.north]
faces = "outdoors"
construction = "bare_wall"
becomes = "filled_wall"
[room.wall.west]
faces = "outdoors"
construction = "bare_wall"
becomes = "filled_wall"
[[room.window]]
name = "north window"
wall = "north"
centre = "3 ft 9 in"
size = ["2 ft 4 in", "3 ft 6 in"]
sill = "3 ft"
glass = "single + storm"
[[room]]
name = "north bedroom"
storey = 2
corner = ["7 ft 6 in", "16 ft"]
size = ["12 ft", "12 ft"]
ceiling = "8 ft 2 in"
above = { space = "attic", construction = "attic_ceiling" }
[room.wall.north]
faces = "outdoors"
construction = "bare_wall"
[[room.window]]
name = "bedroom window"
wall = "north"
centre = "6 ft"
size = ["5 ft", "4 ft 6 in"]
sill = "2 ft 4 in"
glass = "single + storm"
[[room]]
name = "hall"
storey = 2
corner = ["0 ft", "13 ft"]
size = ["7 ft 6 in", "6 ft"]
ceiling = "8 ft 2 in"
above = { space = "attic", construction = "attic_ceiling" }
[room.wall.west]
faces = "outdoors"
construction = "bare_wall"
[other_rooms]
floor_area = "1150 ft2"
outlets = 8
pipe = "6 in"
reach = ["4 ft", "20 ft"]
turns = "3 square"
[heater]
kind = "furnace"
input = "80000 Btu/h"
efficiency = "80 %"
rise = ["40 F", "70 F"]
max_static = "0.50 in.wc"
shares_space_with = "gas water heater"
[blower]
points = [["0.2 in.wc", "1180 cfm"], ["0.4 in.wc", "1080 cfm"], ["0.6 in.wc", "950 cfm"], ["0.8 in.wc", "780 cfm"]]
includes = ["filter"]
[cooling]
kind = "none"
[[duct]]
name = "main trunk"
side = "supply"
from = "plenum"
shape = "8 x 16 in"
length = "22 ft"
fittings = ["trunk start, square"]
runs_in = "basement"
[[duct]]
name = "bedroom run"
side = "supply"
from = "main trunk"
at = "18 ft"
shape = "6 in"
length = "6 ft"
fittings = ["side takeoff, straight", "round elbow 90, adjustable", "round-to-stack boot, 90"]
[[duct]]
name = "bedroom stack"
side = "supply"
from = "bedroom run"
shape = "3-1/4 x 10 in"
length = "9 ft"
hidden = true
fittings = ["stackhead"]
[[outlet]]
name = "bedroom register"
duct = "bedroom stack"
room = "north bedroom"
face = "10 x 6 in"
mount = "low wall"
[[duct]]
name = "bath stack"
side = "supply"
from = "main trunk"
at = "9 ft"
shape = "2-1/4 x 10 in"
length = "11 ft"
turns = "2 square"
state = "removed"
[[outlet]]
name = "old bath outlet"
duct = "bath stack"
room = "bath"
face = "8 x 4 in"
mount = "floor"
state = "removed"
[[duct]]
name = "new bath run"
side = "supply"
from = "main trunk"
at = "20 ft"
length = "17 ft"
fittings = ["top takeoff", "round elbow 90, adjustable", "round elbow 90, adjustable", "floor boot, end entry"]
state = "new"
[[outlet]]
name = "new bath register"
duct = "new bath run"
room = "bath"
mount = "floor"
place = { under = "north window" }
state = "new"
[[duct]]
name = "return drop"
side = "return"
to = "blower"
shape = "14 x 20 in"
length = "18 ft"
fittings = ["return grille into a box", "square elbow into the drop"]
[[outlet]]
name = "hall return"
duct = "return drop"
room = "hall"
face = "30 x 12 in"
mount = "low wall"
)";

constexpr std::string_view heater = R"([heater]
kind = "furnace"
input = "80000 Btu/h"
efficiency = "80 %"
rise = ["40 F", "70 F"]
max_static = "0.50 in.wc"
shares_space_with = "gas water heater"
)";
constexpr std::string_view blower = R"([blower]
points = [["0.2 in.wc", "1180 cfm"], ["0.4 in.wc", "1080 cfm"], ["0.6 in.wc", "950 cfm"], ["0.8 in.wc", "780 cfm"]]
includes = ["filter"]
)";
constexpr const char* crowded_bay = R"(
[[bay]]
name = "bay 4"
clear = ["11-3/8 in", "7-1/2 in"]
pipes = [{ name = "3 in drain", outside = "3-15/16 in", from_west = "1-1/2 in", top = "3/4 in" }]
)";
constexpr std::string_view old_pipes = R"(
[[duct]]
name = "wide leg"
side = "supply"
from = "plenum"
shape = "12 in"
length = "24 ft"
turns = "2 rounded"
runs_in = "basement"
[[outlet]]
name = "hall register"
duct = "wide leg"
room = "hall"
[[duct]]
name = "dead leg"
side = "supply"
from = "plenum"
shape = "9 in"
length = "14 ft"
turns = "1 rounded"
)";
constexpr std::string_view new_run = R"(at = "20 ft"
length = "17 ft"
)";
constexpr std::string_view old_bath_window = R"(size = ["2 ft 4 in", "3 ft 6 in"])";

// Rooms that are no boxes, and layers that nobody knows.
constexpr std::string_view odd_rooms = R"([construction.rafters]
layers = ["asphalt shingles", "board sheathing, 3/4 in", "don't know, 5-1/2 in", "don't know", "plaster on wood lath"]
studs = "24 in"
[construction.cellar_wall]
layers = ["concrete, 8 in", "open stud bay, 3-1/2 in", "gypsum board, 1/2 in"]
studs = "16 in"
[[room]]
name = "den"
use = "living"
storey = 1
size = ["12 ft", "14 ft"]
above = { space = "heated rooms" }
below = { space = "ground", exposed_edge = "24 ft", edge = "R-5, 2 ft down", covering = "carpet" }
[room.wall.north]
faces = "outdoors"
room_grows = "1-3/4 in"
[[room]]
name = "cellar"
storey = 1
floor_area = "150 ft2"
above = { space = "heated rooms" }
below = { space = "ground", depth = "5 ft" }
[[room.surface]]
name = "west wall in the ground"
faces = "ground"
length = "14 ft"
height = "4 ft"
depth = "5 ft"
depth_from = "1 ft"
construction = "cellar_wall"
[[room]]
name = "loft"
storey = 2
floor_area = "90 ft2"
[[room.surface]]
name = "knee wall"
faces = "attic"
length = "9 ft"
height = "4 ft"
[[room.surface]]
name = "roof"
kind = "slope"
faces = "outdoors"
area = "120 ft2"
construction = "rafters"
[[room.window]]
name = "skylight"
wall = "roof"
size = ["2 ft", "3 ft"]
glass = "double"
)";

}  // namespace

std::string with(std::string sheet, std::string_view from, std::string_view to) {
    std::size_t at = sheet.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    for (; at != std::string::npos; at = sheet.find(from, at + to.size())) sheet.replace(at, from.size(), to);
    return sheet;
}

std::string bath_sheet() { return std::string(bath); }
std::string cooled_bath_sheet() {
    return with(with(bath_sheet(), "kind = \"none\"", "kind = \"coil\""), "winter_outdoor = \"3 F\"\n",
                "winter_outdoor = \"3 F\"\nsummer_outdoor = \"88 F\"\nlatitude = \"42.1 deg\"\n");
}

const std::vector<NamedSheet>& sheets() {
    static const std::vector<NamedSheet> all{
        {"as it is", bath_sheet()},
        {"unknown heater and blower", with(with(bath_sheet(), heater, ""), blower, "")},
        {"heater too small", with(bath_sheet(), "80000 Btu/h", "30000 Btu/h")},
        {"blower with nothing left",
         with(bath_sheet(), blower, "[blower]\nmeasured = \"1250 cfm\"\n" + std::string(blower).substr(9))},
        {"every shape given", with(bath_sheet(), new_run, std::string(new_run) + "shape = \"5 in\"\n")},
        {"a stack given", with(bath_sheet(), new_run, std::string(new_run) + "shape = \"3-1/4 x 10 in\"\n")},
        {"a wide cold bath", with(bath_sheet(), old_bath_window, R"(size = ["7 ft", "4 ft 8 in"])")},
        {"high up, cooling", with(cooled_bath_sheet(), "620 ft", "7200 ft")},
        {"shaded from the sun, in the south",
         with(with(cooled_bath_sheet(), "latitude = \"42.1 deg\"\n",
                   "latitude = \"-35 deg\"\nsummer_wet_bulb = \"72 F\"\n"),
              "glass = \"single + storm\"\n",
              "glass = \"single + storm\"\nscreen = true\nshade = \"blind, medium\"\noverhang = \"1 ft\"\n"
              "overhang_above = \"3 in\"\n")},
        {"single glass replaced, a bitter night, two warm rooms",
         with(with(with(bath_sheet(), R"(glass = "single + storm")",
                        "glass = \"single\"\nbecomes = \"triple\""),
                   "\"3 F\"", "\"-30 F\""),
              "name = \"north bedroom\"\n", "name = \"north bedroom\"\nwinter_indoor = \"72 F\"\n")},
        {"a den on a slab, a cellar in the ground, a loft with a skylight",
         with(cooled_bath_sheet(), "[other_rooms]\n", std::string(odd_rooms) + "[other_rooms]\n")},
        {"bath as warm as the house", with(bath_sheet(), "74 F", "70 F")},
        {"a long bare run in the crawl space",
         with(bath_sheet(), new_run, "at = \"20 ft\"\nlength = \"90 ft\"\nruns_in = \"crawl\"\n")},
        {"a heat pump in the cold",
         with(bath_sheet(), "kind = \"furnace\"\ninput = \"80000 Btu/h\"\nefficiency = \"80 %\"",
              "kind = \"heat pump\"\noutput = \"64000 Btu/h\"")},
        {"a crowded bay",
         with(bath_sheet(), new_run, std::string(new_run) + "through = \"bay 4\"\n") + crowded_bay},
        {"a vented crawl space, ventilated with recovery, fans",
         with(with(bath_sheet(), "[heater]\n",
                   "[space.crawl]\nvented = true\nheat = \"500 Btu/h\"\n[ventilation]\nsupply = \"50 cfm\"\n"
                   "exhaust = \"70 cfm\"\nrecovery = \"65 %\"\n[heater]\n"),
              new_run, "at = \"20 ft\"\nlength = \"30 ft\"\nruns_in = \"crawl\"\n")},
        {"average leakage, shared by volume",
         with(bath_sheet(), "air_leakage = \"leaky\"", "air_leakage = \"average\"")},
        {"old wide pipes, a cooled run in the crawl space",
         with(cooled_bath_sheet(), new_run, "at = \"20 ft\"\nlength = \"30 ft\"\nruns_in = \"crawl\"\n") +
             std::string(old_pipes)},
        {"no pressure for the ducts",
         with(bath_sheet(), "[blower]\n", "[blower]\nstatic = \"0.01 in.wc\"\n")},
    };
    return all;
}

house::Survey survey_of(const std::string& sheet) {
    const sheet::Read read = sheet::read(sheet);
    for (const house::Mistake& mistake : read.mistakes)
        ADD_FAILURE() << mistake.place.line << ": " << mistake.text << "; " << mistake.remedy;
    return read.survey;
}

const questions::BranchAnswer& branch_of(const std::string& sheet) {
    static std::map<std::string, questions::BranchAnswer> known;
    const auto at = known.find(sheet);
    if (at != known.end()) return at->second;
    return known.emplace(sheet, questions::answer_branch(survey_of(sheet))).first->second;
}
questions::LoadsAnswer loads_of(const std::string& sheet) {
    return questions::answer_loads(survey_of(sheet));
}
const questions::TrunkAnswer& trunk_of(const std::string& sheet) {
    static std::map<std::string, questions::TrunkAnswer> known;
    const auto at = known.find(sheet);
    if (at != known.end()) return at->second;
    return known.emplace(sheet, questions::answer_trunk(survey_of(sheet))).first->second;
}
questions::CheckAnswer check_of(const std::string& sheet) { return questions::check_sheet(survey_of(sheet)); }

}  // namespace report_test
