// Rows of the check-value tables in tests/published. Lines starting with '#' are their headers.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace psychro {

class PublishedRow {
  public:
    explicit PublishedRow(std::map<std::string, std::string> cells);

    const std::string& text(const std::string& column) const;
    double number(const std::string& column) const;

    // One unit in the last digit the source printed: 0.01 for "3.20", 1e-7 for "7.93e-05".
    double last_digit(const std::string& column) const;

    // The whole row, for failure messages.
    std::string line() const;

  private:
    std::map<std::string, std::string> cells_;
};

std::vector<PublishedRow> read_published(const std::string& file);

// The value agrees with the column to one unit in its last printed digit.
void expect_printed(const PublishedRow& row, const std::string& column, double value);

}  // namespace psychro
