// How loud the air is in a register or grille, in plain words, by its speed through the free area.
//
//     supply         to 350 ft/min quiet, to 425 a soft rush, to 575 heard, above loud
//     return grille  the same at 1.2 times the speed
//
// Source: face speeds by noise criterion of an architectural-acoustics handbook (read as carried on a public
// page): quiet to a criterion of 25, a soft rush to 30, heard to 40; the words are ours (bedrooms are wanted
// at 25 to 30, baths at 30 to 40: common practice). Range: free openings, lined duct, no damper at the face.
// A damper shut to a third at the face, a bend or a crushed flexible duct right behind it are one word
// louder. Accuracy: +-20 % of the speed, the width of a step of 5 in the criterion (derived).
#pragma once

#include <string_view>

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method sound_method{"sound of a register",
                                            "airflow / free area against 350, 425 and 575 ft/min",
                                            "architectural-acoustics handbook, face speeds"};
inline constexpr double sound_accuracy = 0.2;  // of the speed

enum class Sound { quiet, soft_rush, heard, loud };
std::string_view in_words(Sound sound);

Sound supply_sound(units::Velocity through_free_area);
Sound return_sound(units::Velocity through_free_area);

// The free area through which a supply airflow is no more than a soft rush.
units::Area softly_through(units::Airflow flow);

}  // namespace registers
