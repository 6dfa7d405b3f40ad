// material_list: the materials that a spec may name - its own, which stand before those of the
// catalogue, and the catalogue's, read when one is wanted.
#pragma once
#include <map>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"

namespace loamsheet {

class MaterialList {
 public:
  MaterialList(const Catalogue& catalogue, Sink& sink) : catalogue_(catalogue), sink_(sink) {}

  bool has(const std::string& id) const;
  std::vector<std::string> ids() const;
  std::vector<std::string> with_role(const std::string& role);

  // Nothing when there is none of this id, or when its entry cannot be read, which is reported.
  const Material* find(const std::string& id);

  // One of the spec's own. It starts as what the catalogue has under the id, if anything.
  Material& own(const std::string& id);

  // Those that were asked for so far.
  std::vector<Material> used() const;

 private:
  const Catalogue& catalogue_;
  Sink& sink_;
  std::map<std::string, Material> read_;
};

}  // namespace loamsheet
