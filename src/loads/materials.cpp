#include "loads/materials.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "house/words.hpp"
#include "loads/named_rows.hpp"
#include "units/read.hpp"
#include "units/write.hpp"

namespace loads {
namespace {

using Found = std::variant<Layer, house::Mistake>;

constexpr double stray = 0.15;          // of a stock piece's thickness
constexpr units::Length thickest{1.0};  // a fieldstone wall, or a foot more than any attic fill

// "dense cellulose, 3-1/2 in" in its two parts, and the place to blame.
struct Written {
    std::string_view name, thickness;
    house::Place place;
    std::string quoted() const { return "'" + std::string(name) + "'"; }
    house::Mistake mistake(const std::string& what, const std::string& remedy) const {
        return {quoted() + " " + what, {}, remedy, place, {}};
    }
};

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') + 1 - first);
}

Written split(const house::CatalogueName& name) {
    const std::string_view text = name.text;
    const std::size_t comma = text.find(',');
    if (comma == std::string_view::npos) return {trimmed(text), {}, name.place};
    return {trimmed(text.substr(0, comma)), trimmed(text.substr(comma + 1)), name.place};
}

// The stock pieces of one name stand together in the table.
using Pieces = std::span<const Material>;

Pieces pieces_of(std::string_view name) {
    const Pieces all = materials();
    const auto is_it = [&](const Material& material) { return material.name == name; };
    const auto first = std::find_if(all.begin(), all.end(), is_it);
    return {first, std::find_if_not(first, all.end(), is_it)};
}

std::string text_of(double metres) { return units::write(units::Length(metres), units::System::us).text(); }

bool by_thickness(const Material& material) { return material.resistance == 0; }

// "1/2 in, 5/8 in, 3/4 in"
std::string stock(Pieces pieces) {
    std::string list;
    for (const Material& piece : pieces) list += (list.empty() ? "" : ", ") + text_of(piece.thickness);
    return list;
}

Layer layer_of(const Material& material, units::Length thickness) {
    Layer layer;
    layer.thickness = thickness;
    layer.between_studs = material.between_studs;
    layer.empty_bay = by_thickness(material) && material.conductivity == 0;
    if (!by_thickness(material)) layer.resistance = units::Resistance(material.resistance);
    if (material.conductivity > 0) layer.resistance = thickness / units::Conductivity(material.conductivity);
    return layer;
}

Found without_thickness(Pieces pieces, const Written& written) {
    const Material& material = pieces.front();
    if (pieces.size() > 1 || by_thickness(material)) {
        const std::string example = by_thickness(material) ? "3-1/2 in" : text_of(material.thickness);
        return written.mistake("needs a thickness", "write " + std::string(written.name) + ", " + example);
    }
    return layer_of(material, units::Length(material.thickness));
}

Found stock_piece(Pieces pieces, const Written& written, units::Length thickness) {
    if (pieces.front().thickness == 0)
        return written.mistake("is one piece with one resistance",
                               "write " + std::string(written.name) + " without a thickness");
    const auto off = [&](const Material& piece) { return std::abs(thickness.si() / piece.thickness - 1); };
    const auto nearer = [&](const Material& a, const Material& b) { return off(a) < off(b); };
    const Material& nearest = *std::min_element(pieces.begin(), pieces.end(), nearer);
    if (off(nearest) <= stray) return layer_of(nearest, thickness);
    return written.mistake("is known " + stock(pieces) + " thick",
                           pieces.size() == 1 ? "write that, or the layer's resistance, as R-1.5"
                                              : "write one of them, or the layer's resistance, as R-1.5");
}

Found with_thickness(Pieces pieces, const Written& written) {
    const auto reading = units::read_length(written.thickness);
    if (const auto* problem = std::get_if<units::ReadProblem>(&reading))
        return written.mistake("has no thickness to go by: " + problem->text, problem->remedy);
    const auto thickness = std::get<units::Length>(reading);
    if (thickness <= units::Length() || thickness > thickest)
        return written.mistake("cannot be " + std::string(written.thickness) + " thick",
                               "a layer is up to 1 m (3 ft) thick");
    if (by_thickness(pieces.front())) return layer_of(pieces.front(), thickness);
    return stock_piece(pieces, written, thickness);
}

Found resistance_or_unknown(const house::CatalogueName& name, const Written& written) {
    const auto reading = units::read_resistance(name.text);
    if (const auto* resistance = std::get_if<units::Resistance>(&reading)) {
        Layer layer;
        layer.resistance = *resistance;
        return layer;
    }
    const std::string nearest = did_you_mean(written.name, names(materials()));
    return house::Mistake{"no material is called " + written.quoted(),
                          nearest,
                          nearest.empty() ? "write the layer's resistance, as R-1.5"
                                          : "or write the layer's resistance, as R-1.5",
                          name.place,
                          {}};
}

// The house takes its resistance from the defaults; here only its thickness is looked at.
Found unknown_layer(const Written& written) {
    constexpr Material anything{house::dont_know, 1, 0, 0, false, {}};
    return written.thickness.empty() ? Layer{} : with_thickness({&anything, 1}, written);
}

}  // namespace

Found look_up_layer(const house::CatalogueName& name) {
    const Written written = split(name);
    if (written.name == house::dont_know) return unknown_layer(written);
    const Pieces pieces = pieces_of(written.name);
    if (pieces.empty()) return resistance_or_unknown(name, written);
    return written.thickness.empty() ? without_thickness(pieces, written) : with_thickness(pieces, written);
}

std::variant<Glass, house::Mistake> look_up_glass(const house::CatalogueName& name) {
    return row_named(name, glasses(), "glass", "glasses");
}

}  // namespace loads
