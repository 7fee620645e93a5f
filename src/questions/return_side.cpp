#include "questions/return_side.hpp"

#include <algorithm>
#include <span>

#include "ducts/terminal.hpp"
#include "questions/branch_ducts.hpp"

namespace questions {
namespace {

// The first of these from the shelf with at least this face.
template <class Piece, class Face>
std::optional<Piece> first_with(std::span<const Piece> shelf, units::Area least, Face face) {
    for (const Piece& piece : shelf) {
        const house::Rectangular of = face(piece);
        if (of.width * of.height >= least) return piece;
    }
    return std::nullopt;
}

std::optional<house::Rectangular> stock_grille(units::Area least) {
    return first_with(ducts::stock_return_grilles(), least,
                      [](const house::Rectangular& grille) { return grille; });
}

std::optional<JumpOver> jump_over(const WayBack& back) {
    constexpr double larger_than_the_pair = 1.5, bends = 2 * 0.6, taut = 1;
    const auto grille = stock_grille(larger_than_the_pair * back.grille);
    if (!grille) return std::nullopt;
    const ducts::JumpDuct jump{grille->width * grille->height, ducts::usual_free_share, jump_length, bends};
    const auto duct = ducts::jump_duct_for(back.flow, jump, taut, back.air);
    if (!duct) return std::nullopt;
    return JumpOver{*grille, *duct};
}

}  // namespace

std::optional<WayBack> way_back(const house::House& house, const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    const house::RoomId room = setting.asked.room;
    const bool has_return =
        std::any_of(house.outlets.begin(), house.outlets.end(),
                    [&](const house::Outlet& o) { return o.room == room && !house.is_supply(o); });
    const auto& needs = sizing.choice().needs;
    if (has_return || !needs || needs->flow <= units::MassFlow()) return std::nullopt;
    // All its outlets blow at once, and what leaves is as warm as the room.
    WayBack back;
    back.air = loads::air_at(setting.asked.inside, setting.supply.pressure);
    back.flow = setting.outlets_in_room * (needs->flow / back.air.density);
    back.opening = ducts::opening_for(back.flow, ducts::closed_door_limit, back.air);
    back.grille = ducts::transfer_grille_for(back.flow, ducts::usual_free_share, back.air);
    back.jump = jump_over(back);
    return back;
}

ReturnFaces return_faces(const house::House& house, const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    const loads::Air& air = setting.return_air;
    ReturnFaces faces;
    faces.flow = setting.moved / air.density;
    faces.grilles = ducts::face_for(faces.flow, ducts::return_grille_face);
    faces.filter = ducts::face_for(faces.flow, ducts::filter_face);
    faces.stock_filter = first_with(ducts::stock_filters(), faces.filter,
                                    [](const ducts::StockFilter& filter) { return filter.face; });
    // The plan's shares of what the blower really moves.
    const double real = setting.moved / setting.blower.mass_flow;
    for (const ducts::SystemSection& section : planned_system(sizing).return_side) {
        if (section.outlet < 0) continue;
        const house::Outlet& outlet = house.outlets[static_cast<std::size_t>(section.outlet)];
        if (!outlet.face) continue;
        const units::Airflow flow = real * (section.flow / air.density);
        faces.described.push_back({section.outlet, flow, flow / (outlet.face->width * outlet.face->height)});
    }
    std::sort(faces.described.begin(), faces.described.end(),
              [](const ReturnFace& a, const ReturnFace& b) { return a.outlet < b.outlet; });
    return faces;
}

}  // namespace questions
