// A table as text: columns by spaces alone, decimals under each other, ">" before the recommended row.
#pragma once

#include <string>

#include "report/page.hpp"
#include "report/text.hpp"

namespace report {

std::string table_text(const Table& table, Paper paper);

}  // namespace report
