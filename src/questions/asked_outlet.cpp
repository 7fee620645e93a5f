#include "questions/asked_outlet.hpp"

#include <vector>

#include "house/cannot_answer.hpp"
#include "units/nearest_word.hpp"

namespace questions {
namespace {

const house::Outlet& outlet_named(const house::House& house, const std::string& name) {
    std::vector<std::string_view> names;
    for (const house::Outlet& outlet : house.outlets) {
        if (!house.is_supply(outlet)) continue;
        if (outlet.name == name) return outlet;
        names.push_back(outlet.name);
    }
    const std::string nearest = units::nearest_word(name, names);
    throw house::AskedWrongly({}, "no supply outlet of the planned house is called '" + name + "'" +
                                      (nearest.empty() ? "" : "; did you mean '" + nearest + "'?"));
}

const house::Outlet& only_new_outlet(const house::House& house) {
    const house::Outlet* only = nullptr;
    for (const house::Outlet& outlet : house.outlets) {
        if (outlet.state != house::State::added || !house.is_supply(outlet)) continue;
        if (only)
            throw house::AskedWrongly(outlet.place, "two new outlets, '" + only->name + "' and '" +
                                                        outlet.name + "': say which with --outlet NAME");
        only = &outlet;
    }
    if (!only)
        throw house::AskedWrongly(
            {}, "the sheet plans no new supply outlet: give a [[duct]] and its [[outlet]] state = \"new\"");
    return *only;
}

}  // namespace

const house::Outlet& asked_outlet(const house::House& house, const std::string& name) {
    return name.empty() ? only_new_outlet(house) : outlet_named(house, name);
}

}  // namespace questions
