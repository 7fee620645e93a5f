// What of the shelf fits together: which boot joins a register or a stack to which duct.
//
// The rows are in stock_sizes.hpp (common practice). A pipe or a face may be written to the millimetre, and
// whichever side of a face first.
#pragma once

#include "ducts/stock_sizes.hpp"

namespace ducts {

// nullptr: none.
const StockBoot* boot_to(const house::Rectangular& face, std::span<const StockBoot> boots);
// Whether the boot is made for a pipe of that diameter.
bool takes(const StockBoot& boot, const house::Round& pipe, Stock stock = Stock::us);
// Whether the shop has what joins a duct to a register: to a round pipe its boot; to a flat oval that of the
// pipe it was pressed from; to a wall stack a stackhead or a stack boot, whose register is as long as the
// stack is wide.
bool joins_register(const house::Shape& duct, const house::Rectangular& face, house::Mount mount,
                    Stock stock = Stock::us);
// The stack a pipe goes on in: the smallest with a boot from it that carries as much, else the largest with
// one; nullptr: none.
const house::Rectangular* stack_after(const house::Round& pipe, Stock stock = Stock::us);

}  // namespace ducts
