// See duct_system.hpp. Boost.Graph holds the tree and gives the order: a topological sort collected from the
// back names every section after all that hang on it.
#include "ducts/duct_system.hpp"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/topological_sort.hpp>

#include "ducts/run_heat_loss.hpp"
#include "house/cannot_answer.hpp"
#include "units/unit.hpp"

namespace ducts {
namespace {

using Tree = boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, SystemSection>;
using Vertex = boost::graph_traits<Tree>::vertex_descriptor;
constexpr int nothing = -1;

// What hangs on a duct, so far along it: a branch, or an outlet at its end.
struct Cut {
    double at;
    Vertex below;
    int outlet = nothing;
};

class SideBuilder {
  public:
    SideBuilder(const house::House& house, const loads::SpacesInWinter& spaces,
                const std::optional<house::Shape>& unsized, house::DuctSide side)
        : house_(house), spaces_(spaces), unsized_(unsized), side_(side), others_on_(house.ducts.size()) {}

    Side build() {
        std::vector<int> roots;
        for (std::size_t i = 0; i < house_.ducts.size(); ++i)
            if (house_.ducts[i].side == side_ && !house_.ducts[i].from) roots.push_back(static_cast<int>(i));
        if (side_ == house::DuctSide::supply) spread_other_outlets(roots);
        for (int root : roots) add_duct(root);
        return leaves_first();
    }

  private:
    const house::Duct& duct(int i) const { return house_.ducts[static_cast<std::size_t>(i)]; }

    // Adds a duct, cut at its branches, and all that hangs on it; gives its section next to the blower.
    Vertex add_duct(int index) {
        std::vector<Cut> cuts = std::move(others_on_[static_cast<std::size_t>(index)]);
        for (std::size_t i = 0; i < house_.ducts.size(); ++i) {
            const house::Duct& branch = house_.ducts[i];
            if (branch.from == duct(index).id)
                cuts.push_back({branch.at.si(), add_duct(static_cast<int>(i))});
        }
        for (std::size_t i = 0; i < house_.outlets.size(); ++i)
            if (house_.outlets[i].duct == duct(index).id)
                cuts.push_back({duct(index).length.si(), {}, static_cast<int>(i)});
        std::stable_sort(cuts.begin(), cuts.end(), [](const Cut& a, const Cut& b) { return a.at < b.at; });
        return chain(index, cuts);
    }

    // Sections of one duct from its start to its last branch (or its end), each ending where branches leave.
    Vertex chain(int index, const std::vector<Cut>& cuts) {
        SystemSection piece = plain_section(duct(index), index);
        const Vertex first = boost::add_vertex(piece, tree_);
        piece.fittings = {};  // all on the first section
        Vertex current = first;
        double start = 0;
        for (std::size_t i = 0; i < cuts.size(); ++i) {
            const double end = std::min(cuts[i].at, duct(index).length.si());
            if (i > 0 && end > start) {
                const Vertex below = boost::add_vertex(piece, tree_);
                boost::add_edge(current, below, tree_);
                current = below;
            }
            if (i == 0 || end > start) tree_[current].length = units::Length(end - start);
            start = std::max(start, end);
            const bool alone = i + 1 == cuts.size() && boost::out_degree(current, tree_) == 0;
            if (cuts[i].outlet != nothing && alone)
                tree_[current].outlet = cuts[i].outlet;
            else
                boost::add_edge(current,
                                cuts[i].outlet != nothing ? add_end(piece, cuts[i].outlet) : cuts[i].below,
                                tree_);
        }
        return first;
    }

    // The end of a duct for one outlet, where others or branches leave at the same place.
    Vertex add_end(SystemSection end, int outlet) {
        end.outlet = outlet;
        end.length = {};
        return boost::add_vertex(std::move(end), tree_);
    }

