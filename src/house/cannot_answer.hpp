// The one exception of the computing folders: the sheet is well formed, yet the question has no answer.
#pragma once

#include <stdexcept>
#include <string>

#include "house/place.hpp"

namespace house {

class CannotAnswer : public std::runtime_error {
  public:
    CannotAnswer(Place place, const std::string& why) : std::runtime_error(why), place_(place) {}
    Place place() const { return place_; }

  private:
    Place place_;
};

// The question itself has to be put differently: no such outlet, or more than one it could mean.
class AskedWrongly : public CannotAnswer {
  public:
    using CannotAnswer::CannotAnswer;
};

}  // namespace house
