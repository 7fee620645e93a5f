// Every wrong sheet of cases/bad-sheets is refused with exactly the message kept beside it: NAME.toml and
// NAME.txt. With SILLFLOW_KEEP=1 the messages are written anew instead.
#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "command_line/run_program.hpp"

namespace {

using namespace command_line_test;
namespace fs = std::filesystem;

std::vector<std::string> bad_sheets() {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(fs::path(SILLFLOW_SOURCE_DIR) / "cases/bad-sheets"))
        if (entry.path().extension() == ".toml") names.push_back(entry.path().stem().string());
    std::sort(names.begin(), names.end());
    return names;
}

class BadSheet : public testing::TestWithParam<std::string> {};

TEST_P(BadSheet, IsRefusedWithItsMessage) {
    const std::string file = "cases/bad-sheets/" + GetParam() + ".toml";
    const fs::path kept = fs::path(SILLFLOW_SOURCE_DIR) / ("cases/bad-sheets/" + GetParam() + ".txt");
    for (const std::string& question : std::vector<std::string>{"branch ", "loads ", "check "}) {
        const Ran ran = run(question + file);
        EXPECT_EQ(ran.status, 2) << question;
        EXPECT_EQ(ran.out, "") << question;
        if (std::getenv("SILLFLOW_KEEP")) std::ofstream(kept, std::ios::binary) << ran.err;
        EXPECT_EQ(ran.err, read(kept)) << question;
    }
}

INSTANTIATE_TEST_SUITE_P(Cases, BadSheet, testing::ValuesIn(bad_sheets()), [](const auto& tested) {
    std::string name = tested.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

}  // namespace
