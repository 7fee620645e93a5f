// Mistakes that concern the sheet as a whole: its version, names used twice, and all mistakes in their order.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(WholeSheet, VersionMissing) {
    EXPECT_THAT(mistakes_in("[house]\n"
                            "name = \"x\"\n"),
                ElementsAre("1:1-2 | a sheet begins with: sheet = 1 |  | write sheet = 1 on the first line"));
}

TEST(WholeSheet, VersionMissingInAnEmptySheet) {
    EXPECT_THAT(mistakes_in(""),
                ElementsAre("1:1-2 | a sheet begins with: sheet = 1 |  | write sheet = 1 on the first line"));
}

TEST(WholeSheet, VersionOfALaterSheet) {
    EXPECT_THAT(
        mistakes_in("sheet = 2\n"),
        ElementsAre("1:9-10 | 'sheet' in the sheet can only be 1 |  | write sheet = 1, without quotes"));
}

TEST(WholeSheet, VersionInQuotes) {
    EXPECT_THAT(
        mistakes_in("sheet = \"1\"\n"),
        ElementsAre("1:9-12 | 'sheet' in the sheet can only be 1 |  | write sheet = 1, without quotes"));
}

TEST(WholeSheet, RepeatedNames) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[[room.window]]\n"
                                  "name = \"w\"\n"
                                  "[[room.window]]\n"
                                  "name = \"w\"\n"
                                  "[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[[room.window]]\n"
                                  "name = \"w\"\n"
                                  "[[duct]]\n"
                                  "name = \"a\"\n"
                                  "[[duct]]\n"
                                  "name = \"a\"\n"
                                  "[[outlet]]\n"
                                  "name = \"a\"\n"
                                  "[[outlet]]\n"
                                  "name = \"b\"\n"
                                  "[[outlet]]\n"
                                  "name = \"a\"\n"),
        ElementsAre(
            "7:8-11 | two windows of one room have the name 'w' |  | give one of them another name | second "
            "5:8-11",
            "9:8-14 | two rooms have the name 'bath' |  | give one of them another name | second 3:8-14",
            "15:8-11 | two ducts have the name 'a' |  | give one of them another name | second 13:8-11",
            "21:8-11 | two outlets have the name 'a' |  | give one of them another name | second 17:8-11"));
}

TEST(WholeSheet, AllAtOnceInTheSheetsOrder) {
    EXPECT_THAT(
        mistakes_after_first_line("[[duct]]\n"
                                  "name = \"main trunk\"\n"
                                  "fitings = [\"x\"]\n"
                                  "length = 12\n"
                                  "side = \"suply\"\n"
                                  "[house]\n"
                                  "built = 192\n"
                                  "[[duct]]\n"
                                  "name = \"main trunk\"\n"
                                  "wrap = 6\n"
                                  "[heter]\n"
                                  "[[outlet]]\n"
                                  "face = 10\n"),
        ElementsAre("4:1-8 | unknown word 'fitings' in duct 'main trunk' | did you mean 'fittings'? | ",
                    "5:10-12 | 'length' in duct 'main trunk' has no unit | a number needs a unit and quotes "
                    "| write length = \"12 ft\"",
                    "6:8-15 | 'side' in duct 'main trunk' cannot be 'suply' | did you mean 'supply'? | write "
                    "one of: supply, return",
                    "8:9-12 | 'built' in [house] is 192 | it must be from 1600 to 2100 | ",
                    "10:8-20 | two ducts have the name 'main trunk' |  | give one of them another name | "
                    "second 3:8-20",
                    "11:8-9 | 'wrap' in duct 'main trunk' has no unit | a number needs a unit and quotes | "
                    "write wrap = \"R-6\"",
                    "12:2-7 | unknown word 'heter' in the sheet | did you mean 'heater'? | ",
                    "14:8-10 | 'face' in outlet number 1 is a number, not text in quotes |  | write face = "
                    "\"8 x 16 in\""));
}

}  // namespace
