#include "plan/fill/bulk_named.h"

namespace loamsheet {

const Bulk* bulk_named(const Layers& layers, const std::string& material) {
  if (layers.drainage.bulk.material == material) return &layers.drainage.bulk;
  if (layers.litter && layers.litter->bulk.material == material) return &layers.litter->bulk;
  for (const SubstratePart& part : layers.substrate.parts) {
    if (part.bulk.material == material) return &part.bulk;
  }
  return nullptr;
}

}  // namespace loamsheet
