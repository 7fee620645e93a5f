// Houses with 1 to 60 outlets, drawn at random: tight and leaky, with doors, dampers, exhaust fans and either
// kind of blower, from the sea to 3,000 m.
#include <cmath>
#include <random>

#include "network/a_network.hpp"
#include "network/tree_house.hpp"

namespace network {
namespace {

class Draw {
  public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(engine_() >> 11) * 0x1p-53;
    }
    // As likely between 1 and 10 as between 10 and 100.
    double spread(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
    bool chance(double share) { return between(0, 1) < share; }
    int number(int low, int high) { return static_cast<int>(between(low, high + 1)); }

  private:
    std::mt19937_64 engine_;
};

struct Builder {
    Draw draw;
    loads::Air air;
    bool leaky;

    double quadratic_of(double C, double area) const { return C / (2 * air.density.si() * area * area); }

    Piece piece(double least_inches, double most_inches) {
        Piece made;
        made.section = round_section(std::round(draw.between(least_inches, most_inches)));
        made.length = draw.chance(0.05) ? 0 : draw.between(0.3, 15);
        made.factor = draw.chance(0.2) ? draw.between(1, 3) : 1;
        made.quadratic = draw.chance(0.05) ? 0 : quadratic_of(draw.between(0.1, 3), made.section.area.si());
        return made;
    }

    Mouth mouth(double sign) {
        Mouth made;
        made.run = piece(3, 9);
        made.run.quadratic += quadratic_of(draw.between(1, 4), made.run.section.area.si());
        if (draw.chance(0.2)) made.run.quadratic *= draw.spread(1, 1000);
        if (draw.chance(0.03)) made.run.quadratic = 1e9;  // shut
        made.behind_door = draw.chance(0.4);
        if (made.behind_door) made.door = quadratic_of(2.7, draw.spread(0.004, 0.05));
        if (made.behind_door && draw.chance(0.2)) made.drawn = sign * draw.between(0.005, 0.06);
        return made;
    }

    Trunk trunk(double sign, int& mouths, int depth) {
        Trunk made;
        made.piece = piece(8, 20);
        if (leaky) made.hole = {draw.spread(1e-5, 1e-3), draw.between(0.5, 1)};
        for (int here = draw.chance(0.1) ? 0 : draw.number(1, 4); mouths > 0 && here > 0; --here, --mouths)
            made.mouths.push_back(mouth(sign));
        if (depth < 1 && mouths > 1 && draw.chance(0.15)) {
            int aside = draw.number(1, mouths / 2);
            mouths -= aside;
            made.trunks.push_back(trunk(sign, aside, depth + 1));
            mouths += aside;
        }
        if (mouths > 0) made.trunks.push_back(trunk(sign, mouths, depth));
        if (made.mouths.empty() && made.trunks.empty()) made.mouths.push_back(mouth(sign));
        return made;
    }

