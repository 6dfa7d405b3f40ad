#include "plan/fit/fit.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "plan/fit/suitable.h"

namespace loamsheet {
namespace {

constexpr size_t most_stand_ins = 3;

bool against_plant(const Finding& finding) {
  return finding.rule.starts_with("plant-") && finding.weight != Weight::note;
}

template <class T>
double differs(const Known<T>& a, const Known<T>& b) {
  return a && b && a->value == b->value ? 0 : 1;
}

double apart(double a, double b) {
  return a > 0 && b > 0 ? std::abs(std::log2(a / b)) : 1;
}

double size_apart(const Known<Range<Millimetres>>& a, const Known<Range<Millimetres>>& b) {
  if (!a || !b) return 1;
  return apart(a->value.low.v + a->value.high.v, b->value.low.v + b->value.high.v);
}

// Each doubling of size counts one; then light and damp. From memory.
double distance(const PlantKind& a, const PlantKind& b) {
  const Plant &p = a.facts, &q = b.facts;
  const double mounted = 2 * differs(p.mountable, q.mountable);
  const double size = size_apart(p.height, q.height) + size_apart(p.spread, q.spread);
  const double light = apart(a.ppfd.low + a.ppfd.high, b.ppfd.low + b.ppfd.high);
  const double air =
      p.humidity && q.humidity ? std::abs(p.humidity->value.v - q.humidity->value.v) * 5 : 0.5;
  return mounted + size + light + air + differs(p.moisture, q.moisture);
}

bool in_stock(const Build& build, const std::string& species) {
  if (!build.stock) return false;
  return std::any_of(build.stock->begin(), build.stock->end(), [&](const StockedPack& pack) {
    return pack.item == species && pack.on_hand > 0;
  });
}

bool held(const Build& build, const std::string& species) {
  return std::any_of(build.plants.begin(), build.plants.end(),
                     [&](const PlantUse& use) { return use.facts.id == species; });
}

// What may go in at all, whatever it stands in for.
std::vector<const PlantKind*> safe_plants(const Build& build) {
  std::vector<const PlantKind*> safe;
  for (const PlantKind& kind : build.offered) {
    if (held(build, kind.facts.id)) continue;
    const auto worst = verdict(build, kind).worst;
    if (!worst || *worst == Weight::note) safe.push_back(&kind);
  }
  return safe;
}

std::vector<StandIn> nearest(const Build& build, std::vector<const PlantKind*> safe,
                             const PlantKind& failed) {
  // Habit decides what a plant does in the planting.
  const auto rank = [&](const PlantKind* kind) {
    const std::string& id = kind->facts.id;
    return std::tuple(differs(failed.facts.habit, kind->facts.habit), !in_stock(build, id),
                      std::lround(distance(failed, *kind) * 1e6), id);
  };
  const size_t count = std::min(most_stand_ins, safe.size());
  std::partial_sort(safe.begin(), safe.begin() + static_cast<std::ptrdiff_t>(count), safe.end(),
                    [&](const auto* a, const auto* b) { return rank(a) < rank(b); });
  std::vector<StandIn> stand_ins;
  for (size_t i = 0; i < count; ++i) {
    const Plant& plant = safe[i]->facts;
    stand_ins.push_back({plant.id, plant.name, in_stock(build, plant.id)});
  }
  return stand_ins;
}

const PlantUse* plant_at(const Build& build, const Span& where) {
  const auto found = std::find_if(build.plants.begin(), build.plants.end(),
                                  [&](const PlantUse& use) { return use.where == where; });
  return found == build.plants.end() ? nullptr : &*found;
}

}  // namespace

bool wants_stand_ins(const Found& found) {
  return std::any_of(found.begin(), found.end(), against_plant);
}

std::set<std::string> habits_that_fail(const Build& build, const Found& found) {
  std::set<std::string> habits;
  for (const Finding& finding : found) {
    const PlantUse* failed = against_plant(finding) ? plant_at(build, finding.where) : nullptr;
    if (!failed) continue;
    if (!failed->facts.habit) return {};
    habits.insert(failed->facts.habit->value);
  }
  return habits;
}

bool add_stand_ins(const Build& build, Found& found) {
  const auto safe = safe_plants(build);
  bool enough = true;
  for (Finding& finding : found) {
    const PlantUse* failed = against_plant(finding) ? plant_at(build, finding.where) : nullptr;
    if (!failed) continue;
    finding.stand_ins = nearest(build, safe, {failed->facts, failed->ppfd});
    enough = enough && finding.stand_ins.size() == most_stand_ins;
  }
  return enough;
}

}  // namespace loamsheet
