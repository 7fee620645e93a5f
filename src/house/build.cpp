#include "house/build.hpp"

#include "house/builders.hpp"

namespace house {

Built build(const Survey& survey, const Defaults& defaults, Stage stage) {
    Ledger ledger(defaults);
    Built built;
    Work work{survey, stage, ledger, built.house};
    build_site(work);
    build_summer(work);
    build_rooms(work);
    build_roof(work);
    build_other_rooms(work);
    build_machine(work);
    build_bays(work);
    build_ducts(work);
    build_spaces(work);
    build_ventilation(work);
    build_outlets(work);
    built.assumptions = std::move(ledger).assumptions();
    built.mistakes = std::move(ledger).mistakes();
    return built;
}

}  // namespace house
