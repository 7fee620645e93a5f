// Heater, blower and the devices the air must pass, as the sheet or the nameplate gives them.
#include <algorithm>
#include <tuple>

#include "house/builders.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

using units::unit::fahrenheit_degree;
using units::unit::inch_wc;

// Nameplate rise where the plate was not read: usual for the kind (common practice).
std::pair<units::TemperatureDifference, units::TemperatureDifference> usual_rise(HeaterKind kind) {
    if (kind == HeaterKind::heat_pump) return {20 * fahrenheit_degree, 35 * fahrenheit_degree};
    return {40 * fahrenheit_degree, 70 * fahrenheit_degree};
}

// What the plate says: its output, or its input times the efficiency.
units::Power plate_output(Work& work, const SurveyHeater& written, HeaterKind kind) {
    const Given<units::Power>& stated = written.output ? *written.output : *written.input;
    Ledger& ledger = work.ledger;
    if (stated.value.si() <= 0) ledger.blame(stated.place, "a heater gives more than nothing");
    if (!written.output && kind == HeaterKind::heat_pump)
        ledger.blame(stated.place, "the input of a heat pump does not tell what it gives",
                     "write cold_output = ..., what it gives at the design night's temperature, from the "
                     "maker's table; or output = ..., from its plate");
    const bool all_becomes_heat = written.output || (kind == HeaterKind::electric && !written.efficiency);
    if (all_becomes_heat) return stated.value;
    if (written.efficiency && written.efficiency->value <= 0)
        ledger.blame(written.efficiency->place, "an efficiency is above zero");
    return ledger.or_default(written.efficiency, DefaultId::heater_efficiency, "the heater") * stated.value;
}

void build_capacity(Work& work, const SurveyHeater& written, Heater& heater) {
    Ledger& ledger = work.ledger;
    if (written.cold_output && heater.kind != HeaterKind::heat_pump)
        ledger.blame(written.cold_output->place, "only a heat pump gives less in the cold",
                     "write output = ..., or kind = \"heat pump\"");
    if (written.cold_output) {
        heater.capacity = written.cold_output->value;
        return;
    }
    if (!written.output && !written.input) {
        heater.capacity = ledger.take(DefaultId::heater_on_time, "a heater of unknown output");
        return;
    }
    heater.capacity = plate_output(work, written, heater.kind);
    const bool burns = heater.kind == HeaterKind::furnace || heater.kind == HeaterKind::unknown;
    const bool adjusted = written.adjusted_for_elevation && written.adjusted_for_elevation->value;
    if (burns && !adjusted && work.house.site.elevation > 2000 * units::unit::foot)
        heater.output_lost_per_metre = ledger.take(DefaultId::output_lost_per_metre, "the heater");
    if (heater.kind == HeaterKind::heat_pump && work.house.site.winter_outdoor < heat_pump_rating)
        heater.output_lost_per_kelvin = ledger.take(DefaultId::output_lost_per_kelvin,
                                                    "the heat pump, whose plate tells its output at 47 F");
}

// Ducts that all run where it is heated lose nothing that is lost.
bool all_ducts_run_in_heated_rooms(const Survey& survey) {
    const auto in_heated_rooms = [](const SurveyDuct& duct) {
        return duct.runs_in && duct.runs_in->value == Space::heated_rooms;
    };
    return !survey.ducts.empty() && std::all_of(survey.ducts.begin(), survey.ducts.end(), in_heated_rooms);
}

double duct_loss(Work& work, const SurveyHeater& written) {
    if (!written.duct_loss && all_ducts_run_in_heated_rooms(work.survey)) return 0;
    return work.ledger.or_default(written.duct_loss, DefaultId::duct_loss, "the whole duct system");
}

void build_heater(Work& work) {
    Heater& heater = work.house.heater;
    const SurveyHeater silent{};
    const SurveyHeater& written = work.survey.heater ? *work.survey.heater : silent;
    heater.kind = written.kind ? written.kind->value : HeaterKind::unknown;
    build_capacity(work, written, heater);
    std::tie(heater.least_rise, heater.most_rise) =
        written.rise ? written.rise->value : usual_rise(heater.kind);
    if (written.rise && (heater.least_rise.si() <= 0 || heater.most_rise < heater.least_rise))
        work.ledger.blame(written.rise->place, "the temperature rise is written the wrong way round",
                          "write rise = [\"40 F\", \"70 F\"]: least, then most");
    if (written.max_static) heater.max_static = written.max_static->value;
    if (written.max_static && heater.max_static.si() <= 0)
        work.ledger.blame(written.max_static->place, "a nameplate static pressure is above zero",
                          "as \"0.50 in.wc\"");
    heater.duct_loss = duct_loss(work, written);
    if (written.shares_space_with) heater.shares_space_with = written.shares_space_with->value;
}

void build_points(Work& work, const SurveyBlower& written, Blower& blower) {
    for (const auto& point : written.points) {
        blower.points.push_back(point.value);
        if (point.value.airflow.si() <= 0 || point.value.external_static.si() < 0)
            work.ledger.blame(
                point.place,
                "a blower point needs an airflow above zero and a static pressure of zero or more");
    }
    std::stable_sort(
        blower.points.begin(), blower.points.end(),
        [](const BlowerPoint& a, const BlowerPoint& b) { return a.external_static < b.external_static; });
    for (std::size_t i = 1; i < blower.points.size(); ++i) {
        const bool same = blower.points[i].external_static == blower.points[i - 1].external_static;
        if (same || blower.points[i].airflow > blower.points[i - 1].airflow)
            return work.ledger.blame(
                written.points.front().place, "the blower's airflow rises with the pressure",
                "copy pairs of static pressure and airflow of one speed: more pressure, less air");
    }
}

