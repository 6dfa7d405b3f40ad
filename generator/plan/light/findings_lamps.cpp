#include "check/build.h"
#include "plan/light/light.h"
#include "plan/light/uv_exposure.h"

namespace loamsheet {

Found lamp_findings(const Build& build) {
  Found all;
  for (const Lamp& lamp : build.lamps) {
    if (is_uv(lamp) && lamp.uv_index.empty()) {
      all.push_back({Weight::caution, "lamp-without-table", lamp.where, {{"lamp", lamp.id}}});
    } else if (!is_uv(lamp) && lamp.flux <= 0) {
      all.push_back({Weight::caution, "lamp-without-flux", lamp.where, {{"lamp", lamp.id}}});
    }
  }
  return all;
}

}  // namespace loamsheet
