// Whole answers: reading a sheet of about 200 lines, building its house, sizing its new branch, and the
// branch with all its assumptions weighed.
#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>
#include <string>

#include "house/build.hpp"
#include "questions/answer_branch.hpp"
#include "sheet/read.hpp"

namespace {

std::string upstairs_bath() {
    std::ifstream file(SILLFLOW_SOURCE_DIR "/cases/upstairs-bath/house.toml");
    return {std::istreambuf_iterator<char>(file), {}};
}

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

}  // namespace
