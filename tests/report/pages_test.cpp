// What holds for every page of every house.
#include "report/pages.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <regex>

#include "report/expression.hpp"
#include "report/figures.hpp"
#include "report/houses.hpp"
#include "report/page_parts.hpp"
#include "report/text.hpp"

namespace {

using namespace report_test;
using report::Page;
using report::PageOptions;
using report::Table;
using units::System;

struct NamedPage {
    std::string name;
    Page page;
};

std::vector<NamedPage> all_pages(PageOptions options) {
    std::vector<NamedPage> pages;
    for (const NamedSheet& house : sheets()) {
        pages.push_back({"branch, " + house.name, report::branch_page(branch_of(house.sheet), options)});
        pages.push_back({"trunk, " + house.name, report::trunk_page(trunk_of(house.sheet), options)});
        pages.push_back({"loads, " + house.name, report::loads_page(loads_of(house.sheet), options)});
        pages.push_back({"check, " + house.name, report::check_page(check_of(house.sheet), options)});
    }
    return pages;
}

std::vector<PageOptions> all_options() {
    return {{System::us, false}, {System::us, true}, {System::si, false}, {System::si, true}};
}

std::string whole_line(const Page& page) { return report::text(page, {100, false}); }

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t start = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', start)) {
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

TEST(Pages, no_line_is_wider_than_its_paper) {
    for (const PageOptions options : all_options())
        for (const NamedPage& named : all_pages(options))
            for (const int width : {80, 100}) {
                for (const std::string& line : lines_of(report::text(named.page, {width, false}))) {
                    const auto columns = std::count_if(line.begin(), line.end(), [](char c) {
                        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
                    });
                    EXPECT_LE(columns, width) << named.name << ": " << line;
                }
            }
}

TEST(Pages, hold_no_number_that_is_none) {
    const std::regex none(R"(\bnan\b|\binf\b|-nan|\?|-0\b(?!\.))");
    for (const PageOptions options : all_options())
        for (const NamedPage& named : all_pages(options))
            for (const std::string& line : lines_of(whole_line(named.page)))
                EXPECT_FALSE(std::regex_search(line, none)) << named.name << ": " << line;
}

TEST(Pages, every_printed_sum_closes) {
    std::size_t sums = 0;
    for (const PageOptions options : all_options())
        for (const NamedPage& named : all_pages(options))
            for (const report::Note& n : named.page.notes)
                for (const std::string& line : n.lines)
                    for (const PrintedSum& sum : printed_sums(report::with_plain_spaces(line))) {
                        ++sums;
                        EXPECT_NEAR(sum.by_hand, sum.result, sum.half_a_digit)
                            << named.name << ": " << sum.text;
                    }
    EXPECT_GT(sums, 100u);
}

TEST(Pages, the_parts_of_a_rooms_loss_add_up) {
    for (const System system : {System::us, System::si})
        for (const NamedSheet& house : sheets())
            for (const Table& table : report::loads_page(loads_of(house.sheet), {system, false}).tables) {
                double parts = 0;
                for (std::size_t i = 0; i + 1 < table.rows.size(); ++i)
                    parts += printed_number(table.rows[i].cells.back());
                const double half = system == System::us ? 5 : 2.5;
                EXPECT_NEAR(parts, printed_number(table.rows.back().cells.back()),
                            half * static_cast<double>(table.rows.size() + 2))
                    << table.title;
            }
}

TEST(Pages, rank_a_rooms_surfaces_by_their_loss) {
    for (const NamedSheet& house : sheets())
        for (const Table& table : report::loads_page(loads_of(house.sheet), {}).tables)
            for (std::size_t i = 1; i + 1 < table.rows.size(); ++i)
                EXPECT_GE(printed_number(table.rows[i - 1].cells.back()),
                          printed_number(table.rows[i].cells.back()));
}

TEST(Pages, ranges_run_from_low_to_high) {
    const std::regex range(R"(\((-?[0-9,]+)-([0-9,]+)\)|(?:needs|gives|loses) ([0-9,]+)-([0-9,]+) )");
    for (const PageOptions options : all_options())
        for (const NamedPage& named : all_pages(options)) {
            const std::string text = whole_line(named.page);
            for (std::sregex_iterator at(text.begin(), text.end(), range), end; at != end; ++at) {
                const std::size_t first = (*at)[1].matched ? 1 : 3;
                EXPECT_LE(printed_number((*at)[first].str()), printed_number((*at)[first + 1].str()))
                    << named.name << ": " << at->str();
            }
        }
}

TEST(Pages, mark_one_row_where_something_is_recommended) {
    for (const NamedSheet& house : sheets()) {
        const auto answer = branch_of(house.sheet);
        const Page page = report::branch_page(answer, {});
        if (page.tables.empty()) continue;  // nothing drives the air: no size is told
        const auto marks = std::count_if(page.tables[0].rows.begin(), page.tables[0].rows.end(),
                                         [](const report::Row& row) { return row.recommended; });
        const bool recommends = answer.sizing.to_size && questions::holds(answer.verdict);
        EXPECT_EQ(marks, recommends ? 1 : 0) << house.name;
        const std::string text = report::text(page, {100, false});
        EXPECT_EQ(std::count(text.begin(), text.end(), '>'), marks) << house.name;
    }
}

std::string first_words(const std::string& sentence) {
    return sentence.substr(0, sentence.find_first_of(":;"));
}

// Nor their units.
std::string without_figures(const std::string& sentence) {
    static const std::regex figure("[0-9.,]+( to [0-9.,]+)? (cfm|L/s|in.wc|Pa|F|K)");
    return std::regex_replace(report::with_plain_spaces(sentence), figure, "N");
}

TEST(Pages, in_other_units_say_the_same) {
    const auto us = all_pages({System::us, false}), si = all_pages({System::si, false});
    for (std::size_t i = 0; i < us.size(); ++i) {
        const Page &a = us[i].page, &b = si[i].page;
        if (us[i].name.starts_with("trunk"))  // its verdict begins with figures
            EXPECT_EQ(a.headline.substr(0, a.headline.find(". It")),
                      b.headline.substr(0, b.headline.find(". It")));
        else
            EXPECT_EQ(first_words(a.verdict), first_words(b.verdict)) << us[i].name;
        ASSERT_EQ(a.cautions.size(), b.cautions.size());
        for (std::size_t c = 0; c < a.cautions.size(); ++c)  // one tells what the air draws, in figures
            EXPECT_EQ(without_figures(a.cautions[c]), without_figures(b.cautions[c]));
        ASSERT_EQ(a.tables.size(), b.tables.size()) << us[i].name;
        for (std::size_t t = 0; t < a.tables.size(); ++t) {
            ASSERT_EQ(a.tables[t].rows.size(), b.tables[t].rows.size()) << us[i].name;
            for (std::size_t r = 0; r < a.tables[t].rows.size(); ++r)
                EXPECT_EQ(a.tables[t].rows[r].recommended, b.tables[t].rows[r].recommended);
        }
        ASSERT_EQ(a.notes.size(), b.notes.size()) << us[i].name;
        for (std::size_t n = 0; n < a.notes.size(); ++n)
            EXPECT_EQ(a.notes[n].lines.size(), b.notes[n].lines.size())
                << us[i].name << ", " << a.notes[n].label;
        if (us[i].name.starts_with("check")) continue;  // quotes words of the sheet's reader and the sources
        const std::string text = whole_line(b);
        for (const char* unit : {" cfm", " Btu/h", " in.wc", " ft"})
            EXPECT_EQ(text.find(unit), std::string::npos) << us[i].name << ": " << unit;
    }
}

TEST(Pages, are_the_same_bytes_every_time) {
    for (const NamedSheet& house : sheets())
        EXPECT_EQ(whole_line(report::branch_page(branch_of(house.sheet), {})),
                  whole_line(report::branch_page(branch_of(house.sheet), {})));
}

TEST(Pages, keep_out_of_the_usual_abbreviations) {
    const std::regex code(R"(\b(Htg|Clg|Btuh|NC|TEL|ASP|FR|HTM)\b)");
    for (const NamedPage& named : all_pages({System::us, true}))
        EXPECT_FALSE(std::regex_search(whole_line(named.page), code)) << named.name;
}

TEST(BranchPage, answers_first) {
    const Page page = report::branch_page(branch_of(bath_sheet()), {});
    EXPECT_THAT(report::with_plain_spaces(page.headline),
                testing::MatchesRegex(
                    "bath: a [0-9]+ in round pipe from the main trunk to the floor register under the "
                    "north window gives [0-9]+ cfm of supply air; the bath "
                    "needs [0-9]+ .[0-9]+-[0-9]+."));
    EXPECT_THAT(report::with_plain_spaces(page.verdict),
                testing::MatchesRegex("(Yes|Probably|Probably not|No): .*on a 3 F night.*"));
    EXPECT_EQ(page.notes[0].label.find("why "), 0u);
    EXPECT_TRUE(note(page, "at 70 F"));
    EXPECT_TRUE(note(page, "before work"));
    EXPECT_TRUE(note(page, "to buy"));
    EXPECT_EQ(page.cautions.back().find("local codes"), 0u);
}

TEST(BranchPage, says_that_it_is_for_heating_only_where_there_is_cooling) {
    EXPECT_FALSE(note(report::branch_page(branch_of(bath_sheet()), {}), "in summer"));
    EXPECT_TRUE(note(report::branch_page(branch_of(cooled_bath_sheet()), {}), "in summer"));
}

// Four fittings in 17 ft of 6 in pipe stand apart, in 6 ft they do not.
TEST(BranchPage, warns_of_fittings_that_stand_close) {
    EXPECT_FALSE(note(report::branch_page(branch_of(bath_sheet()), {}), "fittings"));
    std::string sheet = bath_sheet();
    sheet.replace(sheet.find("length = \"17 ft\""), 16, "length = \"6 ft\" ");
    const Page page = report::branch_page(branch_of(sheet), {});
    ASSERT_TRUE(note(page, "fittings"));
    EXPECT_THAT(note(page, "fittings")->lines[0],
                testing::StartsWith("those of the new bath run stand less"));
}

// A flexible duct is bought as one, a length of the sheet's own is not bought, and the steps still close.
TEST(BranchPage, of_a_flexible_duct_with_a_length_of_its_own) {
    std::string sheet = bath_sheet();
    const std::string before = "fittings = [\"top takeoff\"";
    sheet.replace(sheet.find(before), before.size(),
                  "kind = \"flex\"\nstretch = \"96 %\"\nfittings = [\"25 ft\"");
    const Page page = report::branch_page(branch_of(sheet), {});
    const std::string line = report::with_plain_spaces(note(page, "to buy")->lines[0]);
    EXPECT_THAT(line, testing::HasSubstr("flexible duct, 17 ft"));
    EXPECT_THAT(line, testing::Not(testing::HasSubstr("25 ft")));
}

TEST(BranchPage, lists_what_to_buy_by_the_new_ducts) {
    const Page page = report::branch_page(branch_of(bath_sheet()), {});
    const std::string line = report::with_plain_spaces(note(page, "to buy")->lines[0]);
    for (const char* part : {"round pipe, 17 ft", "top takeoff, 1", "round elbow 90, adjustable, 2",
                             "floor boot, end entry, 1", "damper, 1", "floor register, about"})
        EXPECT_NE(line.find(part), std::string::npos) << line;
}

std::string bought_for(const std::string& sheet) {
    const Page page = report::branch_page(branch_of(sheet), {});
    const auto* bought = note(page, "to buy");
    return bought ? report::with_plain_spaces(bought->lines[0]) : std::string();
}

// With another register than the sheet's, and other fittings in front of it.
std::string bath_ending_in(const std::string& fittings, const std::string& outlet) {
    const std::string sheet = with(bath_sheet(), ", \"floor boot, end entry\"]", fittings + "]");
    return with(sheet, "mount = \"floor\"\nplace = {", outlet + "\nplace = {");
}

bool says(const std::string& text, const char* pattern) {
    return std::regex_search(text, std::regex(pattern));
}

TEST(BranchPage, names_a_boot_by_both_of_its_ends) {
    const std::string floor = bought_for(bath_sheet()),
                      wall = bought_for(bath_ending_in("", "mount = \"high wall\"")),
                      ceiling = bought_for(bath_ending_in("", "mount = \"ceiling\""));
    EXPECT_TRUE(
        says(floor, "(\\d in) round pipe.* \\1 to (.* x \\d+ in) floor boot, end entry, 1 .* \\2 floor"))
        << floor;
    EXPECT_TRUE(says(wall, "(\\d in) round pipe.* \\1 to (\\d+ x \\d in) wall boot, 1 .* \\2 high wall"))
        << wall;
    EXPECT_TRUE(says(ceiling, "(\\d in) round pipe.* \\1 to (\\d+ x \\d in) ceiling box, 1 .* \\2 ceiling"))
        << ceiling;
}

TEST(BranchPage, names_the_stack_between_its_boot_and_its_stackhead) {
    const std::string bought =
        bought_for(bath_ending_in(", \"round-to-stack boot, 90\", \"stackhead\"", "mount = \"low wall\""));
    EXPECT_TRUE(says(bought,
                     "\\d in to ([23]-1/4 x \\d+ in) round-to-stack boot, 90, 1 .* "
                     "\\1 to (\\d+ x \\d in) stackhead, 1 .* \\2 low wall register"))
        << bought;
}

TEST(BranchPage, says_which_boot_no_shop_has) {
    EXPECT_THAT(bought_for(bath_sheet()), testing::Not(testing::HasSubstr("made up")));
    EXPECT_THAT(
        bought_for(bath_ending_in(", \"floor boot, end entry\"", "mount = \"floor\"\nface = \"5 x 12 in\"")),
        testing::HasSubstr(" in to 5 x 12 in floor boot, end entry, 1 (on no shelf: made up)"));
    EXPECT_THAT(
        bought_for(bath_ending_in("", "mount = \"high wall\"\nface = \"8 x 4 in\"")),
        testing::HasSubstr(" in to 8 x 4 in wall boot, 1 (on no shelf: made up, or the pipe brought to "
                           "5 in before it)"));
}

TEST(BranchPage, tells_what_is_open_of_a_register_as_the_sheet_does) {
    EXPECT_THAT(
        bought_for(bath_ending_in("", "mount = \"low wall\"\nface = \"10 x 6 in\"\nfree_area = \"33 in2\"")),
        testing::HasSubstr("10 x 6 in low wall register, about 33 in2 of it open, as in the sheet, 1"));
}

TEST(BranchPage, says_what_would_help_where_the_answer_is_no) {
    for (const NamedSheet& house : sheets()) {
        const auto answer = branch_of(house.sheet);
        const Page page = report::branch_page(answer, {});
        EXPECT_EQ(note(page, "would help") != nullptr, !questions::holds(answer.verdict)) << house.name;
    }
}

TEST(BranchPage, says_that_a_small_heater_cannot_hold_the_house) {
    const std::string small = with(bath_sheet(), "80000 Btu/h", "30000 Btu/h");
    EXPECT_TRUE(note(report::branch_page(branch_of(small), {}), "on-time"));
    EXPECT_FALSE(note(report::branch_page(branch_of(bath_sheet()), {}), "on-time"));
}

TEST(BranchPage, with_all_assumptions_lists_every_one) {
    const auto answer = branch_of(bath_sheet());
    const Page page = report::branch_page(answer, {System::us, true});
    EXPECT_EQ(note(page, "assumed")->lines.size(), answer.weighed.weights.size() + 1);
}

TEST(CheckPage, lists_every_assumption_with_its_basis) {
    const auto answer = check_of(bath_sheet());
    const Page page = report::check_page(answer, {});
    EXPECT_EQ(page.headline.find("the sheet is right: Tannery Row, 3 rooms"), 0u);
    const report::Note* assumed = note(page, "assumed");
    ASSERT_EQ(assumed->lines.size(), answer.assumptions.size());
    for (std::size_t i = 0; i < assumed->lines.size(); ++i)
        EXPECT_NE(assumed->lines[i].find(house::default_row(answer.assumptions[i].id).basis),
                  std::string::npos);
}

}  // namespace
