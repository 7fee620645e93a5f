#include "loads/materials.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include <string>

#include "units/unit.hpp"

namespace loads {
namespace {

constexpr house::Place here{12, 3, 30};

Layer layer(const std::string& text) {
    const auto looked_up = look_up_layer({text, here});
    if (const auto* mistake = std::get_if<house::Mistake>(&looked_up)) {
        ADD_FAILURE() << mistake->text;
        return {};
    }
    return std::get<Layer>(looked_up);
}

// The three parts of a mistake, as "text | under | remedy".
template <class Looked>
std::string wrong(const std::variant<Looked, house::Mistake>& looked_up) {
    if (std::holds_alternative<Looked>(looked_up)) return "no mistake";
    const auto& mistake = std::get<house::Mistake>(looked_up);
    EXPECT_EQ(mistake.place, here);
    return mistake.text + " | " + mistake.under + " | " + mistake.remedy;
}

std::string wrong_layer(const std::string& text) { return wrong(look_up_layer({text, here})); }

TEST(Materials, pieces_of_one_name_stand_together) {
    std::vector<std::string_view> seen;
    for (const Material& material : materials()) {
        if (!seen.empty() && seen.back() == material.name) continue;
        EXPECT_EQ(std::count(seen.begin(), seen.end(), material.name), 0) << material.name;
        seen.push_back(material.name);
    }
    EXPECT_GE(seen.size(), 40u);
}

TEST(Materials, every_row_is_whole) {
    for (const Material& row : materials()) {
        const std::string name(row.name);
        const bool empty_bay = row.conductivity == 0 && row.resistance == 0;
        EXPECT_EQ(name.find(','), std::string::npos) << name;
        EXPECT_FALSE(row.source.empty()) << name;
        EXPECT_FALSE(row.conductivity > 0 && row.resistance > 0) << name;
        EXPECT_TRUE(row.resistance > 0 || row.thickness == 0) << name;
        EXPECT_TRUE(!row.between_studs || row.resistance == 0 || row.thickness > 0) << name;
        EXPECT_EQ(empty_bay, name == "empty stud bay" || name == "open stud bay");
    }
}

TEST(Materials, the_layers_of_an_old_house) {
    EXPECT_DOUBLE_EQ(layer("lap siding").resistance.si(), 0.14);
    EXPECT_NEAR(layer("board sheathing, 3/4 in").resistance.si(), 0.165, 0.001);
    EXPECT_DOUBLE_EQ(layer("plaster on wood lath").resistance.si(), 0.07);
    EXPECT_NEAR(layer("dense cellulose, 3-5/8 in").resistance.si(), 3.625 * 0.0254 / 0.0395, 1e-12);
    EXPECT_NEAR(layer("gypsum board, 1/2 in").resistance.si(), 0.079, 0.0005);
    EXPECT_NEAR(layer("loose cellulose, 8 in").resistance.si(), 8 * 0.0254 / 0.0395, 1e-12);
}

TEST(Materials, an_empty_bay_leaves_its_resistance_to_the_house) {
    const Layer bay = layer("empty stud bay, 3-5/8 in");
    EXPECT_TRUE(bay.empty_bay);
    EXPECT_TRUE(bay.between_studs);
    EXPECT_DOUBLE_EQ(bay.thickness / units::unit::inch, 3.625);
    EXPECT_EQ(bay.resistance, units::Resistance());
}

TEST(Materials, what_fills_a_bay_is_between_studs_and_what_lies_in_an_attic_is_not) {
    EXPECT_TRUE(layer("dense cellulose, 3-1/2 in").between_studs);
    EXPECT_TRUE(layer("R-13 batt").between_studs);
    EXPECT_FALSE(layer("loose cellulose, 8 in").between_studs);
    EXPECT_FALSE(layer("R-11").between_studs);
}

TEST(Materials, a_stock_piece_may_differ_a_little) {
    EXPECT_DOUBLE_EQ(layer("plaster on wood lath, 13/16 in").resistance.si(), 0.07);
    EXPECT_DOUBLE_EQ(layer("R-11 batt").thickness / units::unit::inch, 3.5);
}

TEST(Materials, of_several_stock_pieces_the_nearest) {
    EXPECT_DOUBLE_EQ(layer("plywood, 1/2 in").resistance.si(), 0.14);
    EXPECT_DOUBLE_EQ(layer("plywood, 5/8 in").resistance.si(), 0.15);
    EXPECT_DOUBLE_EQ(layer("plywood, 18 mm").resistance.si(), 0.19);
}

TEST(Materials, a_resistance_is_a_layer_too) {
    EXPECT_DOUBLE_EQ(layer("R-11").resistance / units::unit::r_value_us, 11);
    EXPECT_DOUBLE_EQ(layer("1.9 m2K/W").resistance.si(), 1.9);
}

TEST(Materials, spaces_around_name_and_thickness_do_not_matter) {
    EXPECT_EQ(layer(" stucco ,1 in ").resistance, layer("stucco, 1 in").resistance);
}

TEST(Materials, a_thickness_is_asked_for) {
    EXPECT_EQ(wrong_layer("dense cellulose"),
              "'dense cellulose' needs a thickness |  | write dense cellulose, 3-1/2 in");
    EXPECT_EQ(wrong_layer("empty stud bay"),
              "'empty stud bay' needs a thickness |  | write empty stud bay, 3-1/2 in");
    EXPECT_EQ(wrong_layer("plywood"), "'plywood' needs a thickness |  | write plywood, 1/2 in");
}

TEST(Materials, a_thickness_far_from_the_stock_piece) {
    EXPECT_EQ(
        wrong_layer("plaster on wood lath, 1-1/2 in"),
        "'plaster on wood lath' is known 3/4 in thick |  | write that, or the layer's resistance, as R-1.5");
    EXPECT_EQ(
        wrong_layer("hollow clay tile, 6 in"),
        "'hollow clay tile' is known 4 in, 8 in thick |  | write one of them, or the layer's resistance, as "
        "R-1.5");
}

TEST(Materials, a_thickness_where_there_is_none) {
    EXPECT_EQ(
        wrong_layer("wood shingles, 1/2 in"),
        "'wood shingles' is one piece with one resistance |  | write wood shingles without a thickness");
}

TEST(Materials, a_thickness_that_cannot_be_read) {
    EXPECT_EQ(wrong_layer("stucco, thick").rfind("'stucco' has no thickness to go by: ", 0), 0u)
        << wrong_layer("stucco, thick");
}

TEST(Materials, a_thickness_that_cannot_be) {
    EXPECT_EQ(wrong_layer("loose cellulose, 8 ft"),
              "'loose cellulose' cannot be 8 ft thick |  | a layer is up to 1 m (3 ft) thick");
    EXPECT_EQ(wrong_layer("stucco, 0 in"),
              "'stucco' cannot be 0 in thick |  | a layer is up to 1 m (3 ft) thick");
}

TEST(Materials, an_unknown_name) {
    EXPECT_EQ(
        wrong_layer("dense celulose, 3-1/2 in"),
        "no material is called 'dense celulose' | did you mean 'dense cellulose'? | or write the layer's "
        "resistance, as R-1.5");
    EXPECT_EQ(wrong_layer("xyzzy"),
              "no material is called 'xyzzy' |  | write the layer's resistance, as R-1.5");
    EXPECT_EQ(wrong_layer(""), "no material is called '' |  | write the layer's resistance, as R-1.5");
}

TEST(Glasses, every_glass_is_found_by_its_name) {
    for (const Glass& glass : glasses()) {
        const auto looked_up = look_up_glass({std::string(glass.name), here});
        EXPECT_DOUBLE_EQ(std::get<Glass>(looked_up).u, glass.u);
    }
}

TEST(Glasses, an_unknown_glass) {
    const std::string all =
        "the glasses are 'single', 'single + storm', 'double', 'double, low-e', 'triple', 'triple, low-e'";
    EXPECT_EQ(wrong(look_up_glass({"dubble", here})),
              "no glass is called 'dubble' | did you mean 'double'? | " + all);
    EXPECT_EQ(wrong(look_up_glass({"stained", here})), "no glass is called 'stained' |  | " + all);
}

}  // namespace
}  // namespace loads
