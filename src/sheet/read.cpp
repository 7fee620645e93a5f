#include "sheet/read.hpp"

#include <algorithm>
#include <utility>

#include "sheet/parse.hpp"
#include "sheet/parts.hpp"

namespace sheet {
namespace {

// The version of the sheet's words comes first, so that a later one is told from a sheet full of slips.
void read_version(TableReader& sheet) {
    const auto version = sheet.value("sheet");
    if (!version) {
        sheet.mistakes().push_back({"a sheet begins with: sheet = 1",
                                    "",
                                    "write sheet = 1 on the first line",
                                    {1, 1, 2},
                                    std::nullopt});
        return;
    }
    const auto* number = std::get_if<std::int64_t>(&version->node->value);
    if (number == nullptr || *number != 1)
        version->blame("can only be 1", {"", version->write("1, without quotes")});
}

void sort_by_place(Mistakes& mistakes) {
    std::stable_sort(mistakes.begin(), mistakes.end(), [](const house::Mistake& a, const house::Mistake& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

}  // namespace

Read read(std::string_view text) {
    Read result;
    auto parsed = parse(text);
    if (auto* mistake = std::get_if<house::Mistake>(&parsed)) {
        result.mistakes.push_back(std::move(*mistake));
        return result;
    }
    TableReader sheet(std::get<Node>(parsed), "the sheet", result.mistakes);
    read_version(sheet);
    read_house(sheet, result.survey);
    read_spaces(sheet, result.survey);
    read_rooms(sheet, result.survey);
    read_machine(sheet, result.survey);
    read_ducts(sheet, result.survey);
    read_outlets(sheet, result.survey);
    read_framing(sheet, result.survey);
    read_readings(sheet, result.survey);
    sheet.finish();
    find_repeated_names(result.survey, result.mistakes);
    sort_by_place(result.mistakes);
    return result;
}

}  // namespace sheet
