// Every room before and after.
#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

// The unit stands in the first row and not again.
class Cells {
  public:
    template <class Q>
    std::string operator()(Q quantity, units::System system) {
        const bool first = !said_;
        said_ = true;
        return first ? figure(quantity, system) : number(quantity, system);
    }

  private:
    bool said_ = false;
};

}  // namespace

Table rooms_table(const TrunkView& view) {
    const units::System system = view.system;
    Table table;
    table.columns = {{"room", Align::left}};
    if (view.has_before()) table.columns.push_back({"supply air before", Align::decimal});
    table.columns.push_back({view.has_before() ? "after" : "supply air", Align::decimal});
    table.columns.push_back({"needs", Align::decimal});
    if (view.has_before()) table.columns.push_back({"reaches before", Align::decimal});
    table.columns.push_back({view.has_before() ? "after" : "reaches", Align::decimal});
    table.columns.push_back({"wanted", Align::decimal});
    Cells before, after, needs, was, is, wanted;
    for (const questions::RoomShare& share : view.answer.rooms) {
        Row row;
        row.cells.push_back(view.name_of(share.room));
        // A room that was not heated at all: how cold it stood is no matter.
        const bool had_air = share.before.si() > 0;
        if (view.has_before()) row.cells.push_back(had_air ? before(share.before, system) : "..");
        row.cells.push_back(after(share.after, system));
        const bool possible = share.needs && *share.needs <= view.answer.blower_after.airflow;
        row.cells.push_back(possible ? needs(*share.needs, system) : "not possible");
        if (view.has_before()) row.cells.push_back(had_air ? was(share.reached_before, system) : "..");
        row.cells.push_back(is(share.reached_after, system));
        row.cells.push_back(wanted(share.wanted, system));
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace report
