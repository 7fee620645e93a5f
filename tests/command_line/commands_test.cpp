// Each command as a user runs it: words, exit status, bad options, files that are not there.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>
#include <vector>

#include "command_line/run_program.hpp"

namespace {

using namespace command_line_test;
using testing::HasSubstr;
using testing::Not;

const std::string bath = "cases/upstairs-bath/house.toml";
const std::string all_commands[] = {"branch", "trunk", "loads", "check", "start"};

TEST(Commands, BranchAnswersYesOrProbably) {
    const Ran ran = run("branch " + bath);
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    EXPECT_THAT(ran.out, HasSubstr("bath: "));
    EXPECT_THAT(ran.out, HasSubstr("cfm"));
}

TEST(Commands, UnitsChangeTheUnits) {
    const Ran si = run("branch " + bath + " --units si");
    EXPECT_EQ(si.status, 0);
    EXPECT_THAT(si.out, HasSubstr("L/s"));
    EXPECT_THAT(si.out, Not(HasSubstr("cfm")));
    EXPECT_THAT(si.out, Not(HasSubstr("Btu")));
}

TEST(Commands, ShowWorkAddsSteps) {
    const Ran plain = run("branch " + bath), work = run("branch " + bath + " --show-work");
    EXPECT_THAT(work.out, testing::StartsWith(plain.out));
    EXPECT_GT(work.out.size(), plain.out.size() + 1000);
}

TEST(Commands, TheSameSheetGivesTheSameBytes) {
    for (const std::string& words :
         std::vector<std::string>{"branch " + bath, "loads " + bath, "branch --json " + bath})
        EXPECT_EQ(run(words).out, run(words).out);
}

// 0: it can, or probably; 1: it cannot; 2: asked wrongly; 3: no answer.
TEST(Commands, TrunkTellsByItsStatusWhetherTheSystemCan) {
    const Ran ran = run("trunk " + bath);
    EXPECT_LE(ran.status, 1) << ran.err;
    EXPECT_EQ(ran.status == 1, ran.out.find("annot take it") != std::string::npos ||
                                   ran.out.find("probably not take it") != std::string::npos ||
                                   ran.out.find("brings too little") != std::string::npos);
    const Ran json = run("trunk --json " + bath);
    EXPECT_EQ(json.status, ran.status);
    EXPECT_THAT(json.out, HasSubstr("\"question\": \"trunk\""));
    EXPECT_EQ(run("trunk " + bath + " --outlet chimney").status, 2);
    EXPECT_THAT(run("trunk " + bath + " --show-work").out, HasSubstr("temperature the bath reaches"));
    EXPECT_EQ(run("trunk no-such.toml").status, 2);
}

TEST(Commands, PlaceAnswersAndDraws) {
    const std::string sheet = "cases/under-the-window/house.toml --room bath";
    const Ran ran = run("place " + sheet);
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("south window"));
    const Scratch scratch;
    const std::string file = (scratch / "bath.svg").string();
    EXPECT_EQ(run("place " + sheet + " --svg '" + file + "'").status, 0);
    EXPECT_THAT(read(file), HasSubstr("</svg>"));
    EXPECT_EQ(run("place " + sheet + " --svg '" + file + "'").status, 0);  // drawn anew
    const Ran json = run("place --json " + sheet);
    EXPECT_EQ(json.status, 0);
    EXPECT_THAT(json.out, HasSubstr("\"question\": \"place\""));
}

TEST(Commands, PlaceAskedWronglySaysHow) {
    const std::string sheet = "place cases/under-the-window/house.toml";
    EXPECT_EQ(run(sheet).status, 2);  // no room
    const Ran room = run(sheet + " --room bth");
    EXPECT_EQ(room.status, 2);
    EXPECT_THAT(room.err, HasSubstr("did you mean 'bath'?"));
    const Ran mount = run(sheet + " --room bath --mount roof");
    EXPECT_EQ(mount.status, 2);
    EXPECT_THAT(mount.err, HasSubstr("'roof' is not one of floor, low wall"));
    EXPECT_EQ(run(sheet + " --room bath --window attic").status, 2);
    EXPECT_EQ(run(sheet + " --room hall").status, 3);  // no run leads there
    const Ran nowhere = run(sheet + " --room bath --svg no/such/folder/bath.svg");
    EXPECT_EQ(nowhere.status, 2);
    EXPECT_EQ(nowhere.out, "");
}

TEST(Commands, TrunkDoesNotCoverZones) {
    const Scratch scratch;
    const std::string sheet =
        read(std::filesystem::path(SILLFLOW_SOURCE_DIR) / bath) + "\n[[device]]\nkind = \"zone damper\"\n";
    const Ran ran = run("trunk '" + scratch.write("zones.toml", sheet).string() + "'");
    EXPECT_EQ(ran.status, 3);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("not covered"));
}

