// Feeds any bytes to the sheet reader: it must not throw, must point into the text, must say something with
// every mistake, and must let nothing into the survey that is not a finite number or not UTF-8.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "sheet/code_points.hpp"
#include "sheet/read.hpp"

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void check_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const auto c = sheet::code_point_at(text, at);
        require(c.bytes > 0);
        at += c.bytes;
    }
}

void check(const house::Place& place) {
    require(place.line >= 1 && place.column >= 1 && place.end_column > place.column);
}

int lines_in(std::string_view text) {
    int lines = 1;
    for (const char c : text) lines += c == '\n' ? 1 : 0;
    return lines;
}

void check(const house::Mistake& mistake, int lines) {
    require(!mistake.text.empty());
    check_utf8(mistake.text);
    check_utf8(mistake.under);
    check_utf8(mistake.remedy);
    check(mistake.place);
    require(mistake.place.line <= lines);
    if (mistake.second) check(*mistake.second);
}

// What a survey holds, down to its numbers, texts and places.
void check(double number) { require(std::isfinite(number)); }
void check(int) {}
void check(const std::string& text) { check_utf8(text); }
void check(units::Temperature temperature) { check(temperature.si()); }
void check(const units::LeakageTest& test) { check(test.at_50_pascal.si()); }
template <class D>
void check(units::Quantity<D> quantity) {
    check(quantity.si());
}
template <class Q>
void check(const std::pair<Q, Q>& two) {
    check(two.first);
    check(two.second);
}
void check(const house::Round& round) { check(round.diameter); }
void check(const house::Rectangular& sides) { check(sides.width), check(sides.height); }
void check(const house::FlatOval& oval) { check(oval.major), check(oval.minor); }
void check(const house::BlowerPoint& point) { check(point.external_static), check(point.airflow); }
void check(const house::Turns& turns) { require(turns.count >= 0); }
void check(house::LeakageClass) {}
template <class... T>
void check(const std::variant<T...>& one) {
    std::visit([](const auto& held) { check(held); }, one);
}
template <class T>
void check(const house::Given<T>& given) {
    check(given.value);
    check(given.place);
}
template <class T>
void check(const std::optional<T>& maybe) {
    if (maybe) check(*maybe);
}
template <class T>
void check(const std::vector<T>& several) {
    for (const T& one : several) check(one);
}

template <class... T>
void check_all(const T&... fields) {
    (check(fields), ...);
}

void check(const house::SurveyConstruction& c) {
    check_all(c.name, c.place, c.layers, c.studs, c.framing, c.u, c.r);
}
void check(const house::SurveyWall& w) { check_all(w.place, w.faces, w.construction, w.becomes); }
void check(const house::SurveyHorizontal& h) { check_all(h.place, h.space, h.construction, h.becomes); }
void check(const house::SurveyWindow& w) {
    check_all(w.place, w.name, w.glass, w.becomes, w.centre, w.sill, w.size, w.u);
}
void check(const house::SurveyDoor& d) { check_all(d.place, d.centre, d.width, d.height, d.u); }
void check(const house::SurveyFixture& f) { check_all(f.place, f.name, f.corner, f.size); }
void check(const house::SurveyRoom& r) {
    check_all(r.place, r.name, r.storey, r.corner, r.size, r.ceiling, r.winter_indoor);
    if (r.above) check(*r.above);
    if (r.below) check(*r.below);
    for (const auto& wall : r.walls) check(wall);
    for (const auto& window : r.windows) check(window);
    for (const auto& door : r.doors) check(door);
    for (const auto& fixture : r.fixtures) check(fixture);
}
void check(const house::SurveyOtherRooms& r) {
    check_all(r.place, r.floor_area, r.heat_loss, r.outlets, r.pipe, r.reach, r.turns);
}
void check(const house::SurveyHeater& h) {
    check_all(h.place, h.input, h.output, h.efficiency, h.rise, h.max_static, h.shares_space_with);
}
void check(const house::SurveyBlower& b) { check_all(b.place, b.points, b.measured); }
void check(const house::SurveyDevice& d) { check_all(d.place, d.name, d.drop, d.at); }
void check(const house::SurveyDuct& d) {
    check_all(d.place, d.name, d.from, d.to, d.at, d.length, d.around, d.shape, d.stretch, d.fittings,
              d.turns, d.wrap);
}
void check(const house::SurveyOutlet& o) {
    check_all(o.place, o.name, o.duct, o.room, o.face, o.under, o.centre, o.point);
}

void check(const house::Survey& survey) {
    check_all(survey.house_name, survey.built, survey.storeys, survey.air_leakage, survey.site.elevation,
              survey.site.winter_outdoor, survey.site.winter_indoor, survey.thermostat_room);
    for (const auto& construction : survey.constructions) check(construction);
    for (const auto& [space, s] : survey.spaces)
        check_all(s.place, s.winter, s.floor_area, s.roof_area, s.outer_area, s.height, s.perimeter,
                  s.above_ground, s.construction, s.roof, s.heat);
    for (const auto& room : survey.rooms) check(room);
    if (survey.other_rooms) check(*survey.other_rooms);
    if (survey.heater) check(*survey.heater);
    if (survey.blower) check(*survey.blower);
    for (const auto& device : survey.devices) check(device);
    for (const auto& duct : survey.ducts) check(duct);
    for (const auto& outlet : survey.outlets) check(outlet);
    for (const auto& floor : survey.floors)
        check_all(floor.place, floor.name, floor.under, floor.spacing, floor.joist, floor.first);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const sheet::Read read = sheet::read(text);
    const int lines = lines_in(text);
    for (const house::Mistake& mistake : read.mistakes) check(mistake, lines);
    check(read.survey);
    return 0;
}
