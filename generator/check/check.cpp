#include "check/check.h"

#include "check/checking.h"
#include "check/defaults.h"

namespace loamsheet {

Outcome<Build> check(const Spec& spec, const Catalogue& catalogue,
                     const std::optional<Stock>& stock) {
  Sink sink;
  Build build;
  Node root = spec.root;
  fill_defaults(root);
  build.spec_file = spec.file;
  build.hazards = catalogue.hazards;
  build.soft = catalogue.soft;
  build.assumed = assumed_values(root);
  build.unknowns = unknown_inputs(root);
  Checking c{root, catalogue, {catalogue, sink}, {}, build, sink};
  check_identity(c);
  check_own_materials(c);
  check_enclosure(c);
  check_openings(c);
  check_layers(c);
  check_furnishings(c);
  check_terraces(c);
  check_climate(c);
  check_measured(c);
  if (stock) check_stock(c, *stock);
  check_quote(c);
  check_life(c);
  check_hazardous(c);
  check_record(c);
  check_sources(c);
  build.materials = c.materials.used();
  if (auto rules = taken(Outcome<TaskRules>(catalogue.rules.get()), sink)) {
    build.rules = std::move(*rules);
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(build), sink.take()};
}

}  // namespace loamsheet
