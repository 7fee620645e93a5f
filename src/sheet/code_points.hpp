// UTF-8 as the sheet needs it: strict decoding, counting, and moving code points out of the parser's way.
//
// The TOML parser has a hole for most characters of U+0080..U+FEFF outside quotes. lift_code_points moves
// each of them up by U+100000 (one for one, so that columns stay), lower_code_points brings them back:
//     lower_code_points(lift_code_points(text)) == text   where no character of text is above U+FFFFF.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sheet {

struct CodePoint {
    char32_t value = 0;
    std::size_t bytes = 0;  // 0: what stands there is not UTF-8, or the text has ended
};

CodePoint code_point_at(std::string_view text, std::size_t at);
void append_code_point(std::string& text, char32_t value);
int count_code_points(std::string_view text);

// Characters nobody can see and no name needs: U+0000..U+001F, U+007F..U+009F.
bool is_control(char32_t value);

std::string lift_code_points(std::string_view text);
std::string lower_code_points(std::string_view text);

// A text fit to be quoted in a message: at most 40 code points, control characters and broken bytes as '?'.
std::string shown(std::string_view text);

}  // namespace sheet
