#include "questions/register_face.hpp"

#include <algorithm>

#include "ducts/section.hpp"
#include "ducts/stock_boots.hpp"
#include "registers/sound.hpp"

namespace questions {
namespace {

struct OnTheShelf {
    house::Mount mount;
    const RunEnd& end;
    ducts::Stock stock;

    bool has_boot(const house::Rectangular& face) const {
        return ducts::joins_register(end.duct, face, mount, stock);
    }
    // nullptr: none is large enough.
    const ducts::StockRegister* smallest(units::Length longest, bool with_boot) const {
        const units::Area duct = ducts::section_of(end.duct).area;
        const units::Area free = registers::softly_through(end.gives);
        for (const ducts::StockRegister& each : ducts::stock_registers(mount, stock)) {
            const house::Rectangular& face = each.face;
            if (face.width * face.height >= duct && each.free >= free &&
                std::max(face.width, face.height) <= longest && (!with_boot || has_boot(face)))
                return &each;
        }
        return nullptr;
    }
};

RegisterFace face_of_the_sheet(const house::Outlet& outlet, const OnTheShelf& shelf) {
    const house::Rectangular& face = *outlet.face;
    const units::Area usual = ducts::register_free_share(shelf.mount) * (face.width * face.height);
    return {face, outlet.free_area.value_or(usual), true, true, shelf.has_boot(face)};
}

bool leads_into_a_stack(const house::Duct& duct) {
    return std::any_of(duct.fittings.begin(), duct.fittings.end(), [](const house::CatalogueName& fitting) {
        return fitting.text.starts_with("round-to-stack boot");
    });
}

}  // namespace

RunEnd on_a_stack(const RunEnd& end, ducts::Stock stock) {
    const auto* pipe = std::get_if<house::Round>(&end.duct);
    const house::Rectangular* stack = pipe ? ducts::stack_after(*pipe, stock) : nullptr;
    return stack ? RunEnd{*stack, end.gives} : end;
}

RunEnd run_end(const house::House& house, const house::Outlet& outlet, const BranchTrial& trial,
               ducts::Stock stock) {
    const house::Duct& last = *house.duct(outlet.duct);
    const RunEnd end{last.shape ? *last.shape : trial.pipe, trial.gives};
    return leads_into_a_stack(last) ? on_a_stack(end, stock) : end;
}

RegisterFace register_face(const house::Outlet& outlet, house::Mount mount, const RunEnd& end,
                           units::Length longest, ducts::Stock stock) {
    const OnTheShelf shelf{mount, end, stock};
    if (outlet.face && outlet.mount.value_or(mount) == mount) return face_of_the_sheet(outlet, shelf);
    for (const units::Length length : {mount == house::Mount::floor ? longest : any_length, any_length})
        for (const bool with_boot : {true, false})
            if (const ducts::StockRegister* found = shelf.smallest(length, with_boot))
                return {found->face, found->free, false, true, with_boot};
    const ducts::StockRegister& largest = ducts::stock_registers(mount, stock).back();
    return {largest.face, largest.free, false, false, shelf.has_boot(largest.face)};
}

}  // namespace questions
