// The catalogue of fittings: name, angle, C with its low and high, source and its mark.
//
// A coefficient counts on the velocity pressure named by its law (ducts/fittings.hpp). "duct fitting tables"
// are the North American sheet-metal association's and the Handbook's. Marks: "read" seen in the source,
// "memory" recalled from it, "derived" worked out, "estimate" put together from the part named, as no
// residential measurement was found.

#include <array>
#include <string_view>

#include "ducts/fittings.hpp"

namespace ducts {
namespace {

struct Coefficient {
    double value, low, high;
};
struct Basis {
    std::string_view source, mark;
};

constexpr Fitting row(std::string_view name, LossLaw law, double angle, Coefficient c, Basis basis) {
    return {name, law, c.value, c.low, c.high, angle, basis.source, basis.mark, {}, 1};
}
constexpr Fitting fixed(std::string_view name, Coefficient c, Basis basis) {
    return row(name, LossLaw::fixed, 0, c, basis);
}
// c is that of the takeoff as an entry from a plenum.
constexpr Fitting takeoff(std::string_view name, double angle, Coefficient c, Basis basis) {
    return row(name, LossLaw::takeoff, angle, c, basis);
}
constexpr Fitting elbow(std::string_view name, double angle, Coefficient c, Basis basis) {
    return row(name, LossLaw::elbow, angle, c, basis);
}

constexpr Basis duct_tables{"duct fitting tables", "read"};
constexpr Basis flush_entry{"general tables: flush entry 0.50, projecting 0.85", "read"};
constexpr Basis bevelled_entry{"general handbooks: bevelled entry", "memory"};
constexpr Basis square_tee{"pipe-flow handbook, tee; as an entry flush 0.50, projecting 0.85", "read"};
constexpr Basis slanting_tee{"pipe-flow handbook, slanting tee; as an entry bevelled", "read"};
constexpr Basis from_mitred{"from a mitred elbow", "estimate"};
constexpr Basis from_vent_lengths{"equivalent lengths of kitchen-vent fittings", "read"};

constexpr std::array catalogue{
    // off the plenum
    fixed("trunk start, square", {0.5, 0.4, 0.6}, {"general tables: flush entry", "read"}),
    fixed("trunk start, flared", {0.2, 0.1, 0.3}, bevelled_entry),
    fixed("plenum collar, square", {0.6, 0.5, 0.85}, flush_entry),
    fixed("plenum collar, flared", {0.15, 0.05, 0.25}, {"general tables: bell-mouth", "read"}),
    // off the trunk
    takeoff("side takeoff, straight", 90, {0.6, 0.5, 0.85}, square_tee),
    takeoff("side takeoff, 45 degree entry", 45, {0.2, 0.1, 0.3}, slanting_tee),
    takeoff("top takeoff", 90, {0.6, 0.5, 0.85}, square_tee),
    takeoff("round wye, 45 degrees", 45, {0.2, 0.1, 0.3}, slanting_tee),
    row("bullhead tee", LossLaw::split, 0, {1.3, 1.0, 2.0}, {"from a square elbow and a split", "estimate"}),
    row("bullhead tee, vaned", LossLaw::split, 0, {0.5, 0.3, 0.7}, {"from a vaned elbow", "estimate"}),
    // along the trunk
    fixed("straight past a takeoff", {0.02, 0.0, 0.1}, {"pipe-flow handbook, run of a tee", "derived"}),
    fixed("trunk reducer, tapered", {0.05, 0.04, 0.08}, duct_tables),
    row("trunk reducer, abrupt", LossLaw::reducer, 0, {0.26, 0.25, 0.5}, duct_tables),
    row("trunk increaser, tapered", LossLaw::widening, 0, {0.28, 0.17, 0.45},
        {"general tables: sides 20 degrees apart", "read"}),
    fixed("square trunk elbow", {1.25, 1.1, 1.7}, duct_tables),
    fixed("square trunk elbow, vaned", {0.35, 0.12, 0.4}, duct_tables),
    fixed("trunk elbow, radius", {0.21, 0.18, 0.3}, duct_tables),
    fixed("trunk elbow, short radius", {0.44, 0.33, 0.6}, duct_tables),
    fixed("trunk elbow, square throat", {1.2, 1.0, 1.5}, duct_tables),
    // round pipe
    elbow("round elbow 90, smooth", 90, {0.15, 0.11, 0.3}, duct_tables),
    elbow("round elbow 90, adjustable", 90, {0.45, 0.37, 0.6}, duct_tables),
    elbow("round elbow 90, 3 pieces", 90, {0.42, 0.34, 0.54}, duct_tables),
    elbow("round elbow 90, 5 pieces", 90, {0.33, 0.24, 0.46}, duct_tables),
    row("round elbow 90, mitred", LossLaw::mitre, 90, {1.2, 0.87, 1.35}, duct_tables),
    elbow("round elbow 45, adjustable", 45, {0.27, 0.17, 0.36}, duct_tables),
    fixed("round offset", {0.5, 0.4, 0.7}, {"two bends of 45 degrees", "derived"}),
    fixed("damper, open", {0.04, 0.02, 0.2}, duct_tables),
    row("damper, 20 degrees", LossLaw::damper, 20, {1.54, 1.0, 2.3}, {"general table, thin disc", "read"}),
    fixed("flex bend 90, wide", {0.6, 0.4, 0.9}, {"flexible duct tests, taut bend", "memory"}),
    fixed("flex bend 90, tight", {1.3, 0.9, 2.0}, {"flexible duct tests, tight or sagging", "memory"}),
    // wall stack
    fixed("stack elbow 90, easy way", {1.0, 0.8, 1.3}, duct_tables),
    fixed("stack elbow 90, flat way", {1.3, 1.1, 1.8}, duct_tables),
    fixed("stack elbow 45", {0.38, 0.3, 0.6}, duct_tables),
    fixed("round-to-stack boot, straight", {0.2, 0.05, 0.35}, from_vent_lengths),
    fixed("round-to-stack boot, 90", {0.9, 0.7, 1.3}, from_vent_lengths),
    fixed("stack-to-round, straight", {0.35, 0.2, 0.5}, from_vent_lengths),
    fixed("stackhead", {1.3, 1.0, 1.8}, from_mitred),
    // behind the register, or without one
    fixed("floor boot, straight up", {0.35, 0.2, 0.6}, {"from a transition", "estimate"}),
    fixed("floor boot, end entry", {1.2, 0.9, 1.8}, from_mitred),
    fixed("ceiling box, top entry", {0.7, 0.4, 1.0}, {"from an abrupt expansion", "estimate"}),
    fixed("ceiling box, side entry", {1.5, 1.0, 2.0}, {"from an abrupt expansion and a turn", "estimate"}),
    fixed("open end", {1.0, 1.0, 1.0}, {"general tables: exit", "read"}),
    fixed("wall cap with flap", {1.5, 1.0, 2.0}, from_vent_lengths),
    // return
    fixed("return grille into a box", {0.85, 0.5, 1.0}, flush_entry),
    row("joins the trunk, straight", LossLaw::joining, 90, {1.0, 1.0, 1.0}, square_tee),
    row("joins the trunk, 45 degrees", LossLaw::joining, 45, {1.0, 1.0, 1.0}, slanting_tee),
    fixed("square elbow into the drop", {1.25, 1.1, 1.7}, duct_tables),
    fixed("return drop into the cabinet", {1.3, 1.0, 1.8}, from_mitred),
    fixed("return drop into the cabinet, vaned", {0.35, 0.2, 0.5}, duct_tables),
    fixed("panned bay entry", {1.7, 1.3, 2.5}, from_mitred),
    fixed("panned bay into the trunk", {1.5, 1.2, 2.0}, from_mitred),
    // turns counted, not named: a mitred elbow, an adjustable one
    fixed("square turn", {1.25, 0.87, 1.7}, duct_tables),
    fixed("rounded turn", {0.45, 0.11, 0.6}, duct_tables),
};

}  // namespace

std::span<const Fitting> fittings() { return catalogue; }

}  // namespace ducts
