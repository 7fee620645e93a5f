// Constructions of the sheet as assemblies: a U, an R, or layers between which some framing stands.
#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/read.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

double framing_share(Work& work, const SurveyConstruction& construction) {
    if (construction.framing) return construction.framing->value;
    if (!construction.studs) return 0;
    const bool wide =
        construction.studs->value > 20 * units::unit::inch;  // half-way between the two usual spacings
    return work.ledger.take(wide ? DefaultId::framing_at_24_in : DefaultId::framing_at_16_in,
                            construction.name);
}

// Of "don't know, 3-1/2 in"; 0 where there is none. One that cannot be read is loads' to blame.
units::Length thickness_of(std::string_view layer) {
    const auto comma = layer.find(',');
    if (comma == std::string_view::npos) return {};
    const auto reading = units::read_length(layer.substr(comma + 1));
    const auto* thickness = std::get_if<units::Length>(&reading);
    return thickness ? *thickness : units::Length();
}

// Layers the default table knows better than any table of materials.
bool add_unnamed(Work& work, const SurveyConstruction& construction, std::string_view text, Layers& layers) {
    constexpr units::Length least_bay = 2 * units::unit::inch;  // thicker than any sheet or board on a wall
    const std::string_view name = text.substr(0, text.find(','));
    if (name != "open stud bay" && name != dont_know) return false;
    const units::Length thickness = thickness_of(text);
    const bool open = name != dont_know;
    if (open && thickness <= units::Length()) return false;
    if (!open && !(construction.studs && thickness >= least_bay)) {
        layers.unknown += units::Resistance(work.ledger.take(DefaultId::unknown_layer, construction.name));
        return true;
    }
    layers.bay_depth += thickness;
    layers.bay_after = layers.names.size();
    layers.bay += units::Resistance(
        work.ledger.take(open ? DefaultId::open_bay : DefaultId::unknown_bay, construction.name));
    return true;
}

}  // namespace

bool is_known(const Maybe<std::string>& name) { return name && name->value != dont_know; }

Assembly assembly_or(Work& work, const Maybe<std::string>& name, DefaultId usual, const std::string& whose) {
    if (is_known(name)) return assembly_named(work, *name);
    const double value = work.ledger.take(usual, whose);
    const bool resistance = default_row(usual).written == WrittenAs::r_value;
    return units::Transmittance(resistance ? 1 / value : value);
}

Assembly assembly_named(Work& work, const Given<std::string>& name) {
    const auto found = find_named(work.survey.constructions, name.value);
    if (!found) {
        blame_unknown(work.ledger, name, "construction", work.survey.constructions);
        return units::Transmittance(1);
    }
    const SurveyConstruction& construction = work.survey.constructions[static_cast<std::size_t>(*found)];
    if (construction.u) return construction.u->value;
    if (construction.r && construction.r->value.si() > 0) return 1 / construction.r->value;
    if (construction.layers.empty()) {
        work.ledger.blame(Mistake{"the construction " + construction.name + " says nothing of its make",
                                  {},
                                  "write layers = [...] from outside to inside, or u, or r",
                                  construction.place,
                                  std::nullopt,
                                  true});
        return units::Transmittance(1);
    }
    Layers layers;
    layers.framing = framing_share(work, construction);
    for (const auto& layer : construction.layers)
        if (!add_unnamed(work, construction, layer.value, layers))
            layers.names.push_back({layer.value, layer.place});
    return layers;
}

}  // namespace house
