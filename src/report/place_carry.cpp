// The chosen place in the sheet's own words, ready to paste.
#include <fmt/format.h>

#include "report/figures.hpp"
#include "report/place_parts.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using registers::Location;
using registers::Where;

constexpr units::Length hardly_off = 0.5 * units::unit::inch;

// Text of the sheet in its quotes. It does not part at the end of a line: the sheet would not read it.
std::string quoted(const std::string& text) {
    std::string written = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') written += '\\';
        written += c;
    }
    return unbroken(written + "\"");
}

std::string quoted(units::Length length, units::System system) {
    return quoted(units::write(length, system).text());
}

std::string place_words(const PlaceView& view, const Location& location) {
    if (location.where == Where::under_window && abs(location.off_centre) < hardly_off)
        return "{ under = " + quoted(location.name) + " }";
    const bool at_a_wall = location.wall && location.where != Where::toe_kick;
    if (at_a_wall)
        return fmt::format("{{ wall = {}, centre = {} }}", quoted(std::string(house::word(*location.wall))),
                           quoted(location.along, view.system));
    return fmt::format("{{ point = [{}, {}] }}", quoted(location.middle.east, view.system),
                       quoted(location.middle.north, view.system));
}

std::string fittings_words(const PlaceView& view) {
    std::string words;
    for (const house::CatalogueName& fitting : view.answer.fittings)
        words += (words.empty() ? "" : ", ") + quoted(fitting.text);
    return "fittings = [" + words + "]";
}

std::string run_heading(const PlaceView& view) {
    const house::Duct* duct = view.answer.house.duct(view.answer.outlet.duct);
    if (view.answer.run_of_the_sheet && duct) return "under the [[duct]] \"" + duct->name + "\":";
    return "under a new [[duct]] of its own (the sheet plans no run; this is the one that is there, led on):";
}

}  // namespace

Note carry_over_note(const PlaceView& view) {
    if (!view.answer.chosen) return {};
    const questions::Place& choice = view.answer.choice();
    return {
        "to carry over",
        {"under the [[outlet]] \"" + view.answer.outlet.name + "\":",
         unbroken("place = ") + place_words(view, choice.location),
         unbroken("mount = ") + quoted(std::string(house::word(choice.location.mount))), run_heading(view),
         unbroken("length = ") + quoted(choice.figures->led, view.system), fittings_words(view)}};
}

}  // namespace report
