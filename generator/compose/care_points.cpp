#include "compose/parts.h"
#include "compose/words.h"
#include "plan/care/care.h"

namespace loamsheet {

std::vector<Words> care_points(const ComposeInput& in, const std::string& list) {
  std::vector<Words> lines;
  for (const CarePoint& point : in.build.rules.points) {
    if (point.under != list || !applies(point.when, in.build)) continue;
    lines.push_back(plain(in.wording.say("care.point." + point.id)));
  }
  return lines;
}

}  // namespace loamsheet