// The heater's temperature rise, where it was read; a silly one is blamed by build_readings.
std::optional<units::TemperatureDifference> rise_read(const Survey& survey) {
    for (const SurveyReading& reading : survey.readings) {
        if (!reading.what || reading.what->value != ReadingKind::temperature_rise || !reading.value) continue;
        const auto* rise = std::get_if<units::TemperatureDifference>(&reading.value->value);
        if (rise && rise->si() > 0) return *rise;
    }
    return std::nullopt;
}

void build_blower(Work& work) {
    Blower& blower = work.house.blower;
    const Heater& heater = work.house.heater;
    const SurveyBlower silent{};
    const SurveyBlower& written = work.survey.blower ? *work.survey.blower : silent;
    blower.kind = written.kind ? written.kind->value : BlowerKind::falling;
    build_points(work, written, blower);
    for (const auto& device : written.includes)
        if (is_of_zones(device.value))
            work.ledger.blame(device.place, "no maker's table contains a " + std::string(word(device.value)),
                              "describe it as a [[device]]");
    const units::Pressure usual_plate = 0.50 * inch_wc;  // common practice
    const bool plate = heater.max_static.si() > 0;
    const bool needs_static = blower.points.empty() || !written.measured;
    blower.static_measured = written.external_static.has_value();
    if (blower.static_measured)
        blower.external_static = written.external_static->value;
    else if (needs_static)
        blower.external_static = work.ledger.take(DefaultId::external_static,
                                                  plate ? "the blower, nameplate as read"
                                                        : "the blower, nameplate not read: 0.50 in.wc") *
                                 (plate ? heater.max_static : usual_plate);
    if (written.external_static && blower.external_static.si() <= 0)
        work.ledger.blame(written.external_static->place, "a blower that runs makes some static pressure",
                          "measure before and after the heater and its blower: static = \"0.55 in.wc\"");
    if (written.measured) {
        blower.known_by = written.measured->value;
        if (written.measured->value.si() <= 0)
            work.ledger.blame(written.measured->place, "a blower moves more than no air");
    } else if (const auto rise = rise_read(work.survey); rise && !blower.static_measured) {
        blower.known_by = *rise;
    } else if (!blower.points.empty()) {
        blower.known_by = blower.external_static;
    } else {
        const bool read = work.survey.heater && work.survey.heater->rise;
        const double place =
            work.ledger.take(DefaultId::rise_position, read ? "the airflow, from the nameplate's rise"
                                                            : "the airflow, nameplate's rise not read");
        blower.known_by = heater.least_rise + place * (heater.most_rise - heater.least_rise);
    }
}

bool included(const Work& work, DeviceKind kind) {
    if (!work.survey.blower) return false;
    for (const auto& device : work.survey.blower->includes)
        if (device.value == kind) return true;
    return false;
}

bool described(const Work& work, DeviceKind kind) {
    for (const auto& device : work.survey.devices)
        if (device.kind && device.kind->value == kind) return true;
    return false;
}

// It is there, and loses what the sheet says, if it says so.
void add_zone_device(Work& work, const SurveyDevice& written, DeviceKind kind, const std::string& name) {
    work.house.zone_devices.push_back({kind, name, written.place});
    if (kind == DeviceKind::bypass && written.drop)
        work.ledger.blame(written.drop->place, "the air of a bypass goes round the ducts",
                          "leave its drop out");
}

void build_device(Work& work, const SurveyDevice& written) {
    Ledger& ledger = work.ledger;
    const DeviceKind kind = written.kind ? written.kind->value : DeviceKind::other;
    const std::string name = written.name ? written.name->value : std::string(word(kind));
    if (is_of_zones(kind)) add_zone_device(work, written, kind, name);
    if (is_of_zones(kind) && !written.drop) return;
    // The maker's figures hold it already: counted once.
    const bool counted = kind != DeviceKind::other && included(work, kind);
    Device device;
    device.kind = kind;
    device.name = name;
    if (written.drop)
        device.drop = written.drop->value;
    else if (kind == DeviceKind::other)
        ledger.blame_missing(written.place, "the pressure lost in " + device.name, "drop = \"0.10 in.wc\"");
    else if (!counted)
        device.drop = units::Pressure(ledger.take(
            kind == DeviceKind::filter ? DefaultId::filter_drop : DefaultId::coil_drop, device.name));
    if (written.at) device.at = written.at->value;
    if (written.drop && device.drop.si() <= 0)
        ledger.blame(written.drop->place, "a device loses some pressure", "leave it out if it loses none");
    if (!counted) work.house.devices.push_back(device);
}

void build_devices(Work& work) {
    for (const SurveyDevice& device : work.survey.devices) build_device(work, device);
    const auto add_usual = [&](DeviceKind kind, DefaultId id) {
        if (included(work, kind) || described(work, kind)) return;
        const std::string name(word(kind));
        work.house.devices.push_back({kind, name, units::Pressure(work.ledger.take(id, "the " + name)), {}});
    };
    add_usual(DeviceKind::filter, DefaultId::filter_drop);
    if (work.house.cooling) add_usual(DeviceKind::coil, DefaultId::coil_drop);
}

}  // namespace

void build_machine(Work& work) {
    work.house.cooling = work.survey.cooling && work.survey.cooling->value == CoolingKind::coil;
    build_heater(work);
    build_blower(work);
    build_devices(work);
}

}  // namespace house
