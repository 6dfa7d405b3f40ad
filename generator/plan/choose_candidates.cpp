#include "plan/choose_candidates.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "plan/packs.h"
#include "plan/placement_rules.h"
#include "plan/suitable.h"

namespace loamsheet {
namespace {

// Below this a soft rule is not kept well enough for a plant to be picked. From memory.
constexpr double least_kept = 0.5;

// A caution costs more than any role is worth: such a plant only makes up the number.
constexpr long caution_cost = 3'000'000;

std::string text_of(const Known<std::string>& fact) {
  return fact ? fact->value : "";
}

std::string role_of(const Needs& needs) {
  switch (needs.habit) {
    case Habit::moss:
      return "moss";
    case Habit::creeper:
      return "ground";
    case Habit::trailer:
      return "trailer";
    case Habit::climber:
    case Habit::tall:
      return "backdrop";
    case Habit::epiphyte:
      return "mounted";
    case Habit::low:
      break;
  }
  return needs.focal ? "focal" : "middle";
}

int role_number(const std::string& role) {
  const auto& names = role_names();
  return static_cast<int>(std::find(names.begin(), names.end(), role) - names.begin());
}

// What the shelf holds of a species, in packs of so many plants.
std::vector<PackKind> packs_of(const Build& build, const std::string& species, bool& priced) {
  std::vector<PackKind> packs;
  for (const StockedPack& pack : build.stock.value_or(std::vector<StockedPack>{})) {
    if (pack.item != species || pack.unit != "piece" || pack.on_hand <= 0) continue;
    priced = priced && pack.price.has_value();
    packs.push_back({pack.size, pack.price.value_or(Money{}), pack.on_hand});
  }
  return packs;
}

std::optional<long> price_of(int count, const std::vector<PackKind>& packs) {
  const auto cover = cheapest_cover(count, packs);
  if (!cover) return std::nullopt;
  long parts = 0;
  for (size_t i = 0; i < packs.size(); ++i) {
    parts += (*cover)[i] * packs[i].price.v;
  }
  return parts;
}

int already_used(const Build& build, const std::string& species) {
  return static_cast<int>(
      std::count_if(build.plants.begin(), build.plants.end(),
                    [&](const PlantUse& use) { return use.facts.id == species; }));
}

// The price of one more, two more, ... beyond those that the spec names, while the shelf lasts.
std::vector<long> prices(const Build& build, const std::vector<PackKind>& packs,
                         const std::string& species, int count) {
  std::vector<long> prices;
  const int used = already_used(build, species);
  const auto before = price_of(used, packs);
  for (int n = 1; before && n <= count; ++n) {
    const auto parts = price_of(used + n, packs);
    if (!parts) break;
    prices.push_back(*parts - *before);
  }
  return prices;
}

// Why a plant's best place will not do for it to be picked; empty: it will.
std::string lacking(const Needs& needs, const Site& site) {
  if (light_fit(needs, site) < least_kept) return "light";
  if (humidity_fit(needs, site) < least_kept) return "humidity";
  return habit_fit(needs, site) < least_kept ? "habit" : "";
}

const Site* best_site(const Needs& needs, const std::vector<Site>& sites) {
  const Site* best = nullptr;
  long most = -1;
  for (const Site& site : sites) {
    if (!fits(needs, site)) continue;
    if (const long here = score(needs, site); here > most) most = here, best = &site;
  }
  return best;
}

class Sieve {
 public:
  Sieve(const Build& build, const std::vector<Site>& sites, const ToChoose& wish)
      : build_(build), sites_(sites), wish_(wish) {}

  // The reason to pass it over; otherwise the candidate is filled in.
  std::optional<Reason> passes(Candidate& candidate) {
    const PlantKind& kind = *candidate.kind;
    const Verdict said = verdict(build_, kind);
    if (said.worst == Weight::stop) return Reason{"stop", {{"rule", said.rule}}};
    if (said.worst == Weight::caution) candidate.caution = said.rule;
    const Site* site = best_site(candidate.needs, sites_);
    if (!site) return Reason{"no-place", {}};
    if (const auto lack = lacking(candidate.needs, *site); !lack.empty()) return Reason{lack, {}};
    candidate.fit = static_cast<double>(score(candidate.needs, *site)) / 1e6;
    return priced(candidate);
  }

 private:
  std::optional<Reason> priced(Candidate& candidate) {
    if (!build_.stock) {
      candidate.offer.price.assign(static_cast<size_t>(wish_.count), 0);
      return std::nullopt;
    }
    candidate.priced = true;
    const std::string& id = candidate.kind->facts.id;
    const auto packs = packs_of(build_, id, candidate.priced);
    candidate.offer.price = prices(build_, packs, id, wish_.count);
    if (candidate.offer.price.empty()) return Reason{"not-in-stock", {}};
    if (wish_.budget && !candidate.priced) return Reason{"no-price", {}};
    return std::nullopt;
  }

  const Build& build_;
  const std::vector<Site>& sites_;
  const ToChoose& wish_;
};

// Families by number, in the order of their names; a plant of unknown family is of its own.
void number_families(std::vector<Candidate>& all) {
  std::map<std::string, int> numbers;
  const auto name = [](const Candidate& c) {
    const std::string family = text_of(c.kind->facts.family);
    return family.empty() ? '~' + c.kind->facts.id : family;
  };
  for (const Candidate& c : all) numbers[name(c)] = 0;
  int next = 0;
  for (auto& [family, number] : numbers) number = next++;
  for (Candidate& c : all) c.offer.family = numbers[name(c)];
}

}  // namespace

const std::vector<std::string>& role_names() {
  static const std::vector<std::string> names{"backdrop", "focal",   "middle", "ground",
                                              "trailer",  "mounted", "moss"};
  return names;
}

// One plant to look at is enough; ground and background take more. Filling any role is worth more
// than any better fit. From memory.
std::vector<RoleWorth> role_worths(int count) {
  constexpr double share[] = {0.25, 0, 0.3, 0.3, 0.15, 0.25, 0.15};
  std::vector<RoleWorth> worths;
  for (const double part : share) {
    const int enough = std::max(1, static_cast<int>(std::ceil(count * part)));
    worths.push_back({1'000'000, 300'000, enough});
  }
  worths.push_back({0, 0, count});  // the reserve
  return worths;
}

Candidates candidates(const Build& build, const std::vector<Site>& sites, const ToChoose& wish) {
  Candidates found;
  Sieve sieve(build, sites, wish);
  for (const PlantKind& kind : build.offered) {
    Candidate candidate;
    candidate.kind = &kind;
    PlantUse use;
    use.facts = kind.facts, use.ppfd = kind.ppfd;
    candidate.needs = needs_in(build, use);
    candidate.role = role_of(candidate.needs);
    if (auto reason = sieve.passes(candidate)) {
      found.passed_over.push_back({kind.facts.id, kind.facts.name, candidate.role, *reason});
      continue;
    }
    const bool reserve = !candidate.caution.empty();
    candidate.offer.role = reserve ? reserve_role : role_number(candidate.role);
    candidate.offer.worth = std::lround(candidate.fit * 1e6) - (reserve ? caution_cost : 0);
    found.some.push_back(std::move(candidate));
  }
  number_families(found.some);
  const auto rank = [](const Candidate& c) {
    return std::tuple(c.offer.role, c.offer.family, c.kind->facts.id);
  };
  std::sort(found.some.begin(), found.some.end(),
            [&](const Candidate& a, const Candidate& b) { return rank(a) < rank(b); });
  return found;
}

}  // namespace loamsheet
