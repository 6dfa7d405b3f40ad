#include "plan/care/readiness.h"

#include <algorithm>

#include "plan/care/care.h"
#include "plan/care/constants.h"

namespace loamsheet {
namespace {

// What sets the days, before anything comes on top.
struct Base {
  int days = constants::days_empty;
  std::string rule;  // empty: the days that every tank stands empty
};

// The rule that asks for the most days; of equals the first.
Base longest(const std::vector<const ReadinessRule*>& rules) {
  Base base;
  for (const ReadinessRule* rule : rules) {
    if (rule->days > base.days) base = {rule->days, rule->id};
  }
  return base;
}

std::vector<const ReadinessRule*> applying(const Build& build) {
  std::vector<const ReadinessRule*> rules;
  for (const ReadinessRule& rule : build.rules.readiness) {
    if (applies(rule.when, build)) rules.push_back(&rule);
  }
  return rules;
}

// An animal that came late may still be in quarantine on the day.
void wait_for_quarantine(const Build& build, const ReadinessRule& rule, Ready& ready) {
  Date free = ready.earliest;
  for (const KeptAnimal& animal : build.kept) {
    if (animal.acquired) free = std::max(free, plus_days(*animal.acquired, rule.after_acquired));
  }
  if (free == ready.earliest) return;
  ready.earliest = free;
  ready.because.insert(ready.because.begin(), rule.id);
}

// A new plant roots from its own day; what was planted before keeps its clock.
void wait_for_replacements(const Build& build, const std::vector<const ReadinessRule*>& rules,
                           Ready& ready) {
  Date rooted = ready.earliest;
  for (const PlantUse& use : build.plants) {
    if (!use.replaced_on) continue;
    int days = constants::days_empty;
    const bool slow = use.facts.growth && use.facts.growth->value == "slow";
    for (const ReadinessRule* rule : rules) days += slow ? rule->more : 0;
    rooted = std::max(rooted, plus_days(*use.replaced_on, days));
  }
  if (rooted == ready.earliest) return;
  ready.earliest = rooted;
  ready.because.insert(ready.because.begin(), "after-replanting");
}

// The day that the clock starts from, before any slip: slip() moves the day that it ends on.
Date clock_start(const Identity& id, bool moved) {
  if (!moved) return id.plant_on;
  const bool slipped = id.done_until && *id.moves_on > *id.done_until;
  return slipped ? plus_days(*id.moves_on, -id.slip) : *id.moves_on;
}

void slip(const Identity& id, Ready& ready) {
  if (id.slip == 0 || !id.done_until) return;  // without a replacement planting itself moved
  ready.earliest = plus_days(ready.earliest, id.slip);
  ready.because.push_back("slipped");
}

}  // namespace

Ready plan_ready(const Build& build) {
  const bool moved = condition_holds("moved", build);
  const Date from = clock_start(build.identity, moved);
  const auto rules = applying(build);
  const Base base = longest(rules);
  Ready ready;
  if (!base.rule.empty()) ready.because.push_back(base.rule);
  if (moved) ready.because.push_back("after-move");
  if (ready.because.empty()) ready.because.push_back("after-planting");
  int days = base.days;
  for (const ReadinessRule* rule : rules) {
    if (rule->more == 0) continue;
    days += rule->more;
    ready.because.push_back(rule->id);
  }
  ready.earliest = plus_days(from, days);
  wait_for_replacements(build, rules, ready);
  slip(build.identity, ready);
  for (const ReadinessRule* rule : rules) {
    if (rule->after_acquired > 0) wait_for_quarantine(build, *rule, ready);
  }
  ready.days = days_between(build.identity.plant_on, ready.earliest);
  return ready;
}

}  // namespace loamsheet
