#include "questions/register_face.hpp"

#include <algorithm>

#include "ducts/section.hpp"
#include "registers/sound.hpp"

namespace questions {

RegisterFace register_face(const house::Outlet& outlet, house::Mount mount, const BranchTrial& trial,
                           units::Length longest, ducts::Stock stock) {
    if (outlet.face && outlet.mount.value_or(mount) == mount) return {*outlet.face, true, true};
    const bool in_floor = mount == house::Mount::floor || mount == house::Mount::toe_kick;
    const auto shelf = in_floor ? ducts::stock_floor_registers(stock) : ducts::stock_wall_registers(stock);
    const units::Area least = std::max(ducts::section_of(trial.pipe).area,
                                       registers::softly_through(trial.gives) / ducts::register_free_share);
    const house::Rectangular* face =
        ducts::smallest_register(shelf, least, mount == house::Mount::floor ? longest : any_length);
    if (!face) face = ducts::smallest_register(shelf, least, any_length);
    return face ? RegisterFace{*face, false, true} : RegisterFace{shelf.back(), false, false};
}

}  // namespace questions
