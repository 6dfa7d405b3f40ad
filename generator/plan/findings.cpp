#include "plan/findings.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace loamsheet {
namespace {

bool comes_before(const Finding& a, const Finding& b, const std::string& spec_file) {
  const auto rank = [&](const Finding& f) {
    const int place = f.where.line == 0 ? 2 : f.where.file == spec_file ? 0 : 1;
    return std::tuple(f.weight, place, f.where.file, f.where.line, f.where.column);
  };
  return rank(a) < rank(b);
}

// Cautions that are taken on stay among the findings, with who took them on.
void take_on(const Build& build, Found& all) {
  for (const Acceptance& accepted : build.accepted) {
    for (Finding& finding : all) {
      if (finding.rule != accepted.rule || finding.weight != Weight::caution) continue;
      finding.taken_on = TakenOn{accepted.by, accepted.reason};
    }
  }
}

// What two entries of one species give twice in the same words is told once, at the first.
void drop_repeats(Found& all) {
  Found told;
  for (Finding& finding : all) {
    const bool again = std::any_of(told.begin(), told.end(), [&](const Finding& f) {
      return f.rule == finding.rule && f.weight == finding.weight && f.args == finding.args;
    });
    if (!again) told.push_back(std::move(finding));
  }
  all = std::move(told);
}

}  // namespace

void append(Found& all, Found more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

Found input_findings(const Build& build) {
  Found found;
  for (const UnknownInput& unknown : build.unknowns) {
    found.push_back({Weight::caution,
                     "value-unknown",
                     unknown.where,
                     {{"input", unknown.key}, {"range", unknown.shown}, {"from", unknown.from}}});
  }
  return found;
}

Found all_findings(const Build& build, const Plan& plan) {
  Found all;
  append(all, layer_findings(build, plan));
  append(all, drainage_findings(build, plan));
  append(all, tank_findings(build, plan));
  append(all, water_findings(build, plan));
  append(all, stock_findings(build, plan));
  append(all, goods_findings(build, plan));
  append(all, lift_findings(build, plan));
  append(all, schedule_findings(build, plan));
  append(all, life_findings(build, plan));
  append(all, light_findings(build, plan));
  append(all, climate_findings(build, plan));
  append(all, input_findings(build));
  append(all, record_findings(build, plan, all));
  drop_repeats(all);
  take_on(build, all);
  std::stable_sort(all.begin(), all.end(), [&](const Finding& a, const Finding& b) {
    return comes_before(a, b, build.spec_file);
  });
  return all;
}

}  // namespace loamsheet
