// What each command does, once its words are read.
//
// Exit status: 0 yes or probably (and answered, where there is no verdict), 1 no or probably not, 2 the
// sheet, the command or a file is wrong, 3 no solution was found.
#pragma once

#include <optional>
#include <string>

#include "ducts/stock_sizes.hpp"
#include "house/words.hpp"
#include "units/write.hpp"

namespace command_line {

inline constexpr int yes = 0, no = 1, wrong = 2, no_solution = 3;

struct Options {
    std::string file;
    std::string outlet;                                        // branch, trunk: which new outlet
    std::string room;                                          // loads: which room alone; place
    std::string window;                                        // place: only at this one
    std::optional<house::Mount> mount;                         // place: only these
    std::string svg;                                           // place: the drawing goes here
    std::optional<std::string> size, flow, trunk, trunk_flow;  // fittings; empty: the usual ones
    ducts::Stock stock = ducts::Stock::us;                     // branch
    units::System system = units::System::us;
    bool json = false;
    bool show_work = false;
    bool all_assumptions = false;
};

int branch(const Options& options);
int trunk(const Options& options);
int place(const Options& options);
int loads(const Options& options);
int check(const Options& options);
int start(const Options& options);
int fittings(const Options& options);

}  // namespace command_line
