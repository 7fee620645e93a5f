// Heat gain in summer against the published tables and the worked example.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <string>

#include "loads/a_house.hpp"
#include "loads/infiltration.hpp"
#include "loads/inside_shades.hpp"
#include "loads/materials.hpp"
#include "loads/opaque_gain.hpp"
#include "loads/overhang.hpp"
#include "loads/peak_irradiance.hpp"
#include "loads/roofs.hpp"
#include "loads/room_heat_gain.hpp"
#include "loads/room_heat_loss.hpp"
#include "loads/summer_leakage.hpp"
#include "loads/window_gain.hpp"
#include "published/csv.hpp"

namespace loads {
namespace {

using published::Row;
using published::Table;
namespace unit = units::unit;

Table rows_of(const std::string& file, std::size_t count) {
    Table table = published::read(file);
    EXPECT_EQ(table.size(), count) << file;
    return table;
}

TEST(PublishedGain, peak_irradiance) {
    for (const Row& row : rows_of("loads_irradiance.csv", 54)) {
        const double latitude = row.number("latitude");
        const Irradiance sun = row.has("turned") ? peak_irradiance(180 * row.number("turned"), latitude)
                                                 : peak_irradiance_on_the_flat(latitude);
        EXPECT_NEAR(sun.total.si(), row.number("total"), 1) << row.where();
        if (!row.has("turned")) continue;
        EXPECT_NEAR(sun.diffuse.si(), row.number("diffuse"), 1) << row.where();
        EXPECT_NEAR(sun.direct().si(), row.number("direct"), 1) << row.where();
    }
}

TEST(PublishedGain, infiltration_driving_force) {
    for (const Row& row : rows_of("loads_summer_infiltration.csv", 9)) {
        const double driving =
            summer_driving_force(units::Length(row.number("stack_height")),
                                 unit::celsius(row.number("outdoors")) - unit::celsius(24));
        EXPECT_NEAR(driving, row.number("table"), row.number("tolerance") + 1e-9) << row.where();
        EXPECT_NEAR(driving, row.number("formula"), 1e-5) << row.where();
    }
}

TEST(PublishedGain, inside_shades) {
    for (const Row& row : rows_of("loads_inside_shades.csv", 48)) {
        const auto shade = look_up_shade({row.text("shade"), {}});
        ASSERT_TRUE(std::holds_alternative<InsideShade>(shade)) << row.where();
        EXPECT_EQ(left_when_closed(std::get<InsideShade>(shade), row.text("glass")), row.number("left"))
            << row.where();
    }
}

TEST(PublishedGain, shade_line_factors) {
    for (const Row& row : rows_of("loads_shade_line.csv", 72))
        EXPECT_NEAR(shade_line_factor(row.number("azimuth"), row.number("latitude")), row.number("factor"),
                    1e-12)
            << row.where();
}

TEST(PublishedGain, solar_load_factors) {
    for (const Row& row : rows_of("loads_solar_load_factor.csv", 8))
        EXPECT_NEAR(solar_load_factor(row.number("azimuth"), 40), row.number("factor"), 1e-12) << row.where();
}

TEST(PublishedGain, roofs) {
    for (const Row& row : rows_of("loads_roofs.csv", 13)) {
        const auto roof = look_up_roof({row.text("roof"), {}});
        ASSERT_TRUE(std::holds_alternative<Roof>(roof)) << row.where();
        EXPECT_EQ(std::get<Roof>(roof).absorptance, row.number("absorptance")) << row.where();
    }
}

TEST(PublishedGain, solar_heat_gain_coefficients) {
    for (const Row& row : rows_of("loads_solar_gain.csv", 6)) {
        const auto glass = look_up_glass({row.text("glass"), {}});
        ASSERT_TRUE(std::holds_alternative<Glass>(glass)) << row.where();
        EXPECT_EQ(std::get<Glass>(glass).shgc, row.number("shgc")) << row.where();
    }
}

house::SurfaceKind kind_of(const Row& row, const std::string& column) {
    const std::map<std::string, house::SurfaceKind> kinds{{"wall", house::SurfaceKind::wall},
                                                          {"door", house::SurfaceKind::door},
                                                          {"ceiling", house::SurfaceKind::ceiling},
                                                          {"slope", house::SurfaceKind::slope},
                                                          {"floor", house::SurfaceKind::floor}};
    return kinds.at(row.text(column));
}

house::Space space_of(const Row& row) {
    for (const auto& word : house::words<house::Space>())
        if (word.text == row.text("beyond")) return word.value;
    ADD_FAILURE() << row.where();
    return {};
}

TEST(PublishedGain, opaque_surfaces) {
    for (const Row& row : rows_of("loads_opaque_gain.csv", 10))
        for (const double roof : {0.3, 0.85}) {
            const OpaqueGain gain =
                opaque_gain(a_house::surface(1, a_house::u(1), space_of(row), kind_of(row, "surface")), roof);
            EXPECT_EQ(gain.of_difference, row.number("t")) << row.where();
            EXPECT_NEAR(gain.of_sun.si(), row.number("b_roof") * roof + row.number("b"), 1e-12)
                << row.where();
            EXPECT_EQ(gain.of_daily_range, row.number("r")) << row.where();
        }
}

// The worked example with the differences its figures use: 23.0 K in winter, 9.1 K in summer.
house::House example() {
    house::House house = a_house::bare(20, -3);
    house.summer = house::Summer{};
    house.summer->indoor = unit::celsius(24);
    house.summer->outdoor = unit::celsius(33.1);
    house.summer->daily_range = units::TemperatureDifference(9.3);
    house.summer->latitude = 35;
    house.summer->roof = 0.85;
    house.summer->moisture = 0.005;
    a_house::add_room(house, "a room");
    return house;
}

// A light closed-weave drape before low-solar glass, half closed: 0.84 of the sun is left.
house::Surface example_window(const Row& row) {
    house::Surface window = a_house::surface(row.number("area"), a_house::u(row.number("u")),
                                             house::Space::outdoors, house::SurfaceKind::window);
    house::Sunlit sun;
    sun.azimuth = row.number("azimuth");
    sun.height = units::Length(row.number("height"));
    sun.shgc = row.number("shgc");
    sun.glass = house::CatalogueName{"double, low-e", {}};
    sun.screen = row.number("screen") > 0;
    sun.shade = house::CatalogueName{"closed-weave drape, light", {}};
    sun.shade_closed = 0.5;
    sun.overhang = units::Length(row.number("overhang"));
    window.sun = sun;
    return window;
}

// The floor with its exposed edge and the carpet on it.
house::Surface example_slab(const Row& row) {
    house::Surface slab = a_house::surface(row.number("area"), a_house::u(1), house::Space::outdoors,
                                           house::SurfaceKind::floor);
    slab.slab = house::Slab{units::Length(row.number("edge")), units::Conductivity(row.number("edge_loss")),
                            units::Resistance(row.number("covering"))};
    return slab;
}

void expect_watts(units::Power power, const Row& row, const char* column) {
    const double printed = row.number(column);
    EXPECT_NEAR(power.si(), printed, 0.5 + 0.0065 * std::abs(printed)) << row.where() << " " << column;
}

TEST(PublishedGain, windows_of_the_worked_example) {
    house::House house = example();
    const Table rows = rows_of("loads_example_windows.csv", 11);
    for (const Row& row : rows) house.rooms[0].surfaces.push_back(example_window(row));
    const RoomHeatGain gain = house_heat_gain(house, infiltration(house)).rooms[0];
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double printed = rows[i].number("factor");
        EXPECT_NEAR(gain.surfaces[i].factor.si(), printed, 0.0065 * printed) << rows[i].where();
        expect_watts(gain.surfaces[i].gain, rows[i], "cooling");
    }
}

TEST(PublishedGain, envelope_of_the_worked_example) {
    house::House house = example();
    const Table windows = published::read("loads_example_windows.csv");
    const Table surfaces = rows_of("loads_example_surfaces.csv", 6);
    units::Power heating, cooling, printed_heating, printed_cooling;
    for (const Row& row : surfaces) {
        if (row.text("kind") == "sum") {
            printed_heating = units::Power(row.number("heating"));
            printed_cooling = units::Power(row.number("cooling"));
        } else if (row.text("kind") == "slab") {
            house.rooms[0].surfaces.push_back(example_slab(row));
        } else {
            house.rooms[0].surfaces.push_back(a_house::surface(
                row.number("area"), a_house::u(row.number("u")), space_of(row), kind_of(row, "kind")));
        }
    }
    for (const Row& row : windows) house.rooms[0].surfaces.push_back(example_window(row));
    const RoomHeatLoss loss = house_heat_loss(house).rooms[0];
    const RoomHeatGain gain = house_heat_gain(house, infiltration(house)).rooms[0];
    for (std::size_t i = 0; i < gain.surfaces.size(); ++i) {
        const Row& row = i < 5 ? surfaces[i] : windows[i - 5];
        expect_watts(loss.surfaces[i].loss, row, "heating");
        expect_watts(gain.surfaces[i].gain, row, "cooling");
        heating += loss.surfaces[i].loss;
        cooling += gain.surfaces[i].gain;
    }
    EXPECT_NEAR(heating / printed_heating, 1, 0.003) << heating.si();
    EXPECT_NEAR(cooling / printed_cooling, 1, 0.003) << cooling.si();
}

TEST(PublishedGain, internal_gain_of_the_worked_example) {
    EXPECT_NEAR(internal_gain(units::Area(195.3), 4).sensible.si(), 654, 0.6);
    EXPECT_NEAR(internal_gain(units::Area(195.3), 4).latent.si(), 111, 0.6);
}

}  // namespace
}  // namespace loads
