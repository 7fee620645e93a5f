// Where the house stands and how warm what surrounds its rooms is.
#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

// The house's temperature: as given, else that of the thermostat's room, else the default.
units::Temperature house_temperature(Work& work) {
    const Survey& survey = work.survey;
    if (survey.site.winter_indoor) return survey.site.winter_indoor->value;
    if (survey.thermostat_room)
        if (const auto room = find_named(survey.rooms, survey.thermostat_room->value))
            if (const auto& wanted = survey.rooms[static_cast<std::size_t>(*room)].winter_indoor)
                return wanted->value;
    return units::Temperature(work.ledger.take(DefaultId::winter_indoor, "the house"));
}

DefaultId leakage_default(LeakageClass leakage) {
    return static_cast<DefaultId>(static_cast<int>(DefaultId::leakage_tight) + static_cast<int>(leakage));
}

// Without a word on leakage, the year tells: the classes are those of typical houses of their time (ibid.
// table 3).
LeakageClass leakage_of_year(const Maybe<int>& built) {
    return !built || built->value < 1970 ? LeakageClass::leaky : LeakageClass::average;
}

// From here on a test is that of a leaky house: 4.0 cm2/m2, half-way between average and leaky, of a house
// with 0.74 m2 of exposed surface to the m3 (loads/infiltration.hpp; derived).
constexpr units::AirChange leaky_test = 14 * units::unit::per_hour;

// Once the sheet's word is known the way of sharing stays, whatever the class is weighed at.
void build_leakage(Work& work) {
    const auto& written = work.survey.air_leakage;
    if (written)
        if (const auto* test = std::get_if<units::LeakageTest>(&written->value)) {
            work.house.air_leakage = *test;
            work.house.leakage_sharing =
                test->at_50_pascal >= leaky_test ? LeakageSharing::by_surface : LeakageSharing::by_volume;
            return;
        }
    const LeakageClass leakage =
        written ? std::get<LeakageClass>(written->value) : leakage_of_year(work.survey.built);
    const char* why = written             ? "the house, as the sheet says"
                      : work.survey.built ? "the house, from the year it was built"
                                          : "the house, of unknown age";
    work.house.air_leakage = work.ledger.take(leakage_default(leakage), why);
    work.house.leakage_sharing =
        leakage >= LeakageClass::leaky ? LeakageSharing::by_surface : LeakageSharing::by_volume;
}

// Beyond what was ever measured where people live.
constexpr units::Temperature coldest_winter = units::unit::fahrenheit(-90),
                             warmest_winter = units::unit::fahrenheit(100);

}  // namespace

void build_site(Work& work) {
    const Survey& survey = work.survey;
    Ledger& ledger = work.ledger;
    House& house = work.house;
    house.name = survey.house_name ? survey.house_name->value : "the house";
    house.built = survey.built ? survey.built->value : 0;
    house.storeys = ledger.required(survey.storeys, survey.house_place, "the number of storeys of the house",
                                    "storeys = 2 under [house]");
    house.site.winter_outdoor = ledger.required(
        survey.site.winter_outdoor, survey.site.place, "the winter design temperature outdoors",
        "winter_outdoor = \"3 F\" under [site]: the local 99 % figure");
    house.site.winter_indoor = house_temperature(work);
    if (survey.thermostat_room)
        if (const auto room = find_named(survey.rooms, survey.thermostat_room->value))
            house.thermostat = RoomId{*room};
    house.space_winter.fill(house.site.winter_indoor);
    house.space_winter[static_cast<std::size_t>(Space::outdoors)] = house.site.winter_outdoor;
    house.site.elevation = ledger.or_default(survey.site.elevation, DefaultId::elevation, "the site");
    if (survey.site.winter_outdoor &&
        (house.site.winter_outdoor < coldest_winter || house.site.winter_outdoor > warmest_winter))
        ledger.blame(survey.site.winter_outdoor->place, "no inhabited place has such a winter night",
                     "give the 99 % heating temperature of the place, between -90 F and 100 F");
    else if (house.site.winter_indoor <= house.site.winter_outdoor && survey.site.winter_outdoor)
        ledger.blame(survey.site.winter_outdoor->place,
                     "outdoors is not colder than indoors on the design night",
                     "give the 99 % heating temperature of the place");
    if (survey.thermostat_room && !find_named(survey.rooms, survey.thermostat_room->value) &&
        survey.thermostat_room->value != word(Space::heated_rooms))
        blame_unknown(ledger, *survey.thermostat_room, "room", survey.rooms);
    build_leakage(work);
    const bool balloon = survey.frame && survey.frame->value == Frame::balloon;
    constexpr double still_air_bay = 0.16;  // m2K/W, ASHRAE Fundamentals 2021 ch. 26, vertical 90 mm at 10 C
    house.empty_bay = units::Resistance(still_air_bay);
    // Only where a layer says "empty stud bay" does the balloon frame's open bay matter.
    const auto holds_empty_bay = [](const SurveyConstruction& c) {
        for (const auto& layer : c.layers)
            if (layer.value.rfind("empty", 0) == 0) return true;
        return false;
    };
    for (const SurveyConstruction& construction : survey.constructions)
        if (balloon && holds_empty_bay(construction))
            house.empty_bay = units::Resistance(ledger.take(DefaultId::open_bay, construction.name));
}

}  // namespace house
