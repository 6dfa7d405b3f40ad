#include "kinds/chosen.h"

#include "kinds/fixing.h"
#include "kinds/furnishing.h"
#include "kinds/heater.h"
#include "kinds/lamp.h"
#include "kinds/layer.h"
#include "kinds/opening.h"
#include "kinds/shape.h"
#include "kinds/wall.h"

namespace loamsheet {
namespace {

template <class Row>
ChosenKey chosen(std::string_view path) {
  ChosenKey key{path, {}};
  for (const Row& row : Row::all()) {
    if constexpr (requires { row.keys; }) {
      key.kinds.push_back({row.id, row.keys});
    } else {
      key.kinds.push_back({row.id, ""});
    }
  }
  return key;
}

}  // namespace

std::vector<ChosenKey> chosen_keys() {
  return {chosen<FloorShape>("enclosure.footprint.shape"),
          chosen<WallMaterial>("enclosure.walls.material"),
          chosen<OpeningKind>("enclosure.openings[].kind"),
          chosen<FixingKind>("enclosure.background.fixed_by"),
          chosen<LampKind>("lamps[].kind"),
          chosen<HeaterKind>("heaters[].kind"),
          chosen<DrainageKind>("layers.drainage.kind"),
          chosen<OutletKind>("layers.drainage.outlet"),
          chosen<FurnishingKind>("furnishings[].kind"),
          chosen<FixingKind>("furnishings[].fixed_by")};
}

}  // namespace loamsheet
