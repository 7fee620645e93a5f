// Ducts of this stage, as a flat list that names what each leaves or joins.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace house {
namespace {

// A tape round a pipe also goes over its seam: a diameter within 4 % of a whole inch is that stock pipe.
Round from_tape(units::Length around) {
    const units::Length diameter = around / std::numbers::pi;
    const units::Length whole = std::round(diameter / units::unit::inch) * units::unit::inch;
    return {abs(diameter - whole) < 0.04 * diameter ? whole : diameter};
}

bool is_empty(const Shape& shape) { return narrowest_side(shape).si() <= 0; }

std::optional<Shape> shape_of(Work& work, const SurveyDuct& written, const Duct& duct) {
    if (written.shape && written.around)
        work.ledger.blame(Mistake{"the duct " + duct.name + " has two shapes",
                                  {},
                                  "write one of them",
                                  written.around->place,
                                  written.shape->place});
    if (written.shape && is_empty(written.shape->value))
        work.ledger.blame(written.shape->place, "the duct " + duct.name + " has no width");
    if (written.around && written.around->value.si() <= 0)
        work.ledger.blame(written.around->place, "the duct " + duct.name + " has no width");
    if (written.shape) return written.shape->value;
    if (written.around) return from_tape(written.around->value);
    const bool to_be_sized = duct.state == State::added && duct.side == DuctSide::supply;
    if (!to_be_sized)
        work.ledger.blame_missing(written.place, "the shape of the duct " + duct.name,
                                  "shape = \"6 in\", \"8 x 16 in\", or { around = \"19 in\" }");
    return std::nullopt;
}

// A flexible duct pushed together to less than this was never measured.
constexpr double least_stretch = 0.55;

void add_make(Work& work, const SurveyDuct& written, Duct& duct) {
    if (written.kind) duct.kind = written.kind->value;
    const bool flexible = duct.kind == DuctKind::flex;
    if (written.stretch && !flexible)
        return work.ledger.blame(written.stretch->place, "the duct " + duct.name + " cannot be stretched",
                                 "write kind = \"flex\", or leave stretch out");
    if (written.stretch && written.stretch->value < least_stretch)
        return work.ledger.blame(written.stretch->place,
                                 "the duct " + duct.name + " is pushed together to less than 55 %",
                                 "write what it is long as a share of its full length, as \"90 %\"");
    if (!flexible) return;
    if (duct.shape && !std::holds_alternative<Round>(*duct.shape))
        work.ledger.blame(written.shape ? written.shape->place : written.place,
                          "the flexible duct " + duct.name + " is not round", "write shape = \"6 in\"");
    duct.stretch = work.ledger.or_default(written.stretch, DefaultId::flex_stretch, "the " + duct.name);
}

void add_fittings(Work& work, const SurveyDuct& written, Duct& duct) {
    for (const auto& fitting : written.fittings) duct.fittings.push_back({fitting.value, fitting.place});
    const auto add_turns = [&](Turns turns, Place place) {
        for (int i = 0; i < turns.count; ++i)
            duct.fittings.push_back({turns.square ? "square turn" : "rounded turn", place});
    };
    if (written.turns) add_turns(written.turns->value, written.turns->place);
    if (!written.turns && written.fittings.empty())
        add_turns({static_cast<int>(work.ledger.take(DefaultId::turns_not_given, "the " + duct.name)), true},
                  written.place);
}

void add_heat_path(Work& work, const SurveyDuct& written, Duct& duct) {
    const Site& site = work.house.site;
    if (written.runs_in) {
        ask_for_space(work, written.runs_in->value, "air around the " + duct.name);
        duct.surroundings = written.runs_in->value;
    } else if (duct.side == DuctSide::supply)
        duct.surroundings =
            site.winter_outdoor + work.ledger.take(DefaultId::duct_surroundings, "the " + duct.name) *
                                      (site.winter_indoor - site.winter_outdoor);
    else
        duct.surroundings =
            site.winter_indoor;  // return air loses next to nothing to a basement; not looked at
    if (duct.side == DuctSide::supply)
        duct.resistance = units::Resistance(work.ledger.take(DefaultId::bare_duct, "supply ducts"));
    if (written.wrap) duct.wrap = written.wrap->value;
    duct.resistance += duct.wrap;
}

Duct build_duct(Work& work, const SurveyDuct& written, int index) {
    Ledger& ledger = work.ledger;
    Duct duct;
    duct.id = DuctId{index};
    duct.place = written.place;
    duct.state = state_of(written.state);
    duct.name =
        ledger.required(written.name, written.place, "the name of this duct", "name = \"main trunk\"");
    duct.side = written.side ? written.side->value : DuctSide::supply;
    if (!written.side)
        ledger.blame_missing(written.place, "the side of the duct " + duct.name,
                             "side = \"supply\", or \"return\"");
    duct.shape = shape_of(work, written, duct);
    add_make(work, written, duct);
    duct.length = ledger.required(written.length, written.place, "the length of the duct " + duct.name,
                                  "length = \"17 ft\"");
    add_fittings(work, written, duct);
    if (written.damper) duct.damper = written.damper->value;
    if (written.through) {
        duct.through = find_named(work.survey.bays, written.through->value);
        if (!duct.through) blame_unknown(ledger, *written.through, "bay", work.survey.bays);
    }
    add_heat_path(work, written, duct);
    if (written.hidden && written.hidden->value)
        duct.loss_factor = ledger.take(DefaultId::hidden_loss, "the " + duct.name);
    return duct;
}

// Resolves what a duct leaves (from) or joins (to); "plenum" and "blower" are the ends of the tree.
void connect(Work& work, const SurveyDuct& written, Duct& duct) {
    const bool supply = duct.side == DuctSide::supply;
    const Maybe<std::string>& end = supply ? written.from : written.to;
    const char* root = supply ? "plenum" : "blower";
    if (!end)
        return work.ledger.blame_missing(
            written.place, "what the duct " + duct.name + (supply ? " leaves" : " leads to"),
            supply ? "from = \"plenum\", or the name of a duct" : "to = \"blower\", or the name of a duct");
    if (end->value == root) return;
    const auto other = find_named(work.survey.ducts, end->value);
    if (!other) return blame_unknown(work.ledger, *end, "duct", work.survey.ducts);
    const SurveyDuct& trunk = work.survey.ducts[static_cast<std::size_t>(*other)];
    if (trunk.side && written.side && trunk.side->value != duct.side)
        return work.ledger.blame(
            end->place, "the duct " + duct.name + " and the " + end->value + " are on different sides",
            "a supply duct leaves a supply duct, a return duct joins a return duct");
    if (!exists(work, trunk.state))
        return work.ledger.blame(Mistake{
            "the duct " + duct.name + " hangs on the " + end->value + ", which is not there",
            {},
            work.stage == Stage::planned ? "one is removed, the other stays" : "one is found, the other new",
            end->place,
            trunk.state ? std::optional<Place>(trunk.state->place) : std::nullopt,
            true});
    duct.from = DuctId{*other};
    duct.at = trunk.length ? trunk.length->value : units::Length();
    if (!written.at) return;
    constexpr units::Length tape{0.003};  // measuring slack
    if (trunk.length && written.at->value > trunk.length->value + tape)
        work.ledger.blame(written.at->place,
                          "the duct " + duct.name + (supply ? " leaves the " : " joins the ") + end->value +
                              " beyond its end",
                          "the " + end->value + " is " +
                              units::write(trunk.length->value, units::System::us).text() + " long");
    duct.at = written.at->value;
}

// A duct that, followed towards the blower, comes back to itself.
void blame_loops(Work& work) {
    const auto& ducts = work.house.ducts;
    const auto next = [&](const Duct& duct) -> const Duct* {
        if (!duct.from) return nullptr;
        const auto at =
            std::find_if(ducts.begin(), ducts.end(), [&](const Duct& d) { return d.id == *duct.from; });
        return at == ducts.end() ? nullptr : &*at;
    };
    for (const Duct& start : ducts) {
        const Duct* at = next(start);
        for (std::size_t steps = 0; at && at != &start && steps < ducts.size(); ++steps) at = next(*at);
        if (at == &start)
            return work.ledger.blame(start.place, "the duct " + start.name + " leads back to itself",
                                     "follow it with a finger to the plenum or the blower");
    }
}

}  // namespace

void build_ducts(Work& work) {
    House& house = work.house;
    const auto& written = work.survey.ducts;
    bool has_return = false;
    house.ducts.reserve(written.size());
    for (std::size_t i = 0; i < written.size(); ++i) {
        if (!exists(work, written[i].state)) continue;
        Duct duct = build_duct(work, written[i], static_cast<int>(i));
        connect(work, written[i], duct);
        has_return = has_return || duct.side == DuctSide::return_side;
        house.ducts.push_back(std::move(duct));
    }
    blame_loops(work);
    if (!has_return)
        house.return_length =
            units::Length(work.ledger.take(DefaultId::return_length, "a return that is not described"));
    const bool any_fitting =
        house.other_rooms || std::any_of(house.ducts.begin(), house.ducts.end(),
                                         [](const Duct& duct) { return !duct.fittings.empty(); });
    if (any_fitting) house.fitting_losses = work.ledger.take(DefaultId::fitting_losses, "every fitting");
}

}  // namespace house
