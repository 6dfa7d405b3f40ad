#include "plan/choose/choose.h"

#include <algorithm>
#include <map>
#include <set>

#include "plan/choose/candidates.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"
#include "plan/fill/scenario.h"
#include "plan/light/light_field.h"
#include "plan/light/shade.h"
#include "plan/place/search.h"
#include "plan/place/sites.h"

namespace loamsheet {
namespace {

std::vector<Site> lit_sites(const Build& build, const LayersPlan& layers) {
  std::vector<Site> sites = bare_sites(build, layers);
  light_up(sites, build, {air_plan(build), LightField(build)});
  return sites;
}

std::vector<Pickable> pickables_of(const std::vector<Candidate>& some) {
  std::vector<Pickable> offers;
  for (const Candidate& candidate : some) offers.push_back(candidate.offer);
  return offers;
}

// One choice of the spec: picks, looks whether all find a place, and picks again without those that
// found none.
class Choosing {
 public:
  Choosing(const Build& build, const LayersPlan& layers, const ToChoose& wanted)
      : build_(build),
        wanted_(wanted),
        sites_(lit_sites(build, layers)),
        lamp_(lamp_middle(build)),
        found_(candidates(build, sites_, wanted)) {
    for (const PlantUse& use : build.plants) add_named(layers, use);
  }

  std::vector<int> taken() {
    const auto roles = role_worths(build_.choosing, wanted_.count);
    while (true) {
      auto taken = best_choice(pickables_of(found_.some), roles, {wanted_.count, wanted_.budget});
      if (!cut_to_places(taken)) return taken;
    }
  }

  const Candidates& found() const { return found_; }

 private:
  void add_named(const LayersPlan& layers, const PlantUse& use) {
    ToPlace plant{needs_in(build_, use), use.on, std::nullopt};
    if (use.pinned) {
      plant.fixed = static_cast<int>(sites_.size());
      sites_.push_back(pinned_site(build_, layers, use));
    }
    named_.push_back(std::move(plant));
  }

  size_t placed_alone() const {
    const Placement placed = place(named_, sites_, lamp_);
    return static_cast<size_t>(std::count_if(placed.chosen.begin(), placed.chosen.end(),
                                             [](const auto& c) { return c.has_value(); }));
  }

  // Offers no more of a species than found a place; false when all did.
  bool cut_to_places(const std::vector<int>& taken) {
    std::vector<ToPlace> plants = named_;
    std::vector<size_t> of;
    for (size_t i = 0; i < taken.size(); ++i) {
      plants.insert(plants.end(), static_cast<size_t>(taken[i]),
                    {found_.some[i].needs, "", std::nullopt});
      of.insert(of.end(), static_cast<size_t>(taken[i]), i);
    }
    const Placement placed = place(plants, sites_, lamp_);
    std::vector<size_t> room(taken.size());
    for (size_t i = 0; i < of.size(); ++i) room[of[i]] += placed.chosen[named_.size() + i] ? 1 : 0;
    bool cut = false;
    for (size_t i = 0; i < taken.size(); ++i) {
      if (room[i] == static_cast<size_t>(taken[i])) continue;
      found_.some[i].offer.price.resize(room[i]);
      cut = true;
    }
    return cut || make_way(taken, placed);
  }

  // Plants that the spec names come first: one of the widest picked plants goes when a named one
  // has lost its place to them.
  bool make_way(const std::vector<int>& taken, const Placement& placed) {
    const auto with = static_cast<size_t>(
        std::count_if(placed.chosen.begin(), placed.chosen.begin() + std::ptrdiff_t(named_.size()),
                      [](const auto& c) { return c.has_value(); }));
    if (with >= placed_alone()) return false;
    std::optional<size_t> widest;
    for (size_t i = 0; i < taken.size(); ++i) {
      if (taken[i] == 0) continue;
      const auto spread = found_.some[i].needs.spread;
      if (!widest || spread > found_.some[*widest].needs.spread) widest = i;
    }
    if (!widest) return false;
    found_.some[*widest].offer.price.resize(static_cast<size_t>(taken[*widest] - 1));
    return true;
  }

