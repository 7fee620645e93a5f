#include "report/expression.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <string_view>

namespace report_test {
namespace {

std::string without_commas(const std::string& text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool inside =
            i > 0 && i + 1 < text.size() && std::isdigit(text[i - 1]) && std::isdigit(text[i + 1]);
        if (text[i] != ',' || !inside) plain += text[i];
    }
    return plain;
}

class Reader {
  public:
    explicit Reader(std::string_view text) : left_(text) {}

    std::optional<double> all() {
        const auto value = sum();
        skip_spaces();
        return left_.empty() ? value : std::nullopt;
    }

  private:
    using Value = std::optional<double>;

    void skip_spaces() {
        while (!left_.empty() && left_.front() == ' ') left_.remove_prefix(1);
    }
    bool take(std::string_view token) {
        skip_spaces();
        if (!left_.starts_with(token)) return false;
        left_.remove_prefix(token.size());
        return true;
    }
    Value sum() {
        Value value = product();
        while (value) {
            if (take("+"))
                value = combined(value, product(), [](double a, double b) { return a + b; });
            else if (take("-"))
                value = combined(value, product(), [](double a, double b) { return a - b; });
            else
                break;
        }
        return value;
    }
    Value product() {
        Value value = power();
        while (value) {
            if (take("x"))
                value = combined(value, power(), [](double a, double b) { return a * b; });
            else if (take("/"))
                value = combined(value, power(), [](double a, double b) { return a / b; });
            else
                break;
        }
        return value;
    }
    Value power() {
        if (take("-")) {
            const Value value = power();
            return value ? Value(-*value) : value;
        }
        const Value base = single();
        if (!base || !take("^")) return base;
        return combined(base, single(), [](double a, double b) { return std::pow(a, b); });
    }
    Value single() {
        if (take("(")) return closed(sum());
        if (take("sqrt(")) return function(std::sqrt);
        if (take("exp(")) return function(std::exp);
        if (take("log10(")) return function(std::log10);
        if (take("ln(")) return function(std::log);
        double value = 0;
        const auto [end, error] =
            std::from_chars(left_.data(), left_.data() + left_.size(), value, std::chars_format::fixed);
        if (error != std::errc()) return std::nullopt;
        left_.remove_prefix(static_cast<std::size_t>(end - left_.data()));
        return value;
    }
    Value closed(Value value) { return take(")") ? value : std::nullopt; }
    Value function(double (*f)(double)) {
        const Value inside = closed(sum());
        return inside ? Value(f(*inside)) : inside;
    }
    template <class Operation>
    static Value combined(Value a, Value b, Operation operation) {
        return a && b ? Value(operation(*a, *b)) : std::nullopt;
    }

    std::string_view left_;
};

// The text just before an equals sign that may belong to a sum.
std::string sum_before(const std::string& text, std::size_t equals) {
    std::size_t start = equals;
    while (start > 0 &&
           std::string_view("0123456789,. x/()+-").find(text[start - 1]) != std::string_view::npos)
        --start;
    std::string sum = text.substr(start, equals - start);
    sum.erase(0, std::min(sum.find_first_of("0123456789("), sum.size()));
    return sum;
}

}  // namespace

std::optional<double> worked_out(const std::string& text) { return Reader(without_commas(text)).all(); }

std::vector<PrintedSum> printed_sums(const std::string& text) {
    std::vector<PrintedSum> sums;
    for (std::size_t at = text.find(" = "); at != std::string::npos; at = text.find(" = ", at + 1)) {
        const std::string sum = sum_before(text, at);
        const auto by_hand = worked_out(sum);
        if (!by_hand || sum.find_first_of("x/+-") == std::string::npos) continue;
        std::string result = text.substr(at + 3, text.find_first_not_of("0123456789,.-", at + 3) - at - 3);
        while (!result.empty() && (result.back() == '.' || result.back() == ',')) result.pop_back();
        const std::size_t point = result.find('.');
        const double digits = point == std::string::npos ? 0 : static_cast<double>(result.size() - point - 1);
        sums.push_back({sum + " = " + result, *by_hand, worked_out(result).value_or(NAN),
                        0.5 * std::pow(10.0, -digits) * (1 + 1e-9)});
    }
    return sums;
}

}  // namespace report_test