    SystemSection plain_section(const house::Duct& d, int index) const {
        if (!d.shape && !unsized_)
            throw house::CannotAnswer(d.place,
                                      "the duct " + d.name + " has no shape and is not the one being sized");
        SystemSection piece;
        piece.duct = index;
        piece.section = section_of(d.shape ? *d.shape : *unsized_, d.kind, d.stretch);
        piece.kind = d.kind;
        piece.stretch = d.stretch;
        piece.unsized = !d.shape;
        piece.length = d.length;
        piece.fittings.reserve(d.fittings.size());
        for (const house::CatalogueName& name : d.fittings) piece.fittings.push_back(fitting_named(name));
        piece.loss_factor = d.loss_factor;
        piece.bare = d.resistance - d.wrap;
        piece.wrap = d.wrap;
        piece.resistance = insulated_resistance(piece.bare, piece.wrap, piece.kind, piece.section);
        piece.surroundings = around(d);
        return piece;
    }

    units::Temperature around(const house::Duct& d) const {
        if (const auto* given = std::get_if<units::Temperature>(&d.surroundings)) return *given;
        const auto space = std::get<house::Space>(d.surroundings);
        return spaces_.of(space);
    }

    // What is a takeoff where air parts is a joining where it comes together.
    Fitting fitting_named(const house::CatalogueName& name) const {
        const auto found = look_up_fitting(name);
        if (const auto* mistake = std::get_if<house::Mistake>(&found))
            throw house::CannotAnswer(mistake->place, mistake->text);
        Fitting fitting = std::get<Fitting>(found);
        if (side_ == house::DuctSide::return_side && fitting.law == LossLaw::takeoff)
            fitting.law = LossLaw::joining;
        if (!fitting.of_the_sheet()) fitting.factor = house_.fitting_losses;
        return fitting;
    }

    // What the outlets not described leave; nothing: the plenum.
    std::vector<int> left_by_others(const std::vector<int>& roots) const {
        std::vector<int> ducts;
        const house::OthersLeave& leave = house_.other_rooms->leave;
        if (const auto* named = std::get_if<house::DuctId>(&leave)) {
            for (std::size_t i = 0; i < house_.ducts.size(); ++i)
                if (house_.ducts[i].id == *named) ducts.push_back(static_cast<int>(i));
        } else if (std::get<house::UsualStart>(leave) == house::UsualStart::trunks) {
            std::copy_if(roots.begin(), roots.end(), std::back_inserter(ducts),
                         [&](int root) { return is_trunk(root); });
        }
        return ducts;
    }

    // The outlets not described, at equal spacing along the trunks, the trunks laid end to end.
    void spread_other_outlets(const std::vector<int>& roots) {
        if (!house_.other_rooms) return;
        const std::vector<int> trunks = left_by_others(roots);
        double total = 0;
        for (int trunk : trunks) total += duct(trunk).length.si();
        const int count = house_.other_rooms->outlets;
        for (int i = 0; i < count; ++i) {
            const Vertex run = boost::add_vertex(other_run(i, count), tree_);
            double at = total * (i + 0.5) / count;
            for (int trunk : trunks) {
                const double length = duct(trunk).length.si();
                if (at <= length || trunk == trunks.back()) {
                    others_on_[static_cast<std::size_t>(trunk)].push_back({at, run});
                    break;
                }
                at -= length;
            }
        }
    }

    // A root is a trunk, where it feeds no outlet itself and is wider than an 8 in pipe, or something leaves
    // it before its end, or nothing that is described hangs on it. A run from the plenum in several pieces is
    // none.
    bool is_trunk(int root) const {
        const house::Duct& d = duct(root);
        for (const house::Outlet& outlet : house_.outlets)
            if (outlet.duct == d.id) return false;
        const house::Round widest_branch{8 * units::unit::inch};
        const bool wide = d.shape && section_of(*d.shape).area > section_of(widest_branch).area;
        bool feeds = false, along = false;
        for (const house::Duct& branch : house_.ducts) {
            if (branch.from != d.id) continue;
            feeds = true;
            along = along || branch.at < 0.98 * d.length;
        }
        return wide || along || !feeds;
    }

    SystemSection other_run(int i, int count) const {
        const house::OtherRooms& rooms = *house_.other_rooms;
        SystemSection run;
        run.section = section_of(house::Round{rooms.pipe});
        const double share = count > 1 ? static_cast<double>(i) / (count - 1) : 1.0;
        run.length = rooms.shortest_reach + share * (rooms.longest_reach - rooms.shortest_reach);
        Fitting turn = counted_turn(rooms.turns.square);
        turn.factor = house_.fitting_losses;
        run.fittings.assign(static_cast<std::size_t>(rooms.turns.count), turn);
        return run;
    }

