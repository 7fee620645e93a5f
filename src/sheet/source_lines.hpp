// The sheet's text by line and column, as the user's editor counts them.
#pragma once

#include <string_view>
#include <vector>

#include "house/place.hpp"

namespace sheet {

// The lines without their line endings; views into the text, which must outlive them.
class SourceLines {
  public:
    explicit SourceLines(std::string_view text);
    std::string_view line(int number) const;  // counted from 1; empty where there is no such line

  private:
    std::vector<std::string_view> lines_;
};

// The part of a line from a column on (columns count code points from 1); empty past its end.
std::string_view from_column(std::string_view line, int column);

// The place of a part of a line; part must be a view into line.
house::Place place_of_part(int line_number, std::string_view line, std::string_view part);

std::string_view trimmed(std::string_view text);  // without spaces and tabs at both ends

}  // namespace sheet
