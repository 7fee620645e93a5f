// Where something stands in the sheet, and what the user wrote wrongly there.
//
// Lines and columns count from 1, columns in code points; end_column is one past the last. A Place with line
// 0 points nowhere (a value that no sheet holds).
#pragma once

#include <optional>
#include <string>

namespace house {

struct Place {
    int line = 0;
    int column = 0;
    int end_column = 0;
    bool operator==(const Place&) const = default;
};

// A value as written in the sheet, with its place. Legal in sheet and house only: to the right of house,
// values are plain.
template <class T>
struct Given {
    T value{};
    Place place;
};
template <class T>
using Maybe = std::optional<Given<T>>;

// One thing the user has to mend: what is wrong, the words under the mark, what to do, and a second place if
// one helps.
struct Mistake {
    std::string text;    // "the north window does not fit its wall"
    std::string under;   // beside the mark: "2 ft 4 in wide, it ends at 7 ft 11 in"; may be empty
    std::string remedy;  // "measure from the wall's west end to the middle of the window"; may be empty
    Place place;
    std::optional<Place> second;  // "first written here"
    bool may_follow = false;  // of something missing or not found: perhaps only because of another mistake
};

// A word that its owner looks up later (a material, a glass, a fitting), kept with its place so that the
// owner can blame the sheet's line.
struct CatalogueName {
    std::string text;
    Place place;
};

}  // namespace house
