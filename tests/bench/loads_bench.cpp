// Heat loss of one room and of a house of twelve, names of materials looked up each time.
#include <benchmark/benchmark.h>

#include "loads/a_house.hpp"
#include "loads/room_heat_loss.hpp"

namespace {

void heat_loss_of_a_room(benchmark::State& state) {
    const house::House house = a_house::old_house(3);
    const loads::Infiltration leakage = loads::infiltration(house);
    for (auto _ : state) benchmark::DoNotOptimize(loads::room_heat_loss(house, leakage, {1}));
}
BENCHMARK(heat_loss_of_a_room);

void heat_loss_of_a_house_of_12_rooms(benchmark::State& state) {
    const house::House house = a_house::old_house(12);
    for (auto _ : state) benchmark::DoNotOptimize(loads::house_heat_loss(house));
}
BENCHMARK(heat_loss_of_a_house_of_12_rooms);

}  // namespace
