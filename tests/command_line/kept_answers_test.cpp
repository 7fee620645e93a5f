// The answers shown in README.md and in each case's README.md are those the program gives.
//
// An indented line "    $ sillflow ..." is a command; the indented lines under it, up to the first that is
// not, are its answer. With SILLFLOW_KEEP=1 the answers are written anew instead: read the difference before
// committing it.
#include <gtest/gtest.h>

#include <sstream>
#include <vector>

#include "command_line/run_program.hpp"

namespace {

using namespace command_line_test;
namespace fs = std::filesystem;

const std::string indent = "    ";
const std::string prompt = indent + "$ sillflow ";

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

bool starts_with(const std::string& line, const std::string& start) { return line.rfind(start, 0) == 0; }

// The answer as it stands under its command. Blank lines within an answer are kept as blank.
std::string shown(const Ran& ran) {
    std::string text;
    for (const std::string& line : lines_of(ran.out + ran.err))
        text += line.empty() ? "\n" : indent + line + "\n";
    while (text.size() > 1 && text[text.size() - 2] == '\n') text.pop_back();
    return text;
}

// The page with every answer replaced by what the program says now; adds the commands seen.
std::string with_fresh_answers(const std::string& page, std::vector<std::string>& commands) {
    std::string fresh;
    const std::vector<std::string> lines = lines_of(page);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        fresh += lines[i] + "\n";
        if (!starts_with(lines[i], prompt)) continue;
        const std::string words = lines[i].substr(prompt.size());
        commands.push_back(words);
        if (starts_with(words, "start ")) continue;  // writes a file; command_line/commands_test.cpp runs it
        fresh += shown(run(words));
        std::size_t next = i + 1,
                    end = next;  // the old answer: indented lines and the blank ones between them
        while (next < lines.size() && (lines[next].empty() || starts_with(lines[next], indent)) &&
               !starts_with(lines[next], prompt)) {
            ++next;
            if (!lines[next - 1].empty()) end = next;
        }
        i = end - 1;
    }
    return fresh;
}

void expect_kept(const fs::path& file, std::size_t least_commands) {
    const std::string page = read(file);
    std::vector<std::string> commands;
    const std::string fresh = with_fresh_answers(page, commands);
    EXPECT_GE(commands.size(), least_commands) << file;
    if (std::getenv("SILLFLOW_KEEP"))
        std::ofstream(file, std::ios::binary) << fresh;
    else
        EXPECT_EQ(fresh, page) << file << ": run this test with SILLFLOW_KEEP=1 and read the difference";
}

TEST(KeptAnswers, OfTheReadme) { expect_kept(fs::path(SILLFLOW_SOURCE_DIR) / "README.md", 4); }

TEST(KeptAnswers, OfEveryCase) {
    int cases = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SILLFLOW_SOURCE_DIR) / "cases")) {
        if (!entry.is_directory() || entry.path().filename() == "bad-sheets") continue;
        ++cases;
        EXPECT_TRUE(fs::exists(entry.path() / "house.toml")) << entry.path();
        expect_kept(entry.path() / "README.md", 1);
    }
    EXPECT_GE(cases, 3);
}

}  // namespace
