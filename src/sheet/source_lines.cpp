#include "sheet/source_lines.hpp"

#include <algorithm>

#include "sheet/code_points.hpp"

namespace sheet {

SourceLines::SourceLines(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // no column of its own
    while (true) {
        const auto end = text.find('\n');
        std::string_view line = text.substr(0, end);
        if (line.ends_with('\r')) line.remove_suffix(1);
        lines_.push_back(line);
        if (end == std::string_view::npos) return;
        text.remove_prefix(end + 1);
    }
}

std::string_view SourceLines::line(int number) const {
    const auto index = static_cast<std::size_t>(number) - 1;
    return index < lines_.size() ? lines_[index] : std::string_view();
}

std::string_view from_column(std::string_view line, int column) {
    std::size_t at = 0;
    for (int passed = 1; passed < column && at < line.size(); ++passed)
        at += std::max<std::size_t>(code_point_at(line, at).bytes, 1);
    return line.substr(std::min(at, line.size()));
}

house::Place place_of_part(int line_number, std::string_view line, std::string_view part) {
    const auto before = static_cast<std::size_t>(part.data() - line.data());
    const int column = 1 + count_code_points(line.substr(0, before));
    return {line_number, column, column + std::max(count_code_points(part), 1)};
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return text.substr(text.size());
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

}  // namespace sheet
