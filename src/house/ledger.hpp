// What building a House costs in guesses and mistakes: the ledger takes defaults, noting each, and collects
// mistakes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "house/build.hpp"

namespace house {

class Ledger {
  public:
    explicit Ledger(const Defaults& defaults) : defaults_(defaults) {}

    // The default's value, put on the list for what it is used for.
    double take(DefaultId id, std::string used_for);
    // What the sheet says, else the default.
    template <class Q>
    Q or_default(const Maybe<Q>& given, DefaultId id, std::string used_for) {
        return given ? given->value : Q(take(id, std::move(used_for)));
    }

    void blame(Place place, std::string text, std::string remedy = {});
    void blame(Mistake mistake) { mistakes_.push_back(std::move(mistake)); }
    // The value, or the mistake that it is missing and a plain default-constructed one.
    template <class T>
    T required(const Maybe<T>& given, Place where, std::string_view what, std::string_view example) {
        if (given) return given->value;
        blame_missing(where, what, example);
        return T{};
    }
    void blame_missing(Place where, std::string_view what, std::string_view example);
    bool clean() const { return mistakes_.empty(); }

    std::vector<Assumption> assumptions() &&;
    std::vector<Mistake> mistakes() &&;

  private:
    const Defaults& defaults_;
    std::vector<Assumption> assumptions_;
    std::vector<Mistake> mistakes_;
};

}  // namespace house
