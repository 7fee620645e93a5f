#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "report/houses.hpp"
#include "report/page_parts.hpp"
#include "report/pages.hpp"

namespace {

using namespace report_test;
using report::Page;
using testing::HasSubstr;

TEST(TrunkPage, tells_the_air_at_the_cooling_speed_only_where_there_is_cooling) {
    const Page warm = report::trunk_page(trunk_of(bath_sheet()), {});
    EXPECT_EQ(note(warm, "in summer"), nullptr);
    const Page cooled = report::trunk_page(trunk_of(cooled_bath_sheet()), {});
    ASSERT_NE(note(cooled, "in summer"), nullptr);
    EXPECT_THAT(note(cooled, "in summer")->lines,
                testing::Contains(HasSubstr("of return air, external static pressure")));
    EXPECT_THAT(note(cooled, "in summer")->lines, testing::Contains(HasSubstr("bath: ")));
}

// A plate that the planned system is beyond is warned of, once; else it is not spoken of.
TEST(TrunkPage, warns_of_a_plate_only_where_it_is_exceeded) {
    const auto warned = [](const std::string& sheet) {
        const Page page = report::trunk_page(trunk_of(sheet), {});
        return std::count_if(page.cautions.begin(), page.cautions.end(),
                             [](const std::string& caution) { return caution.find("nameplate: ") == 0; });
    };
    EXPECT_EQ(warned(with(bath_sheet(), "max_static = \"0.50 in.wc\"", "max_static = \"0.90 in.wc\"")), 0);
    EXPECT_EQ(warned(with(bath_sheet(), "max_static = \"0.50 in.wc\"", "max_static = \"0.05 in.wc\"")), 1);
}

}  // namespace
