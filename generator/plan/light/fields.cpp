#include "base/fields.h"
#include "check/build.h"
#include "plan/light/light.h"

namespace loamsheet {

void fields(const UvPlan& uv, const Build& build, FieldSink& to) {
  to.add("animal", build.kept[uv.animal].facts.id);
  to.add("zone", std::vector{uv.zone.low, uv.zone.high});
  to.add("basking_index", uv.basking);
  to.add_all("basking_at", unit::place_mm, {uv.back.x, uv.back.y, uv.back.z});
  to.add("most", uv.most);
  to.ends("gradient", unit::none, uv.gradient);
  to.ends("mean", unit::none, uv.mean);
}

}  // namespace loamsheet
