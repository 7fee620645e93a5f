// Loss coefficients that follow from flows, areas and angles: takeoffs and tees, elbows, dampers, reducers.
//
//     dividing    loss = G (trunk + H branch - J cos(angle) density x trunk x branch / 2), in velocity
//                 pressures, trunk upstream of the takeoff; H 1 and J 2, but for a square branch over 4/9 of
//                 the trunk's area: H 0.3 and J 0. G by flow share q and area ratio A:
//                 square      1 to A 2/3, then 1 + 0.3 q^2
//                 slanting    to A 0.35: 1.1 - 0.7 q to q 0.4, then 0.85; beyond: 1 - 0.6 q to q 0.6, then
//                 0.6
//     joining     loss = K (1 + s^2 - 2 (1 - q)^2 - 2 cos(angle) q^2 / A) x velocity pressure of the joined
//                 flow, s the branch's velocity over the joined; K 1 to A 0.35, then 0.9 (1 - q) to q 0.4 and
//                 0.55 above. Below zero where the joined flow draws the branch along
//     elbow       share of the loss of 90 degrees; a mitre's, a damper's, an abrupt reducer's C by table
//
// Source: pipe-flow handbook formulas as a general-purpose fluids library has them (read), its factors'
// jumps at q 0.4 and 0.6 and A 0.35, 4/9 and 2/3 bridged smoothly over a tenth or so; duct fitting tables
// (read) linear between their knots, a damper's in ln C. Angles in degrees. A square branch is one of 75
// degrees and more. Coefficients are good to +-30 %.
#pragma once

namespace ducts {

struct Branching {
    double flow_share = 0;  // of the branch in the flow of both, 0 to 1
    double area_ratio = 0;  // of the branch to the trunk, over 0
};

struct DividingFactors {
    double whole = 1, branch = 1, drawn = 2;  // G, H, J
};
DividingFactors dividing_factors(Branching at, double angle);
// On the velocity pressure of the trunk upstream of the takeoff.
double dividing_coefficient(Branching at, double angle);
// On the velocity pressure of the joined flow; may be below zero.
double joining_coefficient(Branching at, double angle);

double elbow_share(double angle);         // 0 to 180; 1 at 90
double mitre_coefficient(double angle);   // 0 to 90
double damper_coefficient(double angle);  // 0 to 60 from open
// From a larger to a smaller duct without taper, on the smaller one's velocity pressure; ratio of areas
// from 1.
double contraction_coefficient(double area_ratio);

inline constexpr double most_elbow_angle = 180, most_mitre_angle = 90, most_damper_angle = 60;

}  // namespace ducts
