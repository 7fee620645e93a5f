// The fittings by plain name, with what each loses at one size and flow.
#include <fmt/format.h>

#include "ducts/crowded_fittings.hpp"
#include "ducts/friction_rate.hpp"
#include "report/counting_units.hpp"
#include "report/figures.hpp"
#include "report/pages.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::FittingsAnswer;
using questions::ListedFitting;
using units::System;

std::string feet_or_metres(units::Length length, System system) {
    return units::decimal(count(length, system), system == System::us ? 0 : 1);
}

// What the shape is as a pipe, where it is none.
std::string size_words(const house::Shape& shape, System system) {
    const std::string size = shape_text(shape, system);
    if (std::holds_alternative<house::Round>(shape)) return with_article(size + " pipe");
    return fmt::format("{} duct (carries as {} pipe)", with_article(size),
                       with_article(as_round_text(shape, system)));
}

Table table_of(const FittingsAnswer& answer, System system) {
    const std::string pressure = units::write(units::Pressure(), system).unit;
    const std::string_view length = unit_of(units::Length(), system).name;
    Table table;
    table.columns = {{"fitting", Align::left},
                     {"loses, " + pressure, Align::decimal},
                     {fmt::format("as pipe, {}", length), Align::decimal},
                     {"low to high", Align::left},
                     {"C", Align::decimal},
                     {"basis", Align::left}};
    for (const ListedFitting& row : answer.fittings)
        table.rows.push_back({false,
                              {std::string(row.fitting.name), units::write(row.loss, system).number,
                               feet_or_metres(row.equivalent, system),
                               feet_or_metres(row.range.low / answer.counted_at, system) + "-" +
                                   feet_or_metres(row.range.high / answer.counted_at, system),
                               units::decimal(row.coefficient, 2), std::string(row.fitting.mark)}});
    return table;
}

Note counted(const FittingsAnswer& answer, System system) {
    std::string text =
        "the pipe of the same size that loses as much at the same flow; at another size or flow it is "
        "another "
        "length, so no length is carried over";
    if (answer.counted_at > answer.friction)
        text += fmt::format(". So little air loses next to nothing per length: here the length is that at {}",
                            figure(answer.counted_at, system));
    return {"as pipe", {text}};
}

Note crowded() {
    return {
        "close together",
        {fmt::format("fittings less than {:.0f} pipe widths apart lose more or less than their sum; they are "
                     "counted in full. A square elbow at the blower's inlet without straight duct before it "
                     "adds up to C {:.1f} of its own: keep {:.0f} widths straight, or turning vanes in it",
                     ducts::far_apart_diameters, ducts::inlet_allowance(0), ducts::far_apart_diameters)}};
}

}  // namespace

Page fittings_page(const FittingsAnswer& answer, System system) {
    Page page;
    page.headline = fmt::format("{} fittings, each in {} with {}: {}, {} of friction", answer.fittings.size(),
                                size_words(answer.asked.duct, system), figure(answer.asked.flow, system),
                                figure(answer.speed, system), figure(answer.friction, system));
    page.verdict = fmt::format("Those at a trunk: off or into {} with {} there, {}.",
                               size_words(answer.asked.trunk, system),
                               figure(answer.asked.trunk_flow, system), figure(answer.trunk_speed, system));
    page.tables.push_back(table_of(answer, system));
    page.notes = {counted(answer, system),
                  crowded(),
                  {"angles",
                   {"an elbow may be written with the angle it turns, as \"round elbow 60, smooth\"; a "
                    "damper with the angle it is shut by, as \"damper, 35 degrees\""}},
                  {"not here",
                   {"write what the maker or a manual says: an equivalent length as \"40 ft\", or a "
                    "coefficient as \"C 0.35\"; or leave the fittings out and count turns = \"3 square\""}},
                  {"basis",
                   {"read: in published tables; derived: worked out from them; memory: recalled; "
                    "estimate: no published residential value. Good to 30 % at best, an estimate to "
                    "50 %. --json has every source"}}};
    return page;
}

}  // namespace report
