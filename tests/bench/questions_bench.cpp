// Whole answers: reading a sheet of about 200 lines, building its house, sizing its new branch, the branch
// with all its assumptions weighed, and all places of a room.
#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>
#include <string>

#include "house/build.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_place.hpp"
#include "sheet/read.hpp"

namespace {

std::string a_case(const std::string& name) {
    std::ifstream file(SILLFLOW_SOURCE_DIR "/cases/" + name + "/house.toml");
    return {std::istreambuf_iterator<char>(file), {}};
}
std::string upstairs_bath() { return a_case("upstairs-bath"); }

house::Survey survey() { return sheet::read(upstairs_bath()).survey; }

house::House planned() { return build(survey(), {}, house::Stage::planned).house; }

house::OutletId new_outlet(const house::House& house) {
    for (const house::Outlet& outlet : house.outlets)
        if (outlet.state == house::State::added) return outlet.id;
    return {};
}

void reading_a_sheet_of_200_lines(benchmark::State& state) {
    const std::string text = upstairs_bath();
    if (text.empty()) return state.SkipWithError("no such case");
    for (auto _ : state) benchmark::DoNotOptimize(sheet::read(text));
}
BENCHMARK(reading_a_sheet_of_200_lines)->Unit(benchmark::kMicrosecond);

void building_a_house(benchmark::State& state) {
    const house::Survey read = survey();
    for (auto _ : state) benchmark::DoNotOptimize(build(read, {}, house::Stage::planned));
}
BENCHMARK(building_a_house)->Unit(benchmark::kMicrosecond);

void sizing_a_branch(benchmark::State& state) {
    const house::House house = planned();
    const house::OutletId outlet = new_outlet(house);
    for (auto _ : state) benchmark::DoNotOptimize(questions::size_branch(house, outlet));
}
BENCHMARK(sizing_a_branch)->Unit(benchmark::kMicrosecond);

void answering_a_branch(benchmark::State& state) {
    const house::Survey read = survey();
    for (auto _ : state) benchmark::DoNotOptimize(questions::answer_branch(read));
}
BENCHMARK(answering_a_branch)->Unit(benchmark::kMicrosecond);

// All places of a room (aim 20 ms), and with every assumption weighed (aim 500 ms).
void finding_all_places(benchmark::State& state) {
    const house::Survey read = sheet::read(a_case("under-the-window")).survey;
    for (auto _ : state) benchmark::DoNotOptimize(questions::compare_places(read, {"bath", {}, {}}));
}
BENCHMARK(finding_all_places)->Unit(benchmark::kMillisecond);

void answering_where(benchmark::State& state) {
    const house::Survey read = sheet::read(a_case("under-the-window")).survey;
    for (auto _ : state) benchmark::DoNotOptimize(questions::answer_place(read, {"bath", {}, {}}));
}
BENCHMARK(answering_where)->Unit(benchmark::kMillisecond);

}  // namespace
