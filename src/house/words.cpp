#include "house/words.hpp"

namespace house {
namespace {

constexpr Word<WallSide> wall_sides[] = {{"north", WallSide::north},
                                         {"east", WallSide::east},
                                         {"south", WallSide::south},
                                         {"west", WallSide::west}};
constexpr Word<DuctSide> duct_sides[] = {{"supply", DuctSide::supply}, {"return", DuctSide::return_side}};
constexpr Word<DuctKind> duct_kinds[] = {{"metal", DuctKind::metal},
                                         {"flex", DuctKind::flex},
                                         {"lined", DuctKind::lined},
                                         {"plastic", DuctKind::plastic},
                                         {"panned joist", DuctKind::panned_joist},
                                         {"stud bay", DuctKind::stud_bay},
                                         {"masonry", DuctKind::masonry}};
constexpr Word<State> states[] = {
    {"found", State::found}, {"new", State::added}, {"removed", State::removed}};
constexpr Word<Frame> frames[] = {{"balloon", Frame::balloon}, {"platform", Frame::platform}};
constexpr Word<HeaterKind> heater_kinds[] = {{"furnace", HeaterKind::furnace},
                                             {"heat pump", HeaterKind::heat_pump},
                                             {"electric", HeaterKind::electric}};
constexpr Word<CoolingKind> cooling_kinds[] = {{"none", CoolingKind::none}, {"coil", CoolingKind::coil}};
constexpr Word<DeviceKind> device_kinds[] = {{"filter", DeviceKind::filter},
                                             {"coil", DeviceKind::coil},
                                             {"other", DeviceKind::other},
                                             {"zone damper", DeviceKind::zone_damper},
                                             {"bypass", DeviceKind::bypass}};
constexpr Word<BlowerKind> blower_kinds[] = {{"falling", BlowerKind::falling},
                                             {"constant airflow", BlowerKind::constant_airflow}};
constexpr Word<DamperSetting> damper_settings[] = {
    {"open", DamperSetting::open}, {"half", DamperSetting::half}, {"shut", DamperSetting::shut}};
constexpr Word<DuctSealing> duct_sealings[] = {{"unsealed", DuctSealing::unsealed},
                                               {"joints", DuctSealing::joints},
                                               {"joints and seams", DuctSealing::joints_and_seams},
                                               {"all", DuctSealing::all}};
constexpr Word<ReadingKind> reading_kinds[] = {{"bag", ReadingKind::bag},
                                               {"airflow", ReadingKind::airflow},
                                               {"static", ReadingKind::static_pressure},
                                               {"temperature rise", ReadingKind::temperature_rise},
                                               {"temperature", ReadingKind::temperature}};
constexpr Word<Mount> mounts[] = {{"floor", Mount::floor},
                                  {"low wall", Mount::low_wall},
                                  {"toe kick", Mount::toe_kick},
                                  {"high wall", Mount::high_wall},
                                  {"ceiling", Mount::ceiling}};
constexpr Word<Space> spaces[] = {{"outdoors", Space::outdoors}, {"heated rooms", Space::heated_rooms},
                                  {"attic", Space::attic},       {"basement", Space::basement},
                                  {"crawl", Space::crawl},       {"garage", Space::garage},
                                  {"porch", Space::porch},       {"ground", Space::ground}};
constexpr Word<Framing> framings[] = {{"joists", Framing::joists}, {"studs", Framing::studs}};
constexpr Word<SurfaceKind> surface_kinds[] = {{"wall", SurfaceKind::wall},
                                               {"slope", SurfaceKind::slope},
                                               {"ceiling", SurfaceKind::ceiling},
                                               {"floor", SurfaceKind::floor}};
constexpr Word<RoomUse> room_uses[] = {{"kitchen", RoomUse::kitchen},
                                       {"living", RoomUse::living},
                                       {"bedroom", RoomUse::bedroom},
                                       {"bath", RoomUse::bath},
                                       {"other", RoomUse::other}};
constexpr Word<LeakageClass> leakage_classes[] = {{"tight", LeakageClass::tight},
                                                  {"good", LeakageClass::good},
                                                  {"average", LeakageClass::average},
                                                  {"leaky", LeakageClass::leaky},
                                                  {"very leaky", LeakageClass::very_leaky}};
constexpr Word<FanRuns> fan_runs[] = {{"always", FanRuns::always}, {"at times", FanRuns::at_times}};
constexpr Word<FixtureKind> fixture_kinds[] = {{"tub", FixtureKind::tub},
                                               {"shower", FixtureKind::shower},
                                               {"toilet", FixtureKind::toilet},
                                               {"basin", FixtureKind::basin},
                                               {"vanity", FixtureKind::vanity},
                                               {"radiator", FixtureKind::radiator},
                                               {"kitchen cabinet", FixtureKind::kitchen_cabinet},
                                               {"stove", FixtureKind::stove},
                                               {"refrigerator", FixtureKind::refrigerator},
                                               {"washer", FixtureKind::washer},
                                               {"bed", FixtureKind::bed},
                                               {"sofa", FixtureKind::sofa},
                                               {"chair", FixtureKind::chair},
                                               {"table", FixtureKind::table},
                                               {"desk", FixtureKind::desk},
                                               {"wardrobe", FixtureKind::wardrobe},
                                               {"shelves", FixtureKind::shelves},
                                               {"other", FixtureKind::other}};
constexpr Word<JoistsRun> joists_runs[] = {{"north-south", JoistsRun::north_south},
                                           {"east-west", JoistsRun::east_west}};
constexpr Word<DoorHanging> door_hangings[] = {{"in", DoorHanging::in},
                                               {"out", DoorHanging::out},
                                               {"slides", DoorHanging::slides},
                                               {"none", DoorHanging::none}};

}  // namespace

template <>
std::span<const Word<WallSide>> words<WallSide>() {
    return wall_sides;
}
template <>
std::span<const Word<DuctSide>> words<DuctSide>() {
    return duct_sides;
}
template <>
std::span<const Word<DuctKind>> words<DuctKind>() {
    return duct_kinds;
}
template <>
std::span<const Word<State>> words<State>() {
    return states;
}
template <>
std::span<const Word<Frame>> words<Frame>() {
    return frames;
}
template <>
std::span<const Word<HeaterKind>> words<HeaterKind>() {
    return heater_kinds;
}
template <>
std::span<const Word<CoolingKind>> words<CoolingKind>() {
    return cooling_kinds;
}
template <>
std::span<const Word<DeviceKind>> words<DeviceKind>() {
    return device_kinds;
}
template <>
std::span<const Word<BlowerKind>> words<BlowerKind>() {
    return blower_kinds;
}
template <>
std::span<const Word<DamperSetting>> words<DamperSetting>() {
    return damper_settings;
}
template <>
std::span<const Word<DuctSealing>> words<DuctSealing>() {
    return duct_sealings;
}
template <>
std::span<const Word<ReadingKind>> words<ReadingKind>() {
    return reading_kinds;
}
template <>
std::span<const Word<Mount>> words<Mount>() {
    return mounts;
}
template <>
std::span<const Word<Space>> words<Space>() {
    return spaces;
}
template <>
std::span<const Word<SurfaceKind>> words<SurfaceKind>() {
    return surface_kinds;
}
template <>
std::span<const Word<LeakageClass>> words<LeakageClass>() {
    return leakage_classes;
}
template <>
std::span<const Word<Framing>> words<Framing>() {
    return framings;
}
template <>
std::span<const Word<RoomUse>> words<RoomUse>() {
    return room_uses;
}
template <>
std::span<const Word<FanRuns>> words<FanRuns>() {
    return fan_runs;
}
template <>
std::span<const Word<FixtureKind>> words<FixtureKind>() {
    return fixture_kinds;
}
template <>
std::span<const Word<JoistsRun>> words<JoistsRun>() {
    return joists_runs;
}
template <>
std::span<const Word<DoorHanging>> words<DoorHanging>() {
    return door_hangings;
}

}  // namespace house
