// What was measured: a time for a bag to fill, an airflow, a pressure or a temperature, by what it says it
// is.
#include "sheet/parts.hpp"

namespace sheet {
namespace {

using Read = decltype(house::SurveyReading::value);

template <class Q>
Read read_as(const Value& value, const Kind<Q>& kind) {
    const auto read = read_quantity(value, kind);
    if (!read) return std::nullopt;
    return Read::value_type{read->value, read->place};
}

Read read_value(const Value& value, house::ReadingKind what) {
    switch (what) {
        case house::ReadingKind::bag:
            return read_as(value, duration);
        case house::ReadingKind::airflow:
            return read_as(value, flow_or_none);
        case house::ReadingKind::static_pressure:
            return read_as(value, pressure_or_suction);
        case house::ReadingKind::temperature_rise:
            return read_as(value, temperature_rise);
        case house::ReadingKind::temperature:
            break;
    }
    return read_as(value, temperature);
}

house::SurveyReading read_reading(TableReader& table) {
    house::SurveyReading reading;
    reading.place = table.place();
    reading.what = table.one_of<house::ReadingKind>("what");
    reading.at = table.text("at", "\"bath register\"");
    const auto value = table.value("value");
    if (value && reading.what) reading.value = read_value(*value, reading.what->value);
    if (const auto bag = table.value("bag")) reading.bag = read_sides(*bag, "26 x 36 in");
    reading.volume = table.quantity("volume", volume);
    table.finish();
    return reading;
}

}  // namespace

void read_readings(TableReader& sheet, house::Survey& survey) {
    const auto readings = sheet.tables("reading", "[[reading]]");
    for (std::size_t i = 0; i < readings.size(); ++i) {
        TableReader reading(*readings[i], owner_by_name("reading", *readings[i], i), sheet.mistakes());
        survey.readings.push_back(read_reading(reading));
    }
}

}  // namespace sheet