  const Build& build_;
  const ToChoose& wanted_;
  std::vector<Site> sites_;
  std::optional<Position> lamp_;
  std::vector<ToPlace> named_;
  Candidates found_;
};

PlantUse picked_use(const Candidate& candidate, const Span& where) {
  PlantUse use;
  use.facts = candidate.kind->facts, use.ppfd = candidate.kind->ppfd;
  use.where = where;
  use.chosen = true;
  return use;
}

Reason why(const Candidate& candidate, int count) {
  return {candidate.caution.empty() ? candidate.role : "reserve",
          {{"fit", Fraction{candidate.fit}}, {"count", count}, {"rule", candidate.caution}}};
}

// What a candidate lacked that was not picked.
Reason beaten(const Candidate& candidate, const ToChoose& wanted) {
  if (!candidate.caution.empty()) return {"caution", {{"rule", candidate.caution}}};
  const bool dear =
      wanted.budget && !candidate.offer.price.empty() && candidate.offer.price[0] > *wanted.budget;
  if (dear) return {"too-dear", {}};
  if (candidate.offer.price.empty()) return {"no-room", {}};
  return {"beaten", {{"fit", Fraction{candidate.fit}}}};
}

struct Taking {
  const std::vector<Candidate>& some;
  const std::vector<int>& taken;
  const ToChoose& wanted;
};

void add_picked(const Taking& all, Selection& selection, std::vector<PlantUse>& plants) {
  bool priced = true;
  Money cost;
  for (size_t i = 0; i < all.some.size(); ++i) {
    const Candidate& candidate = all.some[i];
    if (all.taken[i] == 0) {
      selection.passed_over.push_back({candidate.kind->facts.id, candidate.kind->facts.name,
                                       candidate.role, beaten(candidate, all.wanted)});
      continue;
    }
    Money before;
    for (int n = 0; n < all.taken[i]; ++n) {
      const Money now = candidate.offer.price[static_cast<size_t>(n)];
      const auto price = candidate.priced ? std::optional(now - before) : std::nullopt;
      selection.picked.push_back({0,
                                  candidate.kind->facts.id,
                                  candidate.kind->facts.name,
                                  candidate.role,
                                  price,
                                  {why(candidate, all.taken[i])}});
      plants.push_back(picked_use(candidate, all.wanted.where));
      before = now;
    }
    cost += before, priced = priced && candidate.priced;
  }
  if (priced) selection.cost = cost;
}

std::vector<std::string> roles_without(const std::vector<PickedPlant>& picked) {
  std::set<std::string> filled;
  for (const PickedPlant& plant : picked) filled.insert(plant.role);
  std::vector<std::string> empty;
  for (const std::string& role : role_names()) {
    if (!filled.contains(role)) empty.push_back(role);
  }
  return empty;
}

Selection choose(Build& build, const LayersPlan& layers, const ToChoose& wanted, size_t at) {
  Selection selection;
  selection.wanted = wanted.count, selection.budget = wanted.budget;
  selection.where = wanted.where;
  Choosing choosing(build, layers, wanted);
  const std::vector<int> taken = choosing.taken();
  selection.passed_over = choosing.found().passed_over;
  std::vector<PlantUse> plants;
  add_picked({choosing.found().some, taken, wanted}, selection, plants);
  std::stable_sort(selection.passed_over.begin(), selection.passed_over.end(),
                   [](const PassedOver& a, const PassedOver& b) { return a.species < b.species; });
  selection.empty_roles = roles_without(selection.picked);
  for (size_t i = 0; i < selection.picked.size(); ++i) {
    selection.picked[i].number = static_cast<int>(at + i) + 1;
  }
  build.plants.insert(build.plants.begin() + static_cast<std::ptrdiff_t>(at), plants.begin(),
                      plants.end());
  return selection;
}

}  // namespace

std::vector<Selection> choose_plants(Build& build) {
  std::vector<Selection> selections;
  if (build.to_choose.empty()) return selections;
  const LayersPlan layers = plan_layers(build, ground(build));
  size_t more = 0;  // picked so far
  for (const ToChoose& wanted : build.to_choose) {
    selections.push_back(choose(build, layers, wanted, wanted.after + more));
    more += selections.back().picked.size();
  }
  build.to_choose.clear();
  for (size_t i = 0; i < build.plants.size(); ++i) build.plants[i].number = static_cast<int>(i) + 1;
  return selections;
}

}  // namespace loamsheet
