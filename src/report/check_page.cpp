#include <fmt/format.h>

#include <algorithm>

#include "report/assumed.hpp"
#include "report/figures.hpp"
#include "report/pages.hpp"

namespace report {
namespace {

std::string counts(const house::House& house) {
    std::vector<std::string> things{counted(house.rooms.size(), "room"), counted(house.ducts.size(), "duct"),
                                    counted(house.outlets.size(), "outlet")};
    if (house.other_rooms)
        things.push_back(
            "the rooms not described with " +
            counted(static_cast<std::size_t>(std::max(0, house.other_rooms->outlets)), "supply outlet"));
    return listed(things);
}

std::string branch_can_be_asked(const questions::CheckAnswer& answer) {
    if (answer.new_outlets == 0)
        return "sillflow branch: not yet; it needs a new supply outlet (a [[duct]] and its [[outlet]] with "
               "state = "
               "\"new\"), or a name with --outlet";
    if (answer.new_outlets == 1) return "sillflow branch: what pipe the new supply outlet needs";
    return fmt::format("sillflow branch --outlet NAME: what pipe one of the {} new supply outlets needs",
                       answer.new_outlets);
}

std::string trunk_can_be_asked(const questions::CheckAnswer& answer) {
    if (answer.new_outlets == 0) return "sillflow trunk: not yet, for the same reason";
    return fmt::format("sillflow trunk{}: whether ducts, blower and heater can take it, and who gives up air",
                       answer.new_outlets == 1 ? "" : " --outlet NAME");
}

Note what_to_ask(const questions::CheckAnswer& answer) {
    return {"ask it now",
            {std::string("sillflow loads: what heat every room loses") +
                 (answer.changes ? ", as planned and before the work" : ""),
             branch_can_be_asked(answer), trunk_can_be_asked(answer),
             "sillflow place --room NAME: where in a room its register should go"}};
}

std::string used_for(const house::Assumption& assumption) {
    constexpr std::size_t named = 3;
    std::vector<std::string> names(assumption.used_for.begin(),
                                   assumption.used_for.begin() + static_cast<std::ptrdiff_t>(std::min(
                                                                     named, assumption.used_for.size())));
    if (assumption.used_for.size() > named)
        names.push_back(fmt::format("{} more", assumption.used_for.size() - named));
    return listed(names);
}

Note what_is_assumed(const questions::CheckAnswer& answer, units::System system) {
    if (answer.assumptions.empty()) return {"assumed", {"nothing: all of it was measured"}};
    Note note{"assumed", {}};
    for (const house::Assumption& assumption : answer.assumptions) {
        const house::DefaultRow& row = house::default_row(assumption.id);
        note.lines.push_back(fmt::format("{}: {}, for {}; {}", row.what, default_text(row, system),
                                         used_for(assumption), row.basis));
    }
    return note;
}

}  // namespace

Page check_page(const questions::CheckAnswer& answer, PageOptions options) {
    Page page;
    page.headline = fmt::format("the sheet is right: {}, {}", answer.planned.name, counts(answer.planned));
    page.verdict =
        answer.assumptions.empty()
            ? "Nothing in it had to be assumed."
            : fmt::format("{} not measured and assumed; what is measured instead narrows the answers.",
                          counted(answer.assumptions.size(), "value") +
                              (answer.assumptions.size() == 1 ? " was" : " were"));
    page.notes = {what_to_ask(answer), what_is_assumed(answer, options.system)};
    return page;
}

}  // namespace report
