#include "published.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace psychro {
namespace {

std::vector<std::string> split(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream stream(line + ',');
    for (std::string cell; std::getline(stream, cell, ',');) {
        cells.push_back(cell);
    }
    return cells;
}

PublishedRow row_from(const std::vector<std::string>& columns, const std::string& line) {
    const std::vector<std::string> values = split(line);
    if (values.size() != columns.size()) {
        throw std::runtime_error("wrong number of cells in: " + line);
    }
    std::map<std::string, std::string> cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells[columns[i]] = values[i];
    }
    return PublishedRow(std::move(cells));
}

}  // namespace

PublishedRow::PublishedRow(std::map<std::string, std::string> cells) : cells_(std::move(cells)) {}

const std::string& PublishedRow::text(const std::string& column) const { return cells_.at(column); }

double PublishedRow::number(const std::string& column) const { return std::stod(text(column)); }

double PublishedRow::last_digit(const std::string& column) const {
    const std::string& printed = text(column);
    const std::size_t e = printed.find('e');
    const std::string mantissa = printed.substr(0, e);
    const std::size_t point = mantissa.find('.');
    const double decimals =
        point == std::string::npos ? 0.0 : static_cast<double>(mantissa.size() - point - 1);
    const double exponent = e == std::string::npos ? 0.0 : std::stod(printed.substr(e + 1));
    return std::pow(10.0, exponent - decimals);
}

std::string PublishedRow::line() const {
    std::string all;
    for (const auto& [column, value] : cells_) {
        all += column + '=' + value + ' ';
    }
    return all;
}

std::vector<PublishedRow> read_published(const std::string& file) {
    std::ifstream stream(std::string(PSYCHRO_PUBLISHED) + '/' + file);
    if (!stream) {
        throw std::runtime_error("cannot open check values " + file);
    }
    std::vector<std::string> columns;
    std::vector<PublishedRow> rows;
    for (std::string line; std::getline(stream, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        if (columns.empty()) {
            columns = split(line);
        } else {
            rows.push_back(row_from(columns, line));
        }
    }
    return rows;
}

void expect_printed(const PublishedRow& row, const std::string& column, double value) {
    // The printed value itself is not exact in binary: hence a little more than one unit.
    EXPECT_NEAR(value, row.number(column), row.last_digit(column) * (1.0 + 1e-6))
        << column << " in " << row.line();
}

}  // namespace psychro
