#include "house/lone_windows.hpp"

#include <algorithm>

#include "house/builders.hpp"

namespace house {
namespace {

bool is_alone(const SurveyRoom& room, const SurveyWindow& window) {
    return std::count_if(room.windows.begin(), room.windows.end(), [&](const SurveyWindow& other) {
               return other.wall && other.wall->value == window.wall->value;
           }) == 1;
}

}  // namespace

std::vector<std::string> centre_lone_windows(Survey& survey, const std::string& room) {
    std::vector<std::string> centred;
    for (SurveyRoom& written : survey.rooms) {
        if (!written.name || written.name->value != room || !written.size) continue;
        for (SurveyWindow& window : written.windows) {
            if (window.centre || !window.wall || !is_alone(written, window)) continue;
            const Two& size = written.size->value;
            const units::Length wall = runs_west_east(window.wall->value) ? size.first : size.second;
            window.centre = Given<units::Length>{0.5 * wall, window.place};
            centred.push_back(window_name(window));
        }
    }
    return centred;
}

}  // namespace house
