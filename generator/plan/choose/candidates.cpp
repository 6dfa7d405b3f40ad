#include "plan/choose/candidates.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "plan/choose/cheapest_cover.h"
#include "plan/fit/at_home.h"
#include "plan/fit/body.h"
#include "plan/fit/suitable.h"
#include "plan/place/soft_rules.h"

namespace loamsheet {
namespace {

// As it is written in templates/choosing.yaml.
std::string habit_name(const Needs& needs) {
  switch (needs.habit) {
    case Habit::moss:
      return "moss";
    case Habit::creeper:
      return "creeper";
    case Habit::trailer:
      return "trailer";
    case Habit::climber:
      return "climber";
    case Habit::tall:
      return "tall";
    case Habit::epiphyte:
      return "epiphyte";
    case Habit::low:
      break;
  }
  return needs.focal ? "focal" : "low";
}

// What the catalogue calls it, or else what its habit plays.
std::string role_of(const Build& build, const Candidate& candidate) {
  const Plant& plant = candidate.kind->facts;
  if (plant.role) return plant.role->value;
  const std::string habit = habit_name(candidate.needs);
  for (const auto& [name, rule] : build.choosing.roles) {
    if (std::find(rule.habits.begin(), rule.habits.end(), habit) != rule.habits.end()) return name;
  }
  return "middle";
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

// Rounded as the lines of a quote are: one for each kind of pack, to so many decimals.
std::optional<Money> price_of(int count, const std::vector<PackKind>& packs, int digits) {
  const auto cover = cheapest_cover(count, packs);
  if (!cover) return std::nullopt;
  Money sum;
  for (size_t i = 0; i < packs.size(); ++i) {
    sum += to_coins(packs[i].price * (*cover)[i], digits);
  }
  return sum;
}

int already_used(const Build& build, const std::string& species) {
  return static_cast<int>(
      std::count_if(build.plants.begin(), build.plants.end(),
                    [&](const PlantUse& use) { return use.facts.id == species; }));
}

// The price of one more, two more, ... beyond those that the spec names, while the shelf lasts.
std::vector<Money> prices(const Build& build, const std::vector<PackKind>& packs,
                          const std::string& species, int count) {
  std::vector<Money> prices;
  const int used = already_used(build, species), digits = build.quote.value_or(QuoteTerms{}).digits;
  const auto before = price_of(used, packs, digits);
  for (int n = 1; before && n <= count; ++n) {
    const auto price = price_of(used + n, packs, digits);
    if (!price) break;
    prices.push_back(*price - *before);
  }
  return prices;
}

// Why a plant's best place will not do for it to be picked; empty: it will.
std::string lacking(const Needs& needs, const Site& site, double least) {
  if (light_fit(needs, site) < least) return "light";
  if (humidity_fit(needs, site) < least) return "humidity";
  return habit_fit(needs, site) < least ? "habit" : "";
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
    const auto lack = lacking(candidate.needs, *site, build_.choosing.least_fit);
    if (!lack.empty()) return Reason{lack, {}};
    candidate.fit = static_cast<double>(score(candidate.needs, *site)) / 1e6;
    candidate.at_home = at_home(build_, kind.facts);
    return priced(candidate);
  }

 private:
  std::optional<Reason> priced(Candidate& candidate) {
    if (!build_.stock) {
      candidate.offer.price.assign(static_cast<size_t>(wish_.count), Money{});
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

// Kinds of leaf by number, in the order of their names; an unknown one is of its own.
void number_leaves(std::vector<Candidate>& all) {
  std::map<std::string, int> numbers;
  const auto name = [](const Candidate& c) {
    const Plant& plant = c.kind->facts;
    return plant.leaf ? plant.leaf->value : '~' + plant.id;
  };
  for (const Candidate& c : all) numbers[name(c)] = 0;
  int next = 0;
  for (auto& [leaf, number] : numbers) number = next++;
  for (Candidate& c : all) c.offer.leaf = numbers[name(c)];
}

long millionths(double worth) {
  return std::lround(worth * 1e6);
}

// By how many grades, of two that are plenty, it bears more than the animals that are roughest.
double sturdy(const Build& build, const Plant& plant) {
  if (!plant.robustness) return 0;
  int wear = 1;
  for (const KeptAnimal& animal : build.kept) {
    if (const auto grown = wear_grown(animal)) wear = std::max(wear, grown->value);
  }
  return std::clamp((plant.robustness->value - wear) / 2.0, 0.0, 1.0);
}

// A caution costs more than any role is worth: such a plant only makes up the number.
void weigh(const Build& build, Candidate& candidate) {
  const ChoosingRules& rules = build.choosing;
  const bool reserve = !candidate.caution.empty();
  const double worth = rules.place * candidate.fit + rules.home * candidate.at_home +
                       rules.sturdy * sturdy(build, candidate.kind->facts);
  candidate.offer.role = reserve ? reserve_role : role_number(candidate.role);
  candidate.offer.worth = millionths(worth - (reserve ? rules.caution : 0));
}

}  // namespace

const std::vector<std::string>& role_names() {
  static const std::vector<std::string> names{"backdrop", "focal",   "middle", "ground",
                                              "trailer",  "mounted", "moss"};
  return names;
}

std::vector<RoleWorth> role_worths(const ChoosingRules& rules, int count) {
  std::vector<RoleWorth> worths;
  for (const std::string& name : role_names()) {
    const auto found = rules.roles.find(name);
    const RoleRule rule = found == rules.roles.end() ? RoleRule{} : found->second;
    const int enough = std::max(1, static_cast<int>(std::ceil(count * rule.share)));
    worths.push_back(
        {millionths(rule.filled), millionths(rule.crowded), enough, millionths(rules.same_leaf)});
  }
  worths.push_back({0, 0, count, millionths(rules.same_leaf)});  // the reserve
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
    candidate.role = role_of(build, candidate);
    if (auto reason = sieve.passes(candidate)) {
      found.passed_over.push_back({kind.facts.id, kind.facts.name, candidate.role, *reason});
      continue;
    }
    weigh(build, candidate);
    found.some.push_back(std::move(candidate));
  }
  number_leaves(found.some);
  const auto rank = [](const Candidate& c) {
    return std::tuple(c.offer.role, c.offer.leaf, c.kind->facts.id);
  };
  std::sort(found.some.begin(), found.some.end(),
            [&](const Candidate& a, const Candidate& b) { return rank(a) < rank(b); });
  return found;
}

}  // namespace loamsheet
