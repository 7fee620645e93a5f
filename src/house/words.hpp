// The closed word lists of the sheet, as types, and their spelling. One row per word: the reader, the writer
// and the "did you mean" all use these tables.
#pragma once

#include <span>
#include <string_view>

namespace house {

enum class WallSide { north, east, south, west };
enum class DuctSide { supply, return_side };
// What a duct is made of, as its air feels it; panned_joist and stud_bay: framing closed with sheet metal or
// board.
enum class DuctKind { metal, flex, lined, plastic, panned_joist, stud_bay, masonry };
enum class State { found, added, removed };  // the sheet says found, new, removed
enum class Frame { balloon, platform };
enum class HeaterKind { furnace, heat_pump, electric, unknown };
enum class CoolingKind { none, coil };
// zone_damper and bypass: of a system split in zones, which no answer covers.
enum class DeviceKind { filter, coil, other, zone_damper, bypass };
constexpr bool is_of_zones(DeviceKind kind) {
    return kind == DeviceKind::zone_damper || kind == DeviceKind::bypass;
}
// How a blower answers more pressure: with less air, or with a motor that holds its airflow.
enum class BlowerKind { falling, constant_airflow };
enum class DamperSetting { open, half, shut };
// What of the ducts is sealed with mastic or foil tape; cloth tape does not last.
enum class DuctSealing { unsealed, joints, joints_and_seams, all };
enum class ReadingKind { bag, airflow, static_pressure, temperature_rise, temperature };
enum class Mount { floor, low_wall, toe_kick, high_wall, ceiling };
// What lies beyond a surface or around a duct. heated_rooms: the rooms not described, at the house's
// temperature.
enum class Space { outdoors, heated_rooms, attic, basement, crawl, garage, porch, ground };
// Of what kind a surface of a room is; a sheet lists only walls, slopes, ceilings and floors.
enum class SurfaceKind { wall, slope, ceiling, floor, window, door, partition };
// What stands on a room's floor, or hangs so low that no register goes there.
enum class FixtureKind {
    tub,
    shower,
    toilet,
    basin,
    vanity,
    radiator,
    kitchen_cabinet,
    stove,
    refrigerator,
    washer,
    bed,
    sofa,
    chair,
    table,
    desk,
    wardrobe,
    shelves,
    other
};
enum class JoistsRun { north_south, east_west };
// How a door opens: into the room it is written in, out of it, along its wall; or there is no leaf.
enum class DoorHanging { in, out, slides, none };
enum class Framing { joists, studs };  // what stands at the sides of a bay
enum class RoomUse { kitchen, living, bedroom, bath, other };
// Where people sit, cook and leave the lamps on.
constexpr bool is_lived_in(RoomUse use) { return use == RoomUse::kitchen || use == RoomUse::living; }
// An exhaust fan that runs at times, as one of a bath or a kitchen, is in no load.
enum class FanRuns { always, at_times };
enum class LeakageClass { tight, good, average, leaky, very_leaky };

// What a sheet may say of a layer, a construction or a glass instead of its name.
inline constexpr std::string_view dont_know = "don't know";

template <class E>
struct Word {
    std::string_view text;
    E value;
};

// All words of an enumeration, in the order they are offered.
template <class E>
std::span<const Word<E>> words();
template <>
std::span<const Word<WallSide>> words<WallSide>();
template <>
std::span<const Word<DuctSide>> words<DuctSide>();
template <>
std::span<const Word<DuctKind>> words<DuctKind>();
template <>
std::span<const Word<State>> words<State>();
template <>
std::span<const Word<Frame>> words<Frame>();
template <>
std::span<const Word<HeaterKind>> words<HeaterKind>();
template <>
std::span<const Word<CoolingKind>> words<CoolingKind>();
template <>
std::span<const Word<DeviceKind>> words<DeviceKind>();
template <>
std::span<const Word<BlowerKind>> words<BlowerKind>();
template <>
std::span<const Word<DamperSetting>> words<DamperSetting>();
template <>
std::span<const Word<DuctSealing>> words<DuctSealing>();
template <>
std::span<const Word<ReadingKind>> words<ReadingKind>();
template <>
std::span<const Word<Mount>> words<Mount>();
template <>
std::span<const Word<Space>> words<Space>();
template <>
std::span<const Word<SurfaceKind>> words<SurfaceKind>();
template <>
std::span<const Word<LeakageClass>> words<LeakageClass>();
template <>
std::span<const Word<RoomUse>> words<RoomUse>();

template <>
std::span<const Word<FanRuns>> words<FanRuns>();
template <>
std::span<const Word<FixtureKind>> words<FixtureKind>();
template <>
std::span<const Word<JoistsRun>> words<JoistsRun>();
template <>
std::span<const Word<DoorHanging>> words<DoorHanging>();

// The sheet's spelling of a value: "low wall".
template <class E>
std::string_view word(E value) {
    for (const auto& row : words<E>())
        if (row.value == value) return row.text;
    return {};
}

}  // namespace house
