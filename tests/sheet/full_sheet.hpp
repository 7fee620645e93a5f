// An invented house that uses every word of the sheet; no value stands in it twice where a test looks for its
// place.
#pragma once

#include <string_view>

inline constexpr std::string_view full_sheet = R"(# A house on a slope
sheet = 1
[house]
name = "Quarry Cottage"
built = 1908
storeys = 2
frame = "balloon"
air_leakage = "very leaky"
north = "-14 deg"
bedrooms = 5
roof = "tile, dark"
[site]
elevation = "1000 ft"
winter_outdoor = "-4 F"
winter_indoor = "68 F"
latitude = "44.5 deg"
summer_outdoor = "91 F"
summer_indoor = "76 F"
summer_wet_bulb = "73 F"
daily_range = "22 F"
[thermostat]
room = "landing"
[construction.outer_wall]
layers = ["clapboard", "board sheathing, 3/4 in"]
studs = "24 in"
framing = "25 %"
u = "0.25 Btu/h.ft2.F"
r = "R-13"
[construction.attic_floor]
layers = ["loose wool, 8 in"]
[space.porch]
winter = "40 F"
[space.attic]
winter = "20 F"
[[room]]
name = "washroom"
use = "bath"
storey = 1
corner = ["1 ft", "0 ft"]
size = ["6 ft", "8 ft"]
ceiling = "7 ft 10 in"
winter_indoor = "75 F"
above = { space = "attic", construction = "attic_floor", becomes = "thick_floor" }
below = { space = "crawl", construction = "plank_floor" }
transfer = "12 x 5 in"
transfer_free_area = "44 in2"
[room.wall.west]
faces = "outdoors"
construction = "outer_wall"
becomes = "warm_wall"
[room.wall.north]
faces = "landing room"
[[room.window]]
name = "west window"
wall = "west"
centre = "3 ft 3 in"
size = ["2 ft", "3 ft"]
sill = "2 ft 10 in"
glass = "single"
becomes = "double, low-e"
u = "0.9 Btu/h.ft2.F"
shgc = "0.55"
screen = false
shade = "blind, white"
shade_closed = "70 %"
overhang = "1 ft 9-1/2 in"
overhang_above = "7 in"
[[room.door]]
wall = "east"
centre = "5 ft 5 in"
width = "2 ft 6 in"
height = "6 ft 6 in"
u = "0.4 Btu/h.ft2.F"
undercut = "5/8 in"
shut = true
swings = "in, hinged south"
[[room.fixture]]
name = "claw-foot tub"
kind = "tub"
corner = ["1 ft 11 in", "2 ft 11 in"]
size = ["2 ft 5 in", "4 ft 7 in"]
[[room]]
name = "landing"
[other_rooms]
floor_area = "900 ft2"
heat_loss = "30000 Btu/h"
outlets = 7
pipe = "5 in"
reach = ["4 ft 1 in", "21 ft"]
turns = "2 rounded"
from = 'trunk'
[heater]
kind = "heat pump"
input = "80000 Btu/h"
output = "64000 Btu/h"
cold_output = "41000 Btu/h"
efficiency = "81 %"
rise = ["35 F", "65 F"]
max_static = "0.5 in.wc"
duct_loss = "12 %"
adjusted_for_elevation = true
shares_space_with = "gas dryer"
[blower]
kind = "constant airflow"
up_to = "0.85 in.wc"
points = [["0.2 in.wc", "1180 cfm"], ["0.4 in.wc", "1080 cfm"]]
measured = "1010 cfm"
static = "0.61 in.wc"
includes = ["filter", "other"]
[cooling]
kind = "coil"
airflow = "900 cfm"
[duct_leakage]
sealing = "joints and seams"
supply = "9 %"
return = "13 %"
measured = "160 cfm"
at = "25 Pa"
[[device]]
name = "pleated filter"
kind = "filter"
drop = "0.21 in.wc"
at = "1000 cfm"
[[duct]]
name = "trunk"
side = "supply"
from = "plenum"
at = "18 ft"
shape = "8 x 16 in"
length = "22 ft"
fittings = ["trunk start, square", "side takeoff"]
turns = "3 square"
runs_in = "heated rooms"
wrap = "R-6"
damper = "40 deg"
hidden = true
state = "removed"
[[duct]]
name = "drop"
side = "return"
to = "blower"
shape = { around = "19 in" }
state = "new"
[[duct]]
name = "branch"
shape = "4 in"
[[outlet]]
name = "floor register"
duct = "branch"
room = "washroom in plan"
face = "10 x 6 in"
mount = "toe kick"
place = { under = "the west window" }
damper = "half"
state = "found"
[[outlet]]
place = { wall = "south", centre = "1 ft 7 in" }
[[outlet]]
place = { point = ["1 ft 8 in", "1 ft 9 in"] }
[[floor]]
name = "ground floor"
under = "storey 1"
joists_run = "east-west"
first = "8-1/2 in"
spacing = "16-1/4 in"
joist = ["1-3/4 in", "9-1/4 in"]
sisters = [{ joist = 3, side = "north", add = "1-5/8 in" }]
[[bay]]
name = "drain bay"
framing = "joists"
clear = ["14-1/8 in", "9-3/8 in"]
floor = "ground floor of joists"
between = [2, 3]
clearance = "3/8 in"
pipes = [{ name = "3 in drain", outside = "3-15/16 in", from_west = "1-1/8 in", top = ["2-1/8 in", "2-3/8 in"] }, { size = "2 in PVC", bottom = "1-3/8 in", across = true }]
[[reading]]
what = "bag"
at = "register as read"
value = "3.1 s"
bag = "25 x 35 in"
volume = "28 gal"
[[reading]]
what = "static"
at = "return plenum"
value = "-0.19 in.wc"
)";
