// The cooling season: where the sun stands, how hot it is, and how the sun meets each window. Only a house
// with cooling has one; the sheet may say all of it without.
#include <cmath>

#include "house/builders.hpp"

namespace house {
namespace {

bool has_cooling(const Survey& survey) {
    return survey.cooling && survey.cooling->value == CoolingKind::coil;
}

bool is_on_earth(double latitude) { return std::abs(latitude) <= 90; }

bool describes_lived_in_room(const Survey& survey) {
    for (const SurveyRoom& room : survey.rooms)
        if (room.use && is_lived_in(room.use->value)) return true;
    return false;
}

double latitude(Work& work) {
    const SurveySite& site = work.survey.site;
    const double degrees = work.ledger
                               .required(site.latitude, site.place, "the latitude, which cooling needs,",
                                         "latitude = \"42.1 deg\" under [site]")
                               .degrees;
    if (site.latitude && is_on_earth(degrees) && (std::abs(degrees) < 20 || std::abs(degrees) > 60))
        work.ledger.blame(site.latitude->place,
                          "heat gain is worked out from 20 to 60 degrees of latitude, north or south",
                          "write the nearest of these, or kind = \"none\" under [cooling]");
    return degrees;
}

units::Temperature outdoors(Work& work) {
    const SurveySite& site = work.survey.site;
    const units::Temperature outdoor = work.ledger.required(
        site.summer_outdoor, site.place, "the summer design temperature outdoors, which cooling needs,",
        "summer_outdoor = \"88 F\" under [site]: the local 1 % figure");
    if (site.summer_outdoor && site.winter_outdoor && outdoor <= site.winter_outdoor->value)
        work.ledger.blame(site.summer_outdoor->place, "summer is not warmer than winter",
                          "give the 1 % cooling temperature of the place");
    return outdoor;
}

std::variant<units::Temperature, double> moisture(Work& work) {
    const SurveySite& site = work.survey.site;
    if (!site.summer_wet_bulb) return work.ledger.take(DefaultId::summer_moisture, "the outdoor air");
    if (site.summer_outdoor && site.summer_wet_bulb->value > site.summer_outdoor->value)
        work.ledger.blame(site.summer_wet_bulb->place, "the wet bulb is warmer than the air",
                          "give the wet bulb that goes with the summer design temperature");
    return site.summer_wet_bulb->value;
}

// What faces the sky above a room, so that the roof's colour matters.
bool lies_under_the_roof(const Surface& surface) {
    const auto* space = std::get_if<Space>(&surface.beyond);
    return space &&
           (*space == Space::attic || (*space == Space::outdoors && (surface.kind == SurfaceKind::ceiling ||
                                                                     surface.kind == SurfaceKind::slope)));
}

bool has_roof(const House& house) {
    for (const Room& room : house.rooms)
        for (const Surface& surface : room.surfaces)
            if (lies_under_the_roof(surface)) return true;
    return false;
}

// Of a glass that takes the place of another nothing is known but its name.
void build_glass(Work& work, const SurveyWindow& window, const std::string& whose, Sunlit& sun) {
    const auto& glass = at_stage(work, window.glass, window.becomes);
    const bool changed = work.stage == Stage::planned && window.becomes.has_value();
    if (is_known(glass)) sun.glass = CatalogueName{glass->value, glass->place};
    if (window.shgc && !changed)
        sun.shgc = window.shgc->value;
    else if (!is_known(glass))
        sun.shgc = work.ledger.take(DefaultId::solar_gain, whose);
}

void build_shade(Work& work, const SurveyWindow& window, const std::string& whose, Sunlit& sun) {
    sun.screen = window.screen && window.screen->value;
    if (window.shade_closed && !window.shade)
        work.ledger.blame_missing(window.shade_closed->place, "the shade of the " + whose,
                                  "shade = \"roller, white\"");
    if (!window.shade) return;
    sun.shade = CatalogueName{window.shade->value, window.shade->place};
    sun.shade_closed = work.ledger.or_default(window.shade_closed, DefaultId::shade_closed, whose);
}

void build_overhang(Work& work, const SurveyWindow& window, const std::string& whose, Sunlit& sun) {
    if (window.overhang_above && !window.overhang)
        work.ledger.blame_missing(window.overhang_above->place, "the overhang over the " + whose,
                                  "overhang = \"1 ft 6 in\", its depth");
    if (window.overhang) sun.overhang = window.overhang->value;
    if (window.overhang_above) sun.overhang_above = window.overhang_above->value;
}

}  // namespace

void build_summer(Work& work) {
    const Survey& survey = work.survey;
    Ledger& ledger = work.ledger;
    if (survey.site.latitude && !is_on_earth(survey.site.latitude->value.degrees))
        ledger.blame(survey.site.latitude->place, "latitude lies between -90 and 90",
                     "write degrees north of the equator, south below zero");
    if (!has_cooling(survey)) return;
    Summer summer;
    summer.latitude = latitude(work);
    summer.outdoor = outdoors(work);
    summer.indoor = ledger.or_default(survey.site.summer_indoor, DefaultId::summer_indoor, "the house");
    summer.daily_range = ledger.or_default(survey.site.daily_range, DefaultId::daily_range, "the site");
    summer.north = survey.north ? survey.north->value.degrees
                                : ledger.take(DefaultId::north, "the windows of the house");
    summer.bedrooms = survey.bedrooms
                          ? survey.bedrooms->value
                          : static_cast<int>(ledger.take(DefaultId::bedrooms, "the people in the house"));
    if (survey.other_rooms && describes_lived_in_room(survey))
        summer.lived_in_share =
            ledger.take(DefaultId::lived_in_share, "what people and kitchen give off among the rooms");
    summer.moisture = moisture(work);
    summer.supply = units::Temperature(ledger.take(DefaultId::cooling_supply, "the supply air in summer"));
    if (survey.cooling_airflow) summer.airflow = survey.cooling_airflow->value;
    if (summer.supply >= summer.indoor && survey.site.summer_indoor)
        ledger.blame(survey.site.summer_indoor->place, "no coil cools a house to this temperature",
                     "as summer_indoor = \"75 F\"");
    work.house.summer = summer;
}

void build_roof(Work& work) {
    if (!work.house.summer) return;
    Summer& summer = *work.house.summer;
    if (work.survey.roof)
        summer.roof = CatalogueName{work.survey.roof->value, work.survey.roof->place};
    else
        summer.roof = has_roof(work.house) ? work.ledger.take(DefaultId::roof_absorptance, "the roof")
                                           : default_row(DefaultId::roof_absorptance).value;
}

Sunlit sunlit(Work& work, const SurveyWindow& window, double looks, const std::string& whose) {
    Sunlit sun;
    sun.azimuth = work.house.summer->north + looks;
    if (window.size) sun.height = window.size->value.second;
    build_glass(work, window, whose, sun);
    build_shade(work, window, whose, sun);
    build_overhang(work, window, whose, sun);
    return sun;
}

}  // namespace house
