#include "report/drawing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/wrap.hpp"
#include "units/write.hpp"

namespace report {
namespace {

std::string px(double value) { return units::decimal(value, 1); }

// How many bytes of UTF-8 begin here; 0: what stands here is none.
std::size_t length_of_character(std::string_view text, std::size_t at) {
    const auto byte = static_cast<unsigned char>(text[at]);
    const std::size_t length = byte < 0x80                   ? 1
                               : byte >= 0xC2 && byte < 0xE0 ? 2
                               : byte >= 0xE0 && byte < 0xF0 ? 3
                               : byte >= 0xF0 && byte < 0xF5 ? 4
                                                             : 0;
    if (length == 0 || at + length > text.size()) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((static_cast<unsigned char>(text[at + i]) & 0xC0) != 0x80) return 0;
    return length;
}

// What XML may not hold as it is: its own signs, control characters, bytes that are no UTF-8.
std::string escaped(std::string_view text) {
    std::string safe;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = length_of_character(text, at);
        const char c = text[at];
        if (c == '&')
            safe += "&amp;";
        else if (c == '<')
            safe += "&lt;";
        else if (c == '>')
            safe += "&gt;";
        else if (c == '"')
            safe += "&quot;";
        else if (length == 0 || (length == 1 && (c < ' ' || c == '\x7f')))
            safe += length == 0 ? '?' : ' ';
        else
            safe += text.substr(at, length);
        at += length == 0 ? 1 : length;
    }
    return safe;
}

double apart(Pixel a, Pixel b) { return std::hypot(a.x - b.x, a.y - b.y); }

const char* anchor_word(Anchor anchor) {
    switch (anchor) {
        case Anchor::start:
            return "start";
        case Anchor::middle:
            return "middle";
        case Anchor::end:
            break;
    }
    return "end";
}

}  // namespace

bool overlap(const Frame& a, const Frame& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

Frame around(Pixel middle, double half_width, double half_height) {
    return {middle.x - half_width, middle.y - half_height, middle.x + half_width, middle.y + half_height};
}

Frame along(Pixel from, Pixel to) {
    constexpr double beside = 3;
    return {std::min(from.x, to.x) - beside, std::min(from.y, to.y) - beside, std::max(from.x, to.x) + beside,
            std::max(from.y, to.y) + beside};
}

double text_width(std::string_view text, double size) {
    constexpr double of_its_size = 0.56;  // of a letter, on the average of common fonts
    return of_its_size * size * static_cast<double>(columns(text));
}

void Drawing::open_group(std::string_view id, std::string_view attributes) {
    body_ += fmt::format("<g id=\"{}\"{}{}>\n", escaped(id), attributes.empty() ? "" : " ", attributes);
}

void Drawing::close_group() { body_ += "</g>\n"; }

void Drawing::line(Pixel from, Pixel to, std::string_view drawn) {
    body_ += fmt::format("<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\" {}/>\n", px(from.x), px(from.y),
                         px(to.x), px(to.y), drawn);
}

void Drawing::rectangle(const Frame& frame, std::string_view drawn) {
    body_ += fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" {}/>\n", px(frame.left),
                         px(frame.top), px(frame.width()), px(frame.height()), drawn);
}

void Drawing::circle(Pixel middle, double radius, std::string_view drawn) {
    body_ += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" {}/>\n", px(middle.x), px(middle.y),
                         px(radius), drawn);
}

void Drawing::polygon(const std::vector<Pixel>& corners, std::string_view drawn) {
    std::string points;
    for (const Pixel& corner : corners)
        points += fmt::format("{}{},{}", points.empty() ? "" : " ", px(corner.x), px(corner.y));
    body_ += fmt::format("<polygon points=\"{}\" {}/>\n", points, drawn);
}

void Drawing::arc(Pixel centre, Pixel from, Pixel to, std::string_view drawn, bool closed) {
    const double cross = (from.x - centre.x) * (to.y - centre.y) - (from.y - centre.y) * (to.x - centre.x);
    const std::string radius = px(apart(centre, from));
    body_ +=
        fmt::format("<path d=\"M {} {} A {} {} 0 0 {} {} {}{}\" {}/>\n", px(from.x), px(from.y), radius,
                    radius, cross > 0 ? 1 : 0, px(to.x), px(to.y),
                    closed ? fmt::format(" L {} {} Z", px(centre.x), px(centre.y)) : std::string(), drawn);
}

void Drawing::text(Pixel at, std::string_view words, const Lettering& lettering) {
    std::string turned;
    if (lettering.turned != 0)
        turned = fmt::format(" transform=\"rotate({} {} {})\"", px(lettering.turned), px(at.x), px(at.y));
    body_ +=
        fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\" text-anchor=\"{}\" fill=\"{}\"{}{}>{}</text>\n",
                    px(at.x), px(at.y), px(lettering.size), anchor_word(lettering.anchor), lettering.ink,
                    lettering.bold ? " font-weight=\"bold\"" : "", turned, escaped(words));
}

void Drawing::arrow(Pixel from, Pixel to) {
    constexpr double head = 8, half = 3.5;
    const double length = apart(from, to);
    if (!(length > head)) return;
    const Pixel along{(to.x - from.x) / length, (to.y - from.y) / length};
    const Pixel neck{to.x - head * along.x, to.y - head * along.y};
    line(from, neck, stroke::line);
    polygon({to,
             {neck.x - half * along.y, neck.y + half * along.x},
             {neck.x + half * along.y, neck.y - half * along.x}},
            stroke::filled);
}

void Drawing::define_clip(std::string_view id, const Frame& frame) {
    definitions_ +=
        fmt::format("<clipPath id=\"{}\"><rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/></clipPath>\n",
                    id, px(frame.left), px(frame.top), px(frame.width()), px(frame.height()));
}

void Drawing::define_hatching(std::string_view id) {
    definitions_ += fmt::format(
        "<pattern id=\"{}\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\" "
        "patternTransform=\"rotate(45)\"><rect width=\"6\" height=\"6\" fill=\"#fff\"/><line x1=\"0\" "
        "y1=\"0\" "
        "x2=\"0\" y2=\"6\" stroke=\"#000\" stroke-width=\"2\"/></pattern>\n",
        id);
}

std::string Drawing::svg(double width, double height, std::string_view title) const {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {1}\" width=\"{0}\" height=\"{1}\" "
        "font-family=\"Arial, Helvetica, sans-serif\" role=\"img\">\n<title>{2}</title>\n<defs>\n{3}</defs>\n"
        "<rect x=\"0\" y=\"0\" width=\"{0}\" height=\"{1}\" fill=\"#fff\"/>\n{4}</svg>\n",
        px(width), px(height), escaped(title), definitions_, body_);
}

}  // namespace report
