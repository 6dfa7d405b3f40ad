#include <algorithm>

#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {
namespace {

bool has(const Found& found, const std::string& rule, Weight weight) {
  return std::any_of(found.begin(), found.end(), [&](const Finding& finding) {
    return finding.rule == rule && finding.weight == weight;
  });
}

void check_taken_on(const Build& build, const Found& found, Found& all) {
  for (const Acceptance& accepted : build.accepted) {
    const auto about = [&](Weight weight, const char* rule) {
      all.push_back({weight, rule, accepted.where, {{"rule", accepted.rule}}});
    };
    if (has(found, accepted.rule, Weight::stop)) {
      about(Weight::stop, "stop-not-accepted");
    } else if (!has(found, accepted.rule, Weight::caution)) {
      about(Weight::note, "nothing-to-accept");
    }
  }
}

bool first_revision(const Identity& id) {
  return id.revision == "A" || id.revision == "1" || id.revision == "0";
}

void check_replaced(const Build& build, Found& all) {
  const int plants = static_cast<int>(build.plants.size());
  for (const Replacement& replaced : build.replaced) {
    if (replaced.plant <= plants) continue;
    all.push_back({Weight::caution,
                   "replaced-not-there",
                   replaced.where,
                   {{"number", replaced.plant}, {"count", plants}}});
  }
  const auto& id = build.identity;
  if (build.replaced.empty()) return;
  if (first_revision(id)) {
    all.push_back({Weight::caution,
                   "replaced-in-first-revision",
                   id.revision_at,
                   {{"revision", id.revision}}});
  }
  const bool chosen = std::any_of(build.plants.begin(), build.plants.end(),
                                  [](const PlantUse& use) { return use.chosen; });
  if (chosen) all.push_back({Weight::caution, "replaced-and-chosen", build.replaced[0].where, {}});
}

void check_selections(const Build& build, const std::vector<Selection>& selections, Found& all) {
  for (const Selection& selection : selections) {
    const int count = static_cast<int>(selection.picked.size());
    if (count < selection.wanted) {
      all.push_back({Weight::caution,
                     "chosen-too-few",
                     selection.where,
                     {{"count", count}, {"wanted", selection.wanted}}});
    }
    if (selection.budget && !build.stock) {
      all.push_back({Weight::caution, "chosen-without-prices", selection.where, {}});
    }
  }
}

}  // namespace

Found record_findings(const Build& build, const std::vector<Selection>& selections,
                      const Found& found) {
  Found all;
  check_taken_on(build, found, all);
  check_replaced(build, all);
  check_selections(build, selections, all);
  return all;
}

}  // namespace loamsheet
