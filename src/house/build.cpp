#include "house/build.hpp"

#include "house/builders.hpp"

namespace house {

namespace {

// For a question about one run what the whole system takes from the defaults is no guess of the answer; what
// is wrong with it is a mistake all the same.
void build_by_extent(const Work& work, const Defaults& defaults, Extent extent) {
    Ledger aside(defaults);
    const bool asked = extent == Extent::whole_system;
    Work of_system{work.survey, work.stage, asked ? work.ledger : aside, work.house};
    build_whole_system(of_system);
    if (asked) return;
    work.house.whole_system.reset();
    for (Mistake& mistake : std::move(aside).mistakes()) work.ledger.blame(std::move(mistake));
}

}  // namespace

Built build(const Survey& survey, const Defaults& defaults, Stage stage, Extent extent) {
    Ledger ledger(defaults);
    Built built;
    built.extent = extent;
    Work work{survey, stage, ledger, built.house};
    build_site(work);
    build_summer(work);
    build_rooms(work);
    build_roof(work);
    build_other_rooms(work);
    build_machine(work);
    build_bays(work);
    build_plans(work);
    build_ducts(work);
    build_spaces(work);
    build_ventilation(work);
    build_outlets(work);
    build_readings(work);
    build_by_extent(work, defaults, extent);
    built.assumptions = std::move(ledger).assumptions();
    built.mistakes = std::move(ledger).mistakes();
    return built;
}

}  // namespace house
