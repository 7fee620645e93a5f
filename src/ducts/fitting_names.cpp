// Finds a fitting by what the sheet calls it.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <vector>

#include "ducts/fittings.hpp"
#include "ducts/loss_laws.hpp"
#include "units/nearest_word.hpp"
#include "units/read.hpp"
#include "units/unit.hpp"

namespace ducts {
namespace {

using house::CatalogueName;
using house::Mistake;
using Found = std::variant<Fitting, Mistake>;

constexpr units::Length longest_equivalent = 500 * units::unit::foot;
constexpr double most_coefficient = 200;  // a damper all but shut

const Fitting* find(std::string_view name) {
    const auto all = fittings();
    const auto found =
        std::find_if(all.begin(), all.end(), [name](const Fitting& row) { return row.name == name; });
    return found == all.end() ? nullptr : &*found;
}

std::string quoted(std::string_view name) { return "'" + std::string(name) + "'"; }

std::string listed(const std::vector<std::string>& names) {
    std::string list;
    for (const auto& name : names) list += (list.empty() ? "" : ", ") + quoted(name);
    return list;
}

Mistake unknown(const CatalogueName& name) {
    std::vector<std::string_view> known;
    for (const auto& row : fittings()) known.push_back(row.name);
    Mistake mistake;
    mistake.text = "unknown fitting " + quoted(name.text);
    const std::string nearest = units::nearest_word(name.text, known);
    if (!nearest.empty()) mistake.under = "did you mean " + quoted(nearest) + "?";
    mistake.remedy = "the nearest fittings are " + listed(units::nearest_words(name.text, known, 3));
    mistake.place = name.place;
    return mistake;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// "round elbow 60, smooth" split at its first number.
struct Numbered {
    std::string_view before, after;
    double number = -1;  // none
};
Numbered numbered(std::string_view name) {
    const auto start = std::find_if(name.begin(), name.end(), is_digit);
    const auto end = std::find_if_not(start, name.end(), is_digit);
    Numbered split{name, {}};
    const auto at = static_cast<std::size_t>(start - name.begin());
    const auto length = static_cast<std::size_t>(end - start);
    constexpr std::size_t most_digits = 6;
    if (length == 0 || length > most_digits) return split;
    int number = 0;
    std::from_chars(name.data() + at, name.data() + at + length, number);
    return {name.substr(0, at), name.substr(at + length), static_cast<double>(number)};
}

double most_angle(LossLaw law) {
    if (law == LossLaw::damper) return most_damper_angle;
    return law == LossLaw::mitre ? most_mitre_angle : most_elbow_angle;
}

double by_angle(LossLaw law, double angle) {
    if (law == LossLaw::damper) return damper_coefficient(angle);
    return law == LossLaw::mitre ? mitre_coefficient(angle) : elbow_share(angle);
}

Mistake wrong_angle(const CatalogueName& name, const Fitting& row) {
    const std::string most = std::to_string(std::lround(most_angle(row.law)));
    const bool damper = row.law == LossLaw::damper;
    return {quoted(name.text) +
                (damper ? ": a damper stands at 0 to " : ": an elbow of this make turns 1 to ") + most +
                " degrees",
            {},
            damper ? "0 degrees is open; shut further it is no damper to size by"
                   : "write the angle it turns the air by, as " + quoted(row.name),
            name.place,
            {}};
}

Fitting at_angle(Fitting row, double angle) {
    const double share = by_angle(row.law, angle) / by_angle(row.law, row.angle);
    row.coefficient *= share;
    row.low *= share;
    row.high *= share;
    row.angle = angle;
    return row;
}

// The row whose name differs by its angle alone.
const Fitting* row_of_another_angle(const Numbered& wanted) {
    if (wanted.number < 0) return nullptr;
    for (const Fitting& row : fittings()) {
        if (row.law != LossLaw::elbow && row.law != LossLaw::mitre && row.law != LossLaw::damper) continue;
        const Numbered known = numbered(row.name);
        if (known.before == wanted.before && known.after == wanted.after) return &row;
    }
    return nullptr;
}

Found own_length(const CatalogueName& name) {
    const auto read = units::read_length(name.text);
    if (const auto* problem = std::get_if<units::ReadProblem>(&read))
        return Mistake{
            quoted(name.text) + " is neither a fitting nor an equivalent length",
            problem->text,
            "write a fitting's name, its equivalent length as \"40 ft\", or its coefficient as \"C 0.35\"",
            name.place,
            {}};
    const auto length = std::get<units::Length>(read);
    if (length > longest_equivalent)
        return Mistake{"an equivalent length of " + quoted(name.text) + " is not that of a fitting",
                       {},
                       "write from 0 to 500 ft for each fitting",
                       name.place,
                       {}};
    Fitting own;
    own.name = "equivalent length, as in the sheet";
    own.law = LossLaw::length;
    own.length = length;
    return own;
}

Found own_coefficient(const CatalogueName& name) {
    const std::string_view number = std::string_view(name.text).substr(2);
    double value = 0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
    const bool whole = error == std::errc() && end == number.data() + number.size();
    if (!whole || !(value >= 0 && value <= most_coefficient))
        return Mistake{"a coefficient of " + quoted(number) + " is not that of a fitting",
                       {},
                       "write a number from 0 to 200, as \"C 0.35\"",
                       name.place,
                       {}};
    Fitting own;
    own.name = "coefficient, as in the sheet";
    own.coefficient = own.low = own.high = value;
    return own;
}

}  // namespace

Found look_up_fitting(const CatalogueName& name) {
    if (const Fitting* found = find(name.text)) return *found;
    const std::string_view text = name.text;
    if (text.starts_with("C ")) return own_coefficient(name);
    if (!text.empty() && (is_digit(text[0]) || text[0] == '-' || text[0] == '.')) return own_length(name);
    const Numbered wanted = numbered(text);
    const Fitting* row = row_of_another_angle(wanted);
    if (row == nullptr) return unknown(name);
    const double least = row->law == LossLaw::damper ? 0 : 1;
    if (wanted.number < least || wanted.number > most_angle(row->law)) return wrong_angle(name, *row);
    return at_angle(*row, wanted.number);
}

Fitting counted_turn(bool square) { return *find(square ? "square turn" : "rounded turn"); }

}  // namespace ducts
