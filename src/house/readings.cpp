// What was measured: where, and as what. A reading belongs to the house as found; one at an outlet that is
// removed is not there in the planned house.
#include <algorithm>

#include "house/bag.hpp"
#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

constexpr std::string_view supply_plenum = "supply plenum", return_plenum = "return plenum";

// Where each kind may be read.
bool at_outlets(ReadingKind what) {
    return what == ReadingKind::bag || what == ReadingKind::airflow || what == ReadingKind::temperature;
}
bool at_rooms(ReadingKind what) { return what == ReadingKind::temperature; }
bool at_plenums(ReadingKind what) {
    return what == ReadingKind::static_pressure || what == ReadingKind::temperature;
}

template <class Thing>
void add_names(std::vector<std::string_view>& names, const std::vector<Thing>& things) {
    for (const Thing& thing : things)
        if (!name_of(thing).empty()) names.push_back(name_of(thing));
}

void blame_where(Work& work, ReadingKind what, const Given<std::string>& at) {
    std::vector<std::string_view> known;
    if (at_outlets(what)) add_names(known, work.survey.outlets);
    if (at_rooms(what)) add_names(known, work.survey.rooms);
    if (at_plenums(what)) known.insert(known.end(), {supply_plenum, return_plenum});
    Mistake mistake{"no " + std::string(word(what)) + " reading can be taken at '" + at.value + "'",
                    {},
                    {},
                    at.place,
                    std::nullopt,
                    false};
    const std::string nearest = units::nearest_word(at.value, known);
    if (!nearest.empty()) mistake.under = "did you mean '" + nearest + "'?";
    if (known.empty()) mistake.remedy = "the sheet describes no outlet";
    for (const std::string& name : units::nearest_words(at.value, known, 3))
        mistake.remedy += (mistake.remedy.empty() ? "the nearest are '" : ", '") + name + "'";
    work.ledger.blame(std::move(mistake));
}

// The outlet at that position of the sheet; false where no reading of it counts at this stage.
bool take_outlet(Work& work, const Given<std::string>& at, int index, Reading& reading) {
    const SurveyOutlet& outlet = work.survey.outlets[static_cast<std::size_t>(index)];
    if (outlet.state && outlet.state->value == State::added)
        work.ledger.blame(Mistake{"the outlet " + at.value + " is new: nothing can be read there yet",
                                  {},
                                  "readings are those of the house as found",
                                  at.place,
                                  outlet.state->place,
                                  false});
    reading.at = OutletId{index};
    return exists(work, outlet.state);
}

bool find_where(Work& work, const SurveyReading& written, Reading& reading) {
    if (reading.what == ReadingKind::temperature_rise) {
        if (written.at)
            work.ledger.blame(written.at->place, "a temperature rise is that of the heater",
                              "leave 'at' out");
        return true;
    }
    if (!written.at) {
        work.ledger.blame_missing(written.place, "where this reading was taken",
                                  reading.what == ReadingKind::static_pressure ? "at = \"supply plenum\""
                                                                               : "at = \"bath register\"");
        return false;
    }
    const std::string& at = written.at->value;
    if (at_plenums(reading.what) && (at == supply_plenum || at == return_plenum)) {
        reading.at = Plenum{at == supply_plenum ? DuctSide::supply : DuctSide::return_side};
        return true;
    }
    const auto outlet = at_outlets(reading.what) ? find_named(work.survey.outlets, at) : std::nullopt;
    const auto room = at_rooms(reading.what) ? find_named(work.survey.rooms, at) : std::nullopt;
    if (outlet && room)
        work.ledger.blame(written.at->place, "both a room and an outlet are called '" + at + "'",
                          "give the outlet another name");
    if (outlet) return take_outlet(work, *written.at, *outlet, reading);
    if (room) reading.at = RoomId{*room};
    if (!room) blame_where(work, reading.what, *written.at);
    return room.has_value();
}

units::Volume bag_of(Work& work, const SurveyReading& written) {
    if (written.bag && written.volume)
        work.ledger.blame(Mistake{"the bag has both a size and a volume",
                                  {},
                                  "keep one of them",
                                  written.volume->place,
                                  written.bag->place});
    if (written.volume) return written.volume->value;
    const Two flat = work.ledger.required(written.bag, written.place, "the size of the bag",
                                          "bag = \"26 x 36 in\", laid flat");
    return written.bag ? filled_bag(flat) : units::Volume();
}

// Measured in the return plenum it is suction, with or without the sign.
units::Pressure against_the_room(Work& work, const Reading& reading, units::Pressure read, Place place) {
    const auto* plenum = std::get_if<Plenum>(&reading.at);
    if (plenum && plenum->side == DuctSide::return_side) return -abs(read);
    if (read.si() < 0)
        work.ledger.blame(place, "the blower blows into the supply plenum, and draws nothing from it",
                          "write the pressure in it without a sign, or at = \"return plenum\"");
    return read;
}

// The value as the house keeps it; a bag without a size has been blamed.
struct Kept {
    Work& work;
    const SurveyReading& written;
    const Reading& reading;
    decltype(Reading::value) operator()(units::Duration time) const {
        const units::Volume bag = bag_of(work, written);
        return BagFilled{bag, time, bag.si() > 0 ? airflow_into_bag(bag, time) : units::Airflow()};
    }
    decltype(Reading::value) operator()(units::Pressure read) const {
        return against_the_room(work, reading, read, written.value->place);
    }
    template <class Q>
    decltype(Reading::value) operator()(Q read) const {
        return read;
    }
};

void build_reading(Work& work, const SurveyReading& written) {
    if (!written.what)
        return work.ledger.blame_missing(written.place, "what was read", "what = \"bag\", or \"static\"");
    Reading reading;
    reading.what = written.what->value;
    reading.place = written.place;
    const bool is_bag = reading.what == ReadingKind::bag;
    if (!is_bag && (written.bag || written.volume))
        work.ledger.blame(written.bag ? written.bag->place : written.volume->place, "this reading has no bag",
                          "write what = \"bag\", or leave the bag out");
    const bool here = find_where(work, written, reading);
    if (!written.value)
        return work.ledger.blame_missing(written.place, "the value of this reading",
                                         is_bag ? "value = \"3.1 s\"" : "value = ... with its unit");
    reading.value = std::visit(Kept{work, written, reading}, written.value->value);
    if (here) work.house.readings.push_back(reading);
}

}  // namespace

void build_readings(Work& work) {
    for (const SurveyReading& written : work.survey.readings) build_reading(work, written);
}

}  // namespace house
