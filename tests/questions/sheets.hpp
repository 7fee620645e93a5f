// The sheets that the tests of the questions ask about, as text, and the survey read from one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "house/build.hpp"
#include "house/survey.hpp"

namespace sheets {

// A leaky two-storey house with a bath at 74 F that gets a new outlet, a bedroom and the rest as a lump; most
// things are assumed.
std::string bath();
// A sheet of cases/, by its name.
std::string a_case(const std::string& name);
// A house in pieces: its tables without [[duct]] and [[outlet]], and each of those by itself.
struct Pieces {
    std::string top;
    std::vector<std::string> ducts_and_outlets;
};
Pieces pieces_of(const std::string& sheet);
// The same house without what is new in it.
std::string without_the_new(const std::string& sheet);

// The sheet with `from` replaced by `to` at its one place; fails the test where it is not there just once.
std::string with(std::string sheet, std::string_view from, std::string_view to);

// Fails the test where the sheet cannot be read or built.
house::Survey survey(const std::string& sheet);

// A house of one room whose sheet is written in feet, F and Btu/h, or in metres, C and watts.
struct OneRoom {
    double width = 4, depth = 3, ceiling = 2.5;    // m
    double window_width = 1, window_height = 1.2;  // m
    double wall_u = 1.2, window_u = 2.8;           // W/m2K
    double outdoors = -15, indoors = 20;           // C
    double other_floor = 90;                       // m2
    double other_loss = 0;                         // W, stated; 0: estimated from the den's
    double output = 15'000;                        // W
    double airflow = 0.5;                          // m3/s
    double run = 6;                                // m, the new duct
    double max_static = 150;                       // Pa
    double surroundings = 15;                      // C, of the crawl space in which the new duct runs
    double wrap = 0.5;                             // m2K/W
    std::string leakage = "average";
    std::string sheet(bool si = true) const;
};

}  // namespace sheets