TEST(Commands, JsonIsSiWhateverTheUnits) {
    EXPECT_EQ(run("branch --json " + bath).out, run("branch --json --units us " + bath).out);
    EXPECT_EQ(run("branch --json " + bath).out, run("branch --json --units si " + bath).out);
}

TEST(Commands, StartWritesTheLeastSheetOnce) {
    const Scratch scratch;
    const std::string file = (scratch / "mine.toml").string();
    const Ran ran = run("start '" + file + "'");
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(read(file), read(std::filesystem::path(SILLFLOW_SOURCE_DIR) / "cases/least-sheet/house.toml"));
    EXPECT_EQ(run("branch '" + file + "'").status, 0);
    const Ran again = run("start '" + file + "'");
    EXPECT_EQ(again.status, 2);
    EXPECT_THAT(again.err, HasSubstr("exists already; nothing was written"));
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(scratch.folder()), {}),
              1);  // no half-written file left
}

TEST(Commands, StartWhereNothingCanBeWritten) {
    const Ran ran = run("start /no/such/folder/house.toml");
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("/no/such/folder/house.toml"));
}

TEST(Commands, HelpOfEachHasAnExample) {
    EXPECT_EQ(run("--help").status, 0);
    for (const std::string& command : all_commands) {
        const Ran ran = run(command + " --help");
        EXPECT_EQ(ran.status, 0) << command;
        EXPECT_THAT(ran.out, HasSubstr("sillflow " + command + " house.toml")) << command;
    }
    EXPECT_THAT(run("fittings --help").out, HasSubstr("sillflow fittings --size"));
    EXPECT_EQ(run("--version").status, 0);
}

TEST(Commands, MistypedQuestionNamesTheNearest) {
    const Ran ran = run("brnch " + bath);
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.err, "sillflow: 'brnch' is not a question; did you mean 'branch'?\n");
    EXPECT_EQ(run("").status, 2);
}

TEST(Commands, BadOptions) {
    for (const std::string& words : std::vector<std::string>{
             "branch", "branch " + bath + " --unts si", "branch " + bath + " --units furlong",
             "branch " + bath + " extra.toml", "check --show-work x", "start"}) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_EQ(ran.out, "") << words;
        EXPECT_THAT(ran.err, testing::StartsWith("sillflow: ")) << words;
    }
}

TEST(Commands, FilesThatAreNoSheets) {
    const Scratch scratch;
    EXPECT_THAT(run("branch no-such.toml").err, HasSubstr("no-such.toml"));
    EXPECT_EQ(run("branch no-such.toml").status, 2);
    EXPECT_EQ(run("branch cases").status, 2);
    EXPECT_EQ(run("check '" + scratch.write("empty.toml", "").string() + "'").status, 2);
    EXPECT_EQ(
        run("check '" + scratch.write("bytes.toml", std::string("\0\xff\xfe", 3)).string() + "'").status, 2);
}

TEST(Commands, OutletThatIsNotThere) {
    const Ran ran = run("branch " + bath + " --outlet 'new bath registr'");
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("did you mean 'new bath register'?"));
}

TEST(Commands, LoadsOfOneRoom) {
    const Ran all = run("loads " + bath), one = run("loads " + bath + " --room bath");
    EXPECT_EQ(one.status, 0) << one.err;
    EXPECT_THAT(one.out, testing::StartsWith("the bath loses "));
    EXPECT_THAT(one.out, HasSubstr("north window"));
    EXPECT_THAT(one.out, Not(HasSubstr("bedroom north window")));
    const std::string whole = "whole house";
    const auto sum_of = [&](const std::string& out) {
        const std::size_t at = out.find(whole);
        return out.substr(at, out.find('=', at) - at);
    };
    EXPECT_EQ(sum_of(one.out), sum_of(all.out));  // the others still count
    const Ran work = run("loads " + bath + " --room bath --show-work");
    EXPECT_THAT(work.out, HasSubstr("the bath: its north window"));
    EXPECT_THAT(work.out, Not(HasSubstr("the north bedroom: its")));
    EXPECT_THAT(run("loads --json " + bath + " --room bath").out, HasSubstr("\"only_room\": \"bath\""));
}

