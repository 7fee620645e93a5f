// The outlet a question is about: the one named, or the only new supply outlet of the planned house.
#pragma once

#include <string>

#include "house/house.hpp"

namespace questions {

// Throws house::AskedWrongly where there is none, more than one, or no such name.
const house::Outlet& asked_outlet(const house::House& house, const std::string& name);

}  // namespace questions
