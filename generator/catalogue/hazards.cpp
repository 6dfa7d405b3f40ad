#include "catalogue/hazards.h"

#include "catalogue/fact_line.h"
#include "catalogue/file.h"
#include "catalogue/keys.h"

namespace loamsheet {
namespace {

Gravity gravity(const Node& row, std::string_view key) {
  static const std::map<std::string, Gravity> names{
      {"note", Gravity::note}, {"caution", Gravity::caution}, {"stop", Gravity::stop}};
  const auto found = names.find(row.text(key).value_or(""));
  return found == names.end() ? Gravity::none : found->second;
}

HazardRule rule_of(const Node& row, const Shelf& sources, Sink& sink) {
  HazardRule rule;
  if (const Node* from = row.find("from")) rule.origin = origin_of(*from, sources, sink);
  rule.explains = row.text("explains").value_or("");
  for (const char* browses : {"no", "incidentally", "yes"}) {
    rule.eaten[browses] = gravity(row, browses);
  }
  rule.touch = gravity(row, "touch");
  rule.light = gravity(row, "light");
  rule.skin = gravity(row, "skin");
  rule.sap = gravity(row, "sap");
  rule.by_touch = row.yes("by_touch").value_or(false);
  return rule;
}

}  // namespace

HazardRules read_hazards(World& world, const Shelf& sources, Sink& sink) {
  HazardRules rules;
  const auto root = data_tree(world, "templates/hazards.yaml", hazard_keys(), sink);
  const Node* section = root ? root->find("hazards") : nullptr;
  if (!section) return rules;
  for (const auto& [id, row] : section->entries) rules[id] = rule_of(row, sources, sink);
  return rules;
}

}  // namespace loamsheet
