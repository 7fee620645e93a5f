// The answers of `check` and `start` as JSON.
#include "report/json.hpp"

#include <nlohmann/json.hpp>

#include "report/cautions.hpp"
#include "report/json_parts.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

Json place_of(house::Place place) {
    return {{"line", place.line}, {"column", place.column}, {"end_column", place.end_column}};
}

Json mistake_of(const house::Mistake& mistake) {
    return {{"text", mistake.text},
            {"under", mistake.under},
            {"remedy", mistake.remedy},
            {"place", place_of(mistake.place)},
            {"second_place", mistake.second ? place_of(*mistake.second) : Json(nullptr)}};
}

}  // namespace

std::string start_json(const std::string& file) {
    Json json = document<Json>("start");
    json["answer"] = {{"wrote", file}};
    json["range"] = nullptr;
    json["assumptions"] = Json::array();
    json["cautions"] = Json::array();
    return text_of(json);
}

std::string no_answer_json(const std::string& why, house::Place place) {
    Json json = document<Json>("none");
    json["answer"] = nullptr;
    json["why"] = why;
    json["place"] = place.line == 0 ? Json(nullptr) : place_of(place);
    json["range"] = nullptr;
    json["assumptions"] = Json::array();
    json["cautions"] = Json::array();
    return text_of(json);
}

std::string check_json(const questions::CheckAnswer& answer) {
    const bool right = answer.mistakes.empty();
    Json mistakes = Json::array(), assumptions = Json::array();
    for (const house::Mistake& mistake : answer.mistakes) mistakes.push_back(mistake_of(mistake));
    if (right)
        for (const house::Assumption& assumption : answer.assumptions)
            assumptions.push_back(assumption_of<Json>(assumption));
    Json json = document<Json>("check");
    json["answer"] = {{"right", right},
                      {"mistakes", mistakes},
                      {"rooms", answer.planned.rooms.size()},
                      {"ducts", answer.planned.ducts.size()},
                      {"outlets", answer.planned.outlets.size()},
                      {"new_supply_outlets", answer.new_outlets},
                      {"changes", answer.changes}};
    json["range"] = nullptr;
    json["assumptions"] = assumptions;
    json["cautions"] = right ? Json(cautions(answer.planned)) : Json::array();
    return text_of(json);
}

}  // namespace report
