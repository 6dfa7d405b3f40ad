#include <algorithm>

#include "base/text.h"
#include "plan/light/constants.h"
#include "plan/light/findings_uv.h"
#include "plan/light/lamp_remedy.h"
#include "plan/light/shaded.h"
#include "plan/light/uv_exposure.h"
#include "plan/place/place.h"

namespace loamsheet {
namespace {

constexpr double mol_in_hour = 0.0036;  // of 1 umol a second
constexpr int digits_said = 3;          // of a day's light: what reads the same is no miss

enum class Miss { none, dark, bright };

// The plants that have a place, and how much light a day each wants.
class Lit {
 public:
  Lit(const Build& build, const PlantingPlan& planting) : build_(build), field_(build) {
    for (const PlacedPlant& p : planting.plants) {
      crowns_.push_back(p.placed ? std::optional(p.crown) : std::nullopt);
      feet_.push_back(p.at);
    }
  }

  bool placed(size_t plant) const { return crowns_[plant].has_value(); }

  // Of a class, over the day that it is meant for; mol m-2 d-1.
  Range<double> band(size_t plant) const {
    const Range<double>& ppfd = build_.plants[plant].ppfd;
    const double day = constants::class_day * mol_in_hour;
    return {ppfd.low * day, ppfd.high * day};
  }

  double dli(size_t plant, const LightField& field) const {
    return shaded_light(field, {feet_[plant], plant, crowns_}).dli;
  }

  Miss miss(size_t plant, const LightField& field) const {
    const Range<double> wants = band(plant);
    if (!placed(plant) || wants.high <= 0) return Miss::none;
    const double gets = rounded(dli(plant, field), digits_said);
    if (gets < rounded(wants.low, digits_said)) return Miss::dark;
    return gets > rounded(wants.high, digits_said) ? Miss::bright : Miss::none;
  }

  const LightField& field() const { return field_; }
  size_t count() const { return feet_.size(); }

 private:
  const Build& build_;
  LightField field_;
  std::vector<std::optional<Crown>> crowns_;
  std::vector<Position> feet_;
};

std::vector<LampMend::Kind> kinds_against(Miss miss) {
  using enum LampMend::Kind;
  if (miss == Miss::dark) return {run_longer, hang_lower, stronger};
  return {run_shorter, hang_higher, weaker};
}

// The plants of a build that miss their band one way, the furthest off first.
struct Group {
  Miss miss;
  std::vector<size_t> plants;

  bool has(size_t plant) const {
    return std::find(plants.begin(), plants.end(), plant) != plants.end();
  }
};

struct Missing {
  const Build& build;
  const Lit& lit;
  std::vector<Miss> all;  // by plant

  // By how many times a plant is out of its band.
  double off(size_t plant) const {
    const Range<double> wants = lit.band(plant);
    const double gets = std::max(1e-6, lit.dli(plant, lit.field()));
    return all[plant] == Miss::dark ? wants.low / gets : gets / wants.high;
  }

  Group group(Miss miss) const {
    Group group{miss, {}};
    std::vector<double> far(all.size());
    for (size_t i = 0; i < all.size(); ++i) {
      if (all[i] != miss) continue;
      group.plants.push_back(i), far[i] = off(i);
    }
    std::stable_sort(group.plants.begin(), group.plants.end(),
                     [&](size_t a, size_t b) { return far[a] > far[b]; });
    return group;
  }

  // Under these lamps the group is within its bands, and no other plant leaves its own.
  bool kept(const Group& group, const Lamps& lamps) const {
    const LightField changed = lit.field().under(lamps);
    const auto is_kept = [&](size_t plant) { return lit.miss(plant, changed) == Miss::none; };
    if (!std::all_of(group.plants.begin(), group.plants.end(), is_kept)) return false;
    for (size_t i = 0; i < all.size(); ++i) {
      if (group.has(i)) continue;
      const Miss now = lit.miss(i, changed);
      if (now != Miss::none && now != all[i]) return false;
    }
    return true;
  }

  std::optional<LampMend> mend(const Group& group) const {
    return least_mend(build, {kinds_against(group.miss), [](const Lamp& l) { return l.flux > 0; },
                              [&](const Lamps& lamps) { return kept(group, lamps); }});
  }
};

std::string numbers(const Build& build, Group group) {
  std::sort(group.plants.begin(), group.plants.end());
  std::string said;
  for (const size_t plant : group.plants) {
    said += (said.empty() ? "" : ", ") + std::to_string(build.plants[plant].number);
  }
  return said;
}

// Told by the plant that is furthest off.
Finding told(const Missing& m, const Group& group, const std::optional<LampMend>& mend) {
  const size_t worst = group.plants.front();
  const PlantUse& plant = m.build.plants[worst];
  const bool dark = group.miss == Miss::dark;
  const Range<double> wants = m.lit.band(worst);
  Finding finding{m.off(worst) > 1 + constants::light_slack ? Weight::caution : Weight::note,
                  dark ? "plants-too-dark" : "plants-too-bright",
                  plant.where,
                  {{"plants", numbers(m.build, group)},
                   {"plant", plant.facts.name},
                   {"number", plant.number},
                   {"is", m.lit.dli(worst, m.lit.field())},
                   {"limit", dark ? wants.low : wants.high}}};
  const auto args =
      mend ? mend_args(*mend, m.build.lamps) : no_mend(dark ? "none-dark" : "none-bright");
  finding.args.insert(finding.args.end(), args.begin(), args.end());
  return finding;
}

// As many of them as one change mends, and those that it leaves.
Found missed(const Missing& m, Miss miss) {
  const Group all = m.group(miss);
  for (size_t left = 0; left < all.plants.size(); ++left) {
    const auto first = all.plants.begin(), from = first + static_cast<long>(left);
    const Group mended{miss, {from, all.plants.end()}}, others{miss, {first, from}};
    const auto mend = m.mend(mended);
    if (!mend) continue;
    Found found{told(m, mended, mend)};
    if (left > 0) found.push_back(told(m, others, std::nullopt));
    return found;
  }
  return all.plants.empty() ? Found{} : Found{told(m, all, std::nullopt)};
}

bool shines(const Build& build) {
  return std::any_of(build.lamps.begin(), build.lamps.end(),
                     [](const Lamp& lamp) { return lamp.flux > 0; });
}

}  // namespace

// Nothing can be said of plants that live by the light of a window.
Found lit_findings(const Build& build, const Planted& plan) {
  if (!plan.planting || plan.planting->plants.empty()) return {};
  if (build.lamps.empty()) return {{Weight::caution, "light-not-known", {}, {}}};
  if (!shines(build)) return {};
  const Lit lit(build, *plan.planting);
  Missing missing{build, lit, {}};
  for (size_t i = 0; i < lit.count(); ++i) missing.all.push_back(lit.miss(i, lit.field()));
  Found found = missed(missing, Miss::dark);
  append(found, missed(missing, Miss::bright));
  return found;
}

}  // namespace loamsheet
