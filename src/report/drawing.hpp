// A line drawing as SVG, in pixels from its top left; private to this folder. The same calls give the same
// bytes. Ink is black, white and grey with no need to tell greys apart.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace report {

struct Pixel {
    double x = 0, y = 0;
};
struct Frame {
    double left = 0, top = 0, right = 0, bottom = 0;
    double width() const { return right - left; }
    double height() const { return bottom - top; }
    Pixel middle() const { return {(left + right) / 2, (top + bottom) / 2}; }
};
bool overlap(const Frame& a, const Frame& b);
Frame around(Pixel middle, double half_width, double half_height);
Frame along(Pixel from, Pixel to);  // what a line takes, a little room on both sides

enum class Anchor { start, middle, end };
struct Lettering {
    double size = 12;
    Anchor anchor = Anchor::start;
    bool bold = false;
    double turned = 0;  // degrees clockwise
    std::string_view ink = "#000";
};
// About how wide text comes out; every reader's fonts differ a little.
double text_width(std::string_view text, double size);

// How lines and faces are drawn, as SVG attributes.
namespace stroke {
inline constexpr std::string_view outline = R"(fill="#fff" stroke="#000" stroke-width="1.2")";
inline constexpr std::string_view line = R"(fill="none" stroke="#000" stroke-width="1.2")";
inline constexpr std::string_view bold_line = R"(fill="none" stroke="#000" stroke-width="2.5")";
inline constexpr std::string_view thin = R"(fill="none" stroke="#000" stroke-width="0.8")";
inline constexpr std::string_view dashed =
    R"(fill="none" stroke="#666" stroke-width="0.8" stroke-dasharray="6 4")";
inline constexpr std::string_view filled = R"(fill="#000" stroke="#000" stroke-width="1")";
inline constexpr std::string_view erased = R"(fill="#fff" stroke="none")";
}  // namespace stroke

class Drawing {
  public:
    void open_group(std::string_view id, std::string_view attributes = {});
    void close_group();
    void line(Pixel from, Pixel to, std::string_view drawn);
    void rectangle(const Frame& frame, std::string_view drawn);
    void circle(Pixel middle, double radius, std::string_view drawn);
    void polygon(const std::vector<Pixel>& corners, std::string_view drawn);
    // A stretch of a circle round `centre`, the short way; with `closed` the slice it cuts out.
    void arc(Pixel centre, Pixel from, Pixel to, std::string_view drawn, bool closed = false);
    void text(Pixel at, std::string_view words, const Lettering& lettering);
    void arrow(Pixel from, Pixel to);
    void define_clip(std::string_view id, const Frame& frame);  // to clip-path="url(#id)"
    void define_hatching(std::string_view id);                  // to fill="url(#id)"
    std::string svg(double width, double height, std::string_view title) const;

  private:
    std::string definitions_, body_;
};

}  // namespace report
