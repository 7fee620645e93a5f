#include "report/closing_sum.hpp"

namespace report {

std::string closing_sum(const std::function<Worked(int more)>& sum,
                        const std::function<std::string(double value)>& result) {
    constexpr int most = 5;
    for (int more = 0;; ++more) {
        const Worked worked = sum(more);
        const std::string exact = result(worked.exact);
        if (result(worked.by_hand) == exact || more == most) return worked.text + " = " + exact;
    }
}

}  // namespace report
