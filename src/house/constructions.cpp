// Constructions of the sheet as assemblies: a U, an R, or layers between which some framing stands.
#include "house/builders.hpp"
#include "house/names.hpp"
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

}  // namespace

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
    Layers layers{{}, framing_share(work, construction)};
    for (const auto& layer : construction.layers) layers.names.push_back({layer.value, layer.place});
    return layers;
}

}  // namespace house