    Side leaves_first() {
        std::vector<Vertex> order;
        boost::topological_sort(tree_, std::back_inserter(order));
        std::vector<int> position(boost::num_vertices(tree_), nothing);
        Side side;
        side.reserve(order.size());
        for (Vertex v : order) {
            position[v] = static_cast<int>(side.size());
            for (auto [e, end] = boost::out_edges(v, tree_); e != end; ++e)
                side[static_cast<std::size_t>(position[boost::target(*e, tree_)])].parent = position[v];
            side.push_back(std::move(tree_[v]));
        }
        return side;
    }

    const house::House& house_;
    const loads::SpacesInWinter& spaces_;
    const std::optional<house::Shape>& unsized_;
    house::DuctSide side_;
    std::vector<std::vector<Cut>> others_on_;
    Tree tree_;
};

// Balances are worked out only where a duct runs in such a space.
loads::SpacesInWinter around_the_ducts(const house::House& house) {
    for (const house::Duct& duct : house.ducts)
        if (const auto* space = std::get_if<house::Space>(&duct.surroundings))
            if (house.buffer_space(*space)) return loads::spaces_in_winter(house);
    return {house.space_winter, {}};
}

}  // namespace

DuctSystem duct_system(const house::House& house, const DesignFlows& flows,
                       const std::optional<house::Shape>& unsized) {
    const loads::SpacesInWinter spaces = around_the_ducts(house);
    DuctSystem system{SideBuilder(house, spaces, unsized, house::DuctSide::supply).build(),
                      SideBuilder(house, spaces, unsized, house::DuctSide::return_side).build()};
    set_flows(system, flows);
    return system;
}

void give_shape(DuctSystem& system, const house::Shape& shape) {
    for (Side* side : {&system.supply, &system.return_side})
        for (SystemSection& piece : *side)
            if (piece.unsized) {
                piece.section = section_of(shape, piece.kind, piece.stretch);
                piece.resistance = insulated_resistance(piece.bare, piece.wrap, piece.kind, piece.section);
            }
}

void set_flows(DuctSystem& system, const DesignFlows& flows) {
    for (Side* side : {&system.supply, &system.return_side}) {
        for (SystemSection& section : *side) {
            section.flow = section.duct == nothing ? flows.each_other_outlet : units::MassFlow();
            if (section.outlet != nothing)
                section.flow = flows.outlets[static_cast<std::size_t>(section.outlet)];
        }
        for (const SystemSection& section :
             *side)  // leaves first: a section is complete before its parent needs it
            if (section.parent != nothing)
                (*side)[static_cast<std::size_t>(section.parent)].flow += section.flow;
    }
}

std::vector<int> way_to(const Side& side, const house::House& house, int outlet) {
    std::vector<int> way;
    for (std::size_t i = 0; i < side.size(); ++i)
        if (side[i].outlet == outlet)
            for (int at = static_cast<int>(i); at != nothing; at = side[static_cast<std::size_t>(at)].parent)
                way.push_back(at);
    if (way.empty()) {
        const house::Outlet& wanted = house.outlets[static_cast<std::size_t>(outlet)];
        throw house::CannotAnswer(wanted.place, "no duct leads to the outlet " + wanted.name);
    }
    std::reverse(way.begin(), way.end());
    return way;
}

units::Velocity velocity(const SystemSection& section, const loads::Air& air) {
    return section.flow / air.density / section.section.area;
}

units::Pressure fittings_loss(const Side& side, const SystemSection& section, const loads::Air& air) {
    return fittings_loss(side, section, section.flow, air);
}

units::Pressure fittings_loss(const Side& side, const SystemSection& section, units::MassFlow flow,
                              const loads::Air& air) {
    FittingPlace place{section.section, flow / air.density, {}, {}};
    if (section.parent != nothing) {
        const SystemSection& trunk = side[static_cast<std::size_t>(section.parent)];
        place.trunk = trunk.section;
        place.trunk_flow = trunk.flow / air.density;
    }
    units::Pressure loss;
    for (const Fitting& fitting : section.fittings) loss += fitting_loss(fitting, place, air);
    return loss;
}

}  // namespace ducts
