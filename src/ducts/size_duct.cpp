#include "ducts/size_duct.hpp"

#include "ducts/friction.hpp"

namespace ducts {

house::Round size_duct(units::Airflow flow, const SizeLimits& limits, const loads::Air& air, Stock stock) {
    for (const house::Round& pipe : stock_round_pipes(stock)) {
        const Section section = section_of(pipe);
        if (flow / section.area <= limits.velocity && friction(section, flow, air) <= limits.rate)
            return pipe;
    }
    return stock_round_pipes(stock).back();
}

}  // namespace ducts
