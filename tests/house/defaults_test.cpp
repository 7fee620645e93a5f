#include "house/defaults.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <string>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Defaults;
using house::Level;

TEST(Defaults, every_row_has_an_honest_range_a_name_and_a_basis) {
    std::set<std::string_view> names;
    for (const house::DefaultRow& row : house::default_rows()) {
        EXPECT_LE(row.low, row.value) << row.what;
        EXPECT_LE(row.value, row.high) << row.what;
        EXPECT_LT(row.low, row.high) << row.what << ": what is certain is no assumption";
        EXPECT_FALSE(row.what.empty());
        EXPECT_FALSE(row.basis.empty()) << row.what;
        EXPECT_TRUE(names.insert(row.what).second) << row.what << " twice";
    }
    EXPECT_EQ(names.size(), static_cast<std::size_t>(DefaultId::count));
}

TEST(Defaults, a_basis_says_what_kind_of_knowledge_it_is) {
    for (const house::DefaultRow& row : house::default_rows()) {
        bool marked = false;
        for (const char* mark : {"read", "memory", "common practice", "derived", "estimate"})
            marked = marked || row.basis.find(mark) != std::string_view::npos;
        EXPECT_TRUE(marked) << row.what << ": " << row.basis;
    }
}

TEST(Defaults, a_row_is_found_by_its_id) {
    for (const house::DefaultRow& row : house::default_rows()) EXPECT_EQ(&default_row(row.id), &row);
}

TEST(Defaults, a_row_can_be_set_to_either_end_alone) {
    const Defaults usual;
    const Defaults low = usual.with(DefaultId::window, Level::low),
                   high = usual.with(DefaultId::window, Level::high);
    EXPECT_EQ(usual[DefaultId::window], 2.87);
    EXPECT_EQ(low[DefaultId::window], 2.2);
    EXPECT_EQ(high[DefaultId::window], 5.05);
    EXPECT_EQ(low.level(DefaultId::window), Level::low);
    EXPECT_EQ(low[DefaultId::door], usual[DefaultId::door]);
    EXPECT_EQ(low.with(DefaultId::door, Level::high)[DefaultId::window], 2.2);
}

TEST(Defaults, the_house_is_built_with_the_table_it_is_given) {
    house::Survey survey = one_room();
    survey.rooms[0].ceiling.reset();
    const Defaults high = Defaults().with(DefaultId::ceiling_height, Level::high);
    EXPECT_DOUBLE_EQ(planned(survey, high).house.rooms[0].ceiling.si(), ft(9).si());
}

TEST(Defaults, counts_are_whole) {
    for (const house::DefaultRow& row : house::default_rows()) {
        if (row.written != house::WrittenAs::whole_number) continue;
        for (double count : {row.low, row.value, row.high}) EXPECT_EQ(count, std::floor(count)) << row.what;
    }
}

// What is taken for a sheet that says next to nothing, in the table's order, and each row once.
TEST(Defaults, a_silent_sheet_takes_just_these) {
    house::Survey survey = one_room();
    add_duct(survey, "run");
    add_outlet(survey, "register", "run");
    std::vector<std::string> taken;
    for (const house::Assumption& assumption : planned(survey).assumptions) {
        EXPECT_EQ(assumption.used_for.size(), 1u);
        taken.push_back(std::string(default_row(assumption.id).what) + ": " + assumption.used_for.front());
    }
    EXPECT_THAT(
        taken,
        ElementsAre(
            "air leakage \"leaky\": the house, of unknown age",
            "ceiling under the attic: ceiling of the bath, taken to be next to the attic",
            "floor over an unheated space: floor of the bath, taken to be next to the basement",
            "basement temperature: floor of the bath, taken to be next to the basement",
            "on-time of the heater: a heater of unknown output",
            "temperature rise, place within the nameplate's range: the airflow, nameplate's rise not "
            "read",
            "heat the ducts lose outside the rooms: the whole duct system",
            "external static pressure against the nameplate's: the blower, nameplate not read: 0.50 in.wc",
            "pressure lost in the filter: the filter",
            "pressure lost in a supply register: every supply register",
            "pressure lost in the return grille: the return grille",
            "effective length of the return: a return that is not described",
            "air around a duct, share of the way from outdoors to indoors: the run",
            "bare duct wall with its air films: supply ducts",
            "pressure lost in fittings, against their table: every fitting",
            "roof of the attic, with the air through it: the attic"));
}

}  // namespace