TEST(Commands, JsonSpeaksJsonOfWrongSheetsAndOfNoAnswerToo) {
    const Ran wrong =
        run("branch --json " + std::string(SILLFLOW_SOURCE_DIR) + "/cases/bad-sheets/five-slips.toml");
    EXPECT_EQ(wrong.status, 2);
    EXPECT_THAT(wrong.out, HasSubstr("\"right\": false"));
    EXPECT_EQ(wrong.err, "");
    const Ran unknown = run("loads --json " + bath + " --room 'noth bedroom'");
    EXPECT_EQ(unknown.status, 2);
    EXPECT_THAT(unknown.out, HasSubstr("\"why\": \"no room of the house is called 'noth bedroom'"));
}

TEST(Commands, RoomThatIsNotThere) {
    const Ran ran = run("loads " + bath + " --room 'noth bedroom'");
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("no room of the house is called 'noth bedroom'"));
    EXPECT_THAT(ran.err, HasSubstr("did you mean 'north bedroom'?"));
    EXPECT_EQ(run("branch " + bath + " --room bath").status, 2);
}

TEST(Commands, FittingsAreListedAtASizeAndFlow) {
    const Ran usual = run("fittings");
    EXPECT_EQ(usual.status, 0) << usual.err;
    EXPECT_THAT(usual.out, HasSubstr("each in a 6 in pipe with 100 cfm"));
    EXPECT_THAT(usual.out, HasSubstr("top takeoff"));
    EXPECT_EQ(run("fittings --size '6 in' --flow '100 cfm' --trunk '8 x 16 in' --trunk-flow '700 cfm'").out,
              usual.out);
    const Ran stack = run("fittings --size '3-1/4 x 10 in' --flow '60 cfm'");
    EXPECT_THAT(stack.out, HasSubstr("carries as a 6.0 in pipe"));
    EXPECT_THAT(stack.out, HasSubstr("here the length is that at 0.060 in.wc/100 ft"));
    const Ran si = run("fittings --units si");
    EXPECT_THAT(si.out, HasSubstr("loses, Pa"));
    EXPECT_THAT(si.out, Not(HasSubstr("cfm")));
    EXPECT_EQ(run("fittings --json").out, run("fittings --json --units si").out);
}

TEST(Commands, FittingsOfNoHouseAreRefused) {
    for (const std::string& words : std::vector<std::string>{
             "fittings --size 6", "fittings --size ''", "fittings --size '0 in'", "fittings --size '60 ft'",
             "fittings --flow '100 in'", "fittings --flow '0 cfm'", "fittings --flow '900 cfm'",
             "fittings --trunk 'big'", "fittings house.toml"}) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_EQ(ran.out, "") << words;
        EXPECT_THAT(ran.err, testing::StartsWith("sillflow: ")) << words;
    }
}

TEST(Commands, MetricStockIsSizedFromTheMetricShelf) {
    const Ran metric = run("branch " + bath + " --stock metric --units si");
    EXPECT_EQ(metric.status, 0) << metric.err;
    EXPECT_THAT(metric.out, HasSubstr("> 160 mm"));
    EXPECT_THAT(metric.out, Not(HasSubstr("178 mm")));
    EXPECT_EQ(run("branch " + bath + " --stock us").out, run("branch " + bath).out);
    EXPECT_EQ(run("branch " + bath + " --stock imperial").status, 2);
}

TEST(Commands, FullDiskIsSaid) {
    if (!std::filesystem::exists("/dev/full")) return;
    const Scratch scratch;
    const std::string command = "cd '" SILLFLOW_SOURCE_DIR "' && '" SILLFLOW_PROGRAM "' branch " + bath +
                                " >/dev/full 2>'" + (scratch / "err").string() + "'";
    EXPECT_EQ(WEXITSTATUS(std::system(command.c_str())), 2);
    EXPECT_THAT(read(scratch / "err"), HasSubstr("cannot be written"));
}

TEST(Commands, NoColourWithoutATerminal) {
    for (const std::string& words :
         std::vector<std::string>{"branch " + bath, "check " + bath, "check cases"})
        EXPECT_THAT(run(words).out + run(words).err, Not(HasSubstr("\x1b[")));
}

TEST(Commands, NoLineIsLongerThan100Columns) {
    for (const std::string& words :
         std::vector<std::string>{"branch --show-work --all-assumptions " + bath, "loads --show-work " + bath,
                                  "check " + bath, "fittings", "fittings --units si"}) {
        std::istringstream lines(run(words).out);
        for (std::string line; std::getline(lines, line);)
            EXPECT_LE(line.size(), 104u) << line;  // some signs are two bytes
    }
}

TEST(Commands, PageIsTheSameInAnyLocale) {
    EXPECT_EQ(run("branch " + bath).out, run("branch " + bath, "LC_ALL=de_DE.UTF-8").out);
}

}  // namespace
