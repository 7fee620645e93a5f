// How the ducts leak, and how the blower yields to more pressure.
#include "house/whole_system.hpp"

#include "house/builders.hpp"

namespace house {
namespace {

// A system that loses more than this was never found to heat a house (estimate: the worst measured lose 35
// %).
constexpr double most_leakage = 0.6;

double share(Work& work, const Maybe<double>& written, DefaultId usual, const char* side) {
    if (written && written->value > most_leakage)
        work.ledger.blame(written->place,
                          std::string("no house is heated by ") + side + " ducts that lose so much",
                          "write the share of the blower's airflow, up to 60 %");
    return work.ledger.or_default(written, usual, std::string("the ") + side + " ducts");
}

DuctTest duct_test(Work& work, const SurveyDuctLeakage& written) {
    const units::Pressure at = work.ledger.required(
        written.at, written.place, "the pressure of the test of the ducts", "at = \"25 Pa\"");
    return {written.measured->value, at};
}

DuctLeakage build_leakage(Work& work) {
    const SurveyDuctLeakage silent{};
    const SurveyDuctLeakage& written = work.survey.duct_leakage ? *work.survey.duct_leakage : silent;
    const bool shares = written.supply || written.return_side;
    if ((written.sealing ? 1 : 0) + (shares ? 1 : 0) + (written.measured ? 1 : 0) > 1)
        work.ledger.blame(written.place, "how the ducts leak is written in more than one way",
                          "keep one of: sealing, supply with return, measured with at");
    if (written.at && !written.measured)
        work.ledger.blame(written.at->place, "a pressure without what leaked at it",
                          "write what the test measured too: measured = \"160 cfm\"");
    if (written.measured) return duct_test(work, written);
    if (written.sealing) return written.sealing->value;
    return LeakageShares{share(work, written.supply, DefaultId::supply_leakage, "supply"),
                         share(work, written.return_side, DefaultId::return_leakage, "return")};
}

void build_blower_yield(Work& work, WholeSystem& system) {
    const SurveyBlower silent{};
    const SurveyBlower& written = work.survey.blower ? *work.survey.blower : silent;
    if (work.house.blower.kind == BlowerKind::constant_airflow) {
        system.constant_airflow_limit =
            work.ledger.or_default(written.up_to, DefaultId::constant_airflow_limit, "the blower");
        return;
    }
    if (written.up_to)
        work.ledger.blame(written.up_to->place,
                          "only a motor that holds its airflow does so up to a pressure",
                          "write kind = \"constant airflow\", or leave up_to out");
    if (work.house.blower.points.size() < 2)
        system.blower_fall =
            work.ledger.take(DefaultId::blower_fall, "the blower, without its maker's table");
}

}  // namespace

void build_whole_system(Work& work) {
    WholeSystem system;
    system.leakage = build_leakage(work);
    build_blower_yield(work, system);
    system.ways_out = build_ways_out(work);
    work.house.whole_system = std::move(system);
}

}  // namespace house
