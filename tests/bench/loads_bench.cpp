// Heat loss of one room and of a house of twelve, and its heat gain, names of materials looked up each time.
#include <benchmark/benchmark.h>

#include "loads/a_house.hpp"
#include "loads/room_heat_gain.hpp"
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

void heat_loss_of_a_house_of_12_rooms_with_its_attic(benchmark::State& state) {
    house::House house = a_house::old_house(12);
    house::BufferSpace attic;
    attic.floor_area = units::Area(144);
    attic.outer = {a_house::surface(173, a_house::u(3))};
    attic.outdoor_air = units::Airflow(0.12);
    house.buffer_spaces = {attic};
    for (auto _ : state) benchmark::DoNotOptimize(loads::house_heat_loss(house));
}
BENCHMARK(heat_loss_of_a_house_of_12_rooms_with_its_attic);

void heat_gain_of_a_house_of_12_rooms(benchmark::State& state) {
    house::House house = a_house::old_house(12);
    house.summer = house::Summer{};
    house.summer->latitude = 42;
    for (house::Room& room : house.rooms)
        for (house::Surface& surface : room.surfaces)
            if (surface.kind == house::SurfaceKind::window) {
                surface.sun = house::Sunlit{};
                surface.sun->glass = house::CatalogueName{"single + storm", {}};
            }
    const loads::Infiltration leakage = loads::infiltration(house);
    for (auto _ : state) benchmark::DoNotOptimize(loads::house_heat_gain(house, leakage));
}
BENCHMARK(heat_gain_of_a_house_of_12_rooms);

}  // namespace
