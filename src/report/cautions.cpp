#include "report/cautions.hpp"

#include <algorithm>

#include "report/figures.hpp"
#include "routes/framing_limits.hpp"

namespace report {
namespace {

bool burns_fuel(const house::Heater& heater) {
    return heater.kind == house::HeaterKind::furnace || heater.kind == house::HeaterKind::unknown;
}

std::string combustion_air(const house::Heater& heater, const std::vector<std::string>& draws) {
    const std::string& beside = heater.shares_space_with;
    if (!burns_fuel(heater) && beside.empty()) return {};
    std::string who = "a heater that burns fuel needs";
    if (heater.kind == house::HeaterKind::furnace) who = "the furnace needs";
    if (!beside.empty())
        who = (burns_fuel(heater) ? "the heater and the " : "the ") + beside +
              (burns_fuel(heater) ? " in its space need" : " beside the heater needs");
    const std::string pulled =
        draws.empty() ? "" : ". " + capitalised(listed(draws)) + ": flue gas can follow";
    return "combustion air: " + who + " air to burn; return air must not be drawn from that space" + pulled +
           ". Have the draught checked after the work" + (draws.empty() ? "" : ", with all fans on");
}

bool adds_a_duct(const house::House& house) {
    return std::any_of(house.ducts.begin(), house.ducts.end(),
                       [](const house::Duct& duct) { return duct.state == house::State::added; });
}

bool is_damp(const house::Room& room) {
    const auto is_called = [&](const char* word) { return room.name.find(word) != std::string::npos; };
    return room.use == house::RoomUse::bath || room.use == house::RoomUse::kitchen || is_called("bath") ||
           is_called("kitchen");
}

std::string damp_return(const house::House& house) {
    for (const house::Outlet& outlet : house.outlets) {
        const house::Room& room = house.room(outlet.room);
        if (!house.is_supply(outlet) && is_damp(room))
            return "moisture: the return in the " + room.name +
                   " spreads its damp and smells through the house; codes as a rule forbid it there";
    }
    return {};
}

bool names_asbestos(const house::House& house) {
    for (const house::Room& room : house.rooms)
        for (const house::Surface& surface : room.surfaces)
            if (const auto* layers = std::get_if<house::Layers>(&surface.assembly))
                for (const auto& name : layers->names)
                    if (name.text.find("asbestos") != std::string::npos) return true;
    return false;
}

// Asbestos tape, cement and paper went out of houses about 1980, lead paint in 1978.
std::string old_materials(const house::House& house) {
    constexpr int last_with_asbestos = 1980, last_with_lead = 1978;
    const bool asbestos = names_asbestos(house) || (house.built > 0 && house.built <= last_with_asbestos);
    const bool lead = house.built > 0 && house.built <= last_with_lead;
    if (!asbestos && !lead) return {};
    std::string what = asbestos ? "asbestos: white tape or paper on old ducts and boots, cement siding" : "";
    if (lead) what += asbestos ? "; lead: old paint" : "lead: old paint";
    return what + ". Do not disturb them before they are tested";
}

}  // namespace

// The bay a new duct runs through tells how deep its joists are, and so what codes as a rule let be cut from
// them.
std::string structure(const house::House& house) {
    std::string text =
        "structure: no joist, stud or header is notched or bored for a duct unless your code's limits or "
        "an engineer allow it";
    for (const house::Duct& duct : house.ducts) {
        if (duct.state != house::State::added || !duct.through) continue;
        const house::Bay& bay = house.bays[static_cast<std::size_t>(*duct.through)];
        constexpr units::System system = units::System::us;  // codes speak in inches
        if (bay.framing == house::Framing::studs) {
            const routes::StudLimits limits = routes::stud_limits(bay.depth, true);
            return text + "; as a rule, in a bearing stud " + figure(bay.depth, system) +
                   " deep, no hole over " + figure(limits.hole, system) + " and no notch deeper than " +
                   figure(limits.notch, system);
        }
        const routes::JoistLimits limits = routes::joist_limits(bay.depth);
        return text + "; as a rule, in a sawn joist " + figure(bay.depth, system) + " deep, no hole over " +
               figure(limits.hole, system) + ", 2 in or more from each edge, and no notch deeper than " +
               figure(limits.notch_depth, system) + " or in the middle third of the span";
    }
    return text;
}

std::vector<std::string> cautions(const house::House& house, const FlowingAir& air) {
    std::vector<std::string> list;
    if (adds_a_duct(house)) list.push_back(structure(house));
    std::string plate;
    if (!air.beyond_plate.empty())
        plate = "nameplate: " + air.beyond_plate +
                ". Beyond its plate a heater can overheat, trip or crack: have it measured and set right by "
                "someone licensed";
    for (std::string caution :
         {combustion_air(house.heater, air.draws), plate, damp_return(house), old_materials(house)})
        if (!caution.empty()) list.push_back(std::move(caution));
    list.emplace_back(
        "local codes and licensed practice decide what may be built; this is a calculation, and no "
        "certification "
        "is claimed");
    return list;
}

}  // namespace report
