// The list of fittings for programs.
#include <nlohmann/json.hpp>

#include "report/json.hpp"
#include "report/json_figures.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

Json fitting_of(const questions::ListedFitting& row) {
    return {{"name", std::string(row.fitting.name)},
            {"loss_Pa", {{"low", si(row.range.low)}, {"value", si(row.loss)}, {"high", si(row.range.high)}}},
            {"equivalent_length_m", si(row.equivalent)},
            {"coefficient", figure_of(row.coefficient)},
            {"mark", std::string(row.fitting.mark)},
            {"source", std::string(row.fitting.source)}};
}

}  // namespace

std::string fittings_json(const questions::FittingsAnswer& answer) {
    Json fittings = Json::array();
    for (const questions::ListedFitting& row : answer.fittings) fittings.push_back(fitting_of(row));
    const Json document{{"schema", 1},
                        {"question", "fittings"},
                        {"answer",
                         {{"airflow_m3_s", si(answer.asked.flow)},
                          {"hydraulic_diameter_m", si(answer.duct.hydraulic_diameter)},
                          {"area_m2", si(answer.duct.area)},
                          {"speed_m_s", si(answer.speed)},
                          {"friction_Pa_m", si(answer.friction)},
                          {"counted_at_Pa_m", si(answer.counted_at)},
                          {"trunk_airflow_m3_s", si(answer.asked.trunk_flow)},
                          {"trunk_speed_m_s", si(answer.trunk_speed)},
                          {"fittings", fittings}}},
                        {"range", nullptr},
                        {"assumptions", Json::array()},
                        {"cautions", Json::array()}};
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace report
