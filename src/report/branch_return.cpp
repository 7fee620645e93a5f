// How the room's air gets back out, and the faces of return grilles and filter.
#include <fmt/format.h>

#include <cmath>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

// All of them, with the one from the shelf that does it alone.
std::string wanted_faces(const BranchView& view) {
    const questions::ReturnFaces& faces = view.answer.return_faces;
    std::string words = fmt::format(
        "{} of return air want {} of grille face in all, at {} over it, and {} of filter, at {}",
        figure(faces.flow, view.system), face_text(faces.grilles, view.system),
        figure(ducts::return_grille_face.recommended, view.system), face_text(faces.filter, view.system),
        figure(ducts::filter_face.recommended, view.system));
    if (faces.stock_filter)
        words += fmt::format(": {} filter does it",
                             with_article(shape_text(house::Shape(faces.stock_filter->face), view.system)));
    else
        words += ": more than one filter from the shelf has, so two side by side";
    return words;
}

std::string described_face(const questions::ReturnFace& face, const BranchView& view) {
    const house::Outlet& outlet = view.answer.house.outlets[static_cast<std::size_t>(face.outlet)];
    return fmt::format("the {}, {}, takes {} at {} over its face: {}", outlet.name,
                       shape_text(house::Shape(*outlet.face), view.system), figure(face.flow, view.system),
                       figure(face.speed, view.system),
                       face.too_fast() ? fmt::format("it will be heard, {} is the most",
                                                     number(ducts::return_grille_face.most, view.system))
                                       : "that does");
}

}  // namespace

Note way_back_note(const BranchView& view) {
    if (!view.answer.way_back) return {};
    const questions::WayBack& back = *view.answer.way_back;
    constexpr units::Length door{32 * units::unit::inch};  // a usual inside door
    const units::Length step =
        view.system == units::System::us ? units::unit::inch / 8 : 5 * units::unit::millimetre;
    const units::Length gap = std::ceil(back.opening / door / step) * step;
    Note note{"way back",
              {fmt::format("with its door shut and no return in it, the {} must let {} out again at no more "
                           "than {}: a gap of {} under a door {} wide, or a pair of transfer grilles of {} "
                           "each",
                           view.room(), figure(back.flow, view.system),
                           figure(ducts::closed_door_limit, view.system), figure(gap, view.system),
                           figure(door, view.system), face_text(back.grille, view.system))}};
    if (back.jump)
        note.lines.push_back(fmt::format(
            "or over the ceiling: {} flexible duct, {} of it pulled straight, between two {} grilles",
            with_article(shape_text(house::Shape(back.jump->duct), view.system)),
            figure(questions::jump_length, view.system),
            shape_text(house::Shape(back.jump->grille), view.system)));
    return note;
}

Note return_note(const BranchView& view) {
    Note note{"return side", {wanted_faces(view)}};
    for (const questions::ReturnFace& face : view.answer.return_faces.described)
        note.lines.push_back(described_face(face, view));
    return note;
}

}  // namespace report
