#include "questions/list_fittings.hpp"

#include <string>

#include "ducts/friction.hpp"
#include "ducts/friction_rate.hpp"
#include "house/cannot_answer.hpp"

namespace questions {
namespace {

constexpr units::Length least_width = 1 * units::unit::inch, most_width = 6 * units::unit::foot;
constexpr units::Airflow least_flow = 1 * units::unit::cfm, most_flow = 5000 * units::unit::cfm;

void refuse_no_house(const house::Shape& shape, units::Airflow flow, const std::string& which) {
    if (house::narrowest_side(shape) < least_width || ducts::section_of(shape).perimeter > 4 * most_width)
        throw house::AskedWrongly({}, "the " + which + " is not between 1 in and 6 ft: no duct of a house");
    if (flow < least_flow || flow > most_flow)
        throw house::AskedWrongly(
            {}, "the airflow of the " + which + " is not between 1 and 5,000 cfm: no airflow of a house");
}

ListedFitting listed(const ducts::Fitting& fitting, const ducts::FittingPlace& place, const loads::Air& air) {
    ListedFitting row;
    row.fitting = fitting;
    row.loss = ducts::fitting_loss(fitting, place, air);
    row.range = ducts::fitting_loss_range(fitting, place, air);
    row.coefficient = row.loss / ducts::velocity_pressure(place.flow / place.duct.area, air);
    row.equivalent = row.loss / ducts::counting_rate(ducts::friction(place.duct, place.flow, air));
    return row;
}

}  // namespace

FittingsAnswer list_fittings(const FittingsQuestion& question) {
    constexpr units::Pressure sea_level{101325};
    const loads::Air air = loads::air_at(units::unit::celsius(20), sea_level);
    refuse_no_house(question.duct, question.flow, "duct");
    refuse_no_house(question.trunk, question.trunk_flow, "trunk");
    const ducts::FittingPlace place{ducts::section_of(question.duct), question.flow,
                                    ducts::section_of(question.trunk), question.trunk_flow};
    if (place.trunk_flow < place.flow)
        throw house::AskedWrongly({},
                                  "the trunk has less air than the duct that leaves it; its flow counts "
                                  "what it carries before (--trunk-flow)");
    FittingsAnswer answer{
        question, place.duct, place.flow / place.duct.area, place.trunk_flow / place.trunk.area, {}, {}, {}};
    answer.friction = ducts::friction(place.duct, place.flow, air);
    answer.counted_at = ducts::counting_rate(answer.friction);
    for (const ducts::Fitting& fitting : ducts::fittings())
        answer.fittings.push_back(listed(fitting, place, air));
    return answer;
}

}  // namespace questions