    // Devices, then the plenum with its trunks.
    Trunk side(double sign, int mouths) {
        Trunk made;
        made.piece.section = round_section(16);
        made.piece.linear = draw.between(0, 80);
        made.piece.quadratic = draw.between(0, 400);
        if (leaky) made.hole = {draw.spread(1e-4, 1e-3), draw.between(0.5, 1)};
        for (int trunks = draw.number(1, 2); trunks > 0; --trunks) {
            int share = trunks == 1 ? mouths : mouths / 2;
            mouths -= share;
            if (share > 0) made.trunks.push_back(trunk(sign, share, 0));
        }
        return made;
    }
};

std::vector<FanPoint> table(Draw& draw, double most_flow) {
    std::vector<FanPoint> points;
    const int count = draw.number(2, 7);
    double gain = draw.between(100, 300);
    for (int i = 0; i < count; ++i) {
        const double flow = most_flow * (0.4 + 0.6 * i / (count - 1));
        points.push_back({units::MassFlow(flow), units::Pressure(gain)});
        gain -= gain * draw.between(0, 0.6);
    }
    if (count == 2) points[1].gain = points[0].gain / 4;
    return points;
}

}  // namespace

TreeHouse random_house(std::uint64_t seed) {
    Draw draw(seed);
    TreeHouse house;
    house.air = reference_air();
    house.air.density = house.air.density * std::exp(-draw.between(0, 3000) / 8400);
    const double share = draw.between(0, 1);
    const int outlets = 1 + static_cast<int>(59.999 * share * share * share);
    const bool leaky = draw.chance(0.7);
    Builder builder{draw, house.air, leaky};
    house.supply = builder.side(1, outlets);
    house.returns = builder.side(-1, builder.draw.number(1, 1 + outlets / 4));
    const double most_flow = builder.draw.between(0.02, 0.06) * (outlets + 1);
    if (builder.draw.chance(0.6))
        house.blower = table(builder.draw, most_flow);
    else
        house.held_flow = most_flow;
    house.between = builder.draw.chance(0.5) ? Between::smooth : Between::straight_lines;
    return house;
}

// --- The same as a network
// -----------------------------------------------------------------------------------

namespace {

// Nodes: 0 behind the blower, 1 before it.
class Writer {
  public:
    explicit Writer(const TreeHouse& house) : house_(house) {
        made_.network.nodes = 2;
        made_.network.injected.resize(2);
        write(house.supply, 0, false);
        write(house.returns, 1, true);
        if (house.blower.empty()) {
            made_.network.injected[0] += units::MassFlow(house.held_flow);
            made_.network.injected[1] -= units::MassFlow(house.held_flow);
        } else {
            made_.network.links.push_back({1, 0, FanCurve(house.blower, house.between)});
            made_.counterparts.push_back({&house.supply.piece.flow, 1});
        }
    }
    HouseAsNetwork made() { return std::move(made_); }

  private:
    int new_node() {
        made_.network.injected.emplace_back();
        return made_.network.nodes++;
    }
    void link(int from, int to, Law law, const double* flow) {
        made_.network.links.push_back({from, to, std::move(law)});
        made_.counterparts.push_back({flow, 1});
    }
    void link_mirrored(int from, int to, Law law, const double* flow, bool mirrored) {
        if (mirrored)
            link(to, from, std::move(law), flow);
        else
            link(from, to, std::move(law), flow);
    }
    // A piece with a linear loss is a device, without friction.
    Law law_of(const Piece& piece) const {
        if (piece.linear > 0) return FixedLoss{piece.linear, piece.quadratic};
        return DuctLoss{piece.section, units::Length(piece.length), house_.air, piece.factor,
                        piece.quadratic};
    }
    void write(const Trunk& trunk, int from, bool mirrored) {
        const int end = new_node();
        link_mirrored(from, end, law_of(trunk.piece), &trunk.piece.flow, mirrored);
        if (trunk.hole.coefficient > 0)
            link_mirrored(end, house_air, LeakLaw{trunk.hole.coefficient, trunk.hole.exponent},
                          &trunk.hole.flow, mirrored);
        for (const Mouth& mouth : trunk.mouths) {
            if (!mirrored) made_.supply_mouths.push_back(made_.network.links.size());
            if (!mouth.behind_door) {
                link_mirrored(end, house_air, law_of(mouth.run), &mouth.run.flow, mirrored);
                continue;
            }
            const int room = new_node();
            made_.network.injected.back() = units::MassFlow(mirrored ? mouth.drawn : -mouth.drawn);
            link_mirrored(end, room, law_of(mouth.run), &mouth.run.flow, mirrored);
            made_.network.links.push_back({room, house_air, quadratic(mouth.door)});
            made_.counterparts.push_back({nullptr, 0});
        }
        for (const Trunk& next : trunk.trunks) write(next, end, mirrored);
    }

    const TreeHouse& house_;
    HouseAsNetwork made_;
};

}  // namespace

HouseAsNetwork as_network(const TreeHouse& house) { return Writer(house).made(); }

}  // namespace network
