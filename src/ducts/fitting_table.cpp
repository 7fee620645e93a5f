// The catalogue of fittings: name, a takeoff's angle, C with its low and high, source.
//
// A coefficient counts on the velocity pressure of the duct that holds the fitting. "duct fitting tables" are
// the North American sheet-metal association's and the Handbook's; where a source says "estimate", no
// residential measurement was found and the value was put together from the part named.

#include <array>
#include <string_view>

#include "ducts/fittings.hpp"

namespace ducts {
namespace {

struct Coefficient {
    double value, low, high;
};

constexpr Fitting fixed(std::string_view name, Coefficient c, std::string_view source) {
    return {name, LossLaw::fixed, c.value, c.low, c.high, 0, source};
}

// c is that of the takeoff as an entry from a plenum.
constexpr Fitting takeoff(std::string_view name, double angle_degrees, Coefficient c,
                          std::string_view source) {
    return {name, LossLaw::takeoff, c.value, c.low, c.high, angle_degrees, source};
}

constexpr std::string_view duct_tables = "duct fitting tables";
constexpr std::string_view flush_entry = "general tables: flush entry 0.50, projecting 0.85";
constexpr std::string_view bevelled_entry = "general handbooks: bevelled entry";
constexpr std::string_view from_mitred = "estimate from a mitred elbow";
constexpr std::string_view from_vent_lengths = "equivalent lengths of kitchen-vent fittings";

constexpr std::array catalogue{
    // off the plenum
    fixed("trunk start, square", {0.5, 0.4, 0.6}, "general tables: flush entry"),
    fixed("trunk start, flared", {0.2, 0.1, 0.3}, bevelled_entry),
    fixed("plenum collar, square", {0.6, 0.5, 0.85}, flush_entry),
    fixed("plenum collar, flared", {0.15, 0.05, 0.25}, "general tables: bell-mouth"),
    // off the trunk
    takeoff("side takeoff, straight", 90, {0.6, 0.5, 0.85}, flush_entry),
    takeoff("side takeoff, 45 degree entry", 45, {0.2, 0.1, 0.3}, bevelled_entry),
    takeoff("top takeoff", 90, {0.6, 0.5, 0.85}, flush_entry),
    // along the trunk
    fixed("trunk reducer, tapered", {0.05, 0.04, 0.08}, duct_tables),
    fixed("trunk reducer, abrupt", {0.26, 0.25, 0.5}, duct_tables),
    fixed("square trunk elbow", {1.25, 1.1, 1.7}, duct_tables),
    fixed("square trunk elbow, vaned", {0.35, 0.12, 0.4}, duct_tables),
    fixed("trunk elbow, radius", {0.21, 0.18, 0.3}, duct_tables),
    // round pipe
    fixed("round elbow 90, smooth", {0.15, 0.11, 0.3}, duct_tables),
    fixed("round elbow 90, adjustable", {0.45, 0.37, 0.6}, duct_tables),
    fixed("round elbow 90, mitred", {1.2, 0.87, 1.35}, duct_tables),
    fixed("round elbow 45, adjustable", {0.27, 0.17, 0.36}, duct_tables),
    fixed("damper, open", {0.04, 0.02, 0.2}, duct_tables),
    // wall stack
    fixed("stack elbow 90, easy way", {1.0, 0.8, 1.3}, duct_tables),
    fixed("stack elbow 90, flat way", {1.3, 1.1, 1.8}, duct_tables),
    fixed("stack elbow 45", {0.38, 0.3, 0.6}, duct_tables),
    fixed("round-to-stack boot, straight", {0.2, 0.05, 0.35}, from_vent_lengths),
    fixed("round-to-stack boot, 90", {0.9, 0.7, 1.3}, from_vent_lengths),
    fixed("stack-to-round, straight", {0.35, 0.2, 0.5}, from_vent_lengths),
    fixed("stackhead", {1.3, 1.0, 1.8}, from_mitred),
    // behind the register
    fixed("floor boot, straight up", {0.35, 0.2, 0.6}, "estimate from a transition"),
    fixed("floor boot, end entry", {1.2, 0.9, 1.8}, from_mitred),
    fixed("ceiling box, top entry", {0.7, 0.4, 1.0}, "estimate from an abrupt expansion"),
    fixed("ceiling box, side entry", {1.5, 1.0, 2.0}, "estimate from an abrupt expansion and a turn"),
    // return
    fixed("return grille into a box", {0.85, 0.5, 1.0}, flush_entry),
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
