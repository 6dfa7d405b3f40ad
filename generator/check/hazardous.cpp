// The materials of a build that may harm an animal.
#include "check/checking.h"

namespace loamsheet {
namespace {

struct Used {
  std::string material, use;
  Span where;
};

void take(Checking& c, const Used& used) {
  const Material* material = c.materials.find(used.material);
  if (!material) return;
  for (const Hazard& hazard : material->hazards) {
    c.build.hazardous.push_back({used.material, used.use, hazard, used.where});
  }
}

// The material that a leaf names.
void take_named(Checking& c, const Node& at, std::string_view path, const std::string& use) {
  const Node* leaf = at.find(path);
  const auto id = at.text(path);
  if (leaf && id) take(c, {*id, use, leaf->where});
}

}  // namespace

void check_hazardous(Checking& c) {
  take_named(c, c.root, "enclosure.background.material", "background");
  take_named(c, c.root, "layers.drainage.material", "drainage");
  take_named(c, c.root, "layers.separator.material", "separator");
  take_named(c, c.root, "layers.litter.material", "litter");
  take_named(c, c.root, "layers.moss.material", "moss");
  take_named(c, c.root, "water_area.dam.material", "water");
  for (const SubstratePart& part : c.build.layers.substrate.parts) {
    take(c, {part.bulk.material, "substrate", place_of(c.root, "layers.substrate.mix")});
  }
  const Node* amendments = c.root.find("amendments");
  if (!amendments) return;
  for (const Node& n : amendments->items) take_named(c, n, "material", "amendment");
}

}  // namespace loamsheet
