// The way back of the room's air, and the faces its return wants.
#include "ducts/terminal.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method opening_method{"opening under a closed door",
                                       "airflow / (0.60733 x sqrt(2 x pressure / density))",
                                       "building-science research report on transfer grilles"};
constexpr loads::Method pair_method{"pair of transfer grilles",
                                    "airflow / sqrt(2 x pressure / density) x sqrt(2 C + 1)",
                                    "building-science research report on transfer grilles; C of a grid"};
constexpr loads::Method face_method{"face", "airflow / recommended speed",
                                    "register maker's engineering pages"};

// Airflow by the speed that the pressure alone would give it: m2, or ft2 of in.wc, lb/ft3 and cfm.
Worked at_that_pressure(const questions::WayBack& back, System system) {
    const Worked pressure = in_sum(ducts::closed_door_limit, system),
                 density = in_sum(back.air.density, system);
    const Worked flow = in_sum(back.flow, system);
    if (system == System::si) return flow / given(1000, "1000") / sqrt(given(2, "2") * pressure / density);
    return flow / given(60, "60") /
           sqrt(given(2, "2") * given(9.80665 / 0.3048, "32.174049") *
                given(249.08891 / 47.88025898033584, "5.2023300") * pressure / density);
}

}  // namespace

void add_way_back(std::vector<Step>& steps, const questions::WayBack& back, System system) {
    const Worked plain = at_that_pressure(back, system);
    steps.push_back(step("opening that lets the room's air out again", opening_method,
                         plain / given(ducts::discharge_coefficient, "0.60733"), back.opening, system));
    const double C = ducts::grid_coefficient(ducts::usual_free_share);
    steps.push_back(step("each of a pair of transfer grilles", pair_method,
                         plain * sqrt(given(2, "2") * printed_to(C, 4) + given(1, "1")), back.grille,
                         system));
}

void add_return_faces(std::vector<Step>& steps, const questions::ReturnFaces& faces, System system) {
    const Worked flow =
        system == System::us ? in_sum(faces.flow, system) : in_sum(faces.flow, system) / given(1000, "1000");
    steps.push_back(step("face of all return grilles together", face_method,
                         flow / in_sum(ducts::return_grille_face.recommended, system), faces.grilles,
                         system));
    steps.push_back(step("face of the filter", face_method,
                         flow / in_sum(ducts::filter_face.recommended, system), faces.filter, system));
}

}  // namespace report
