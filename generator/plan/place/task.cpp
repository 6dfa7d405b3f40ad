#include "plan/place/task.h"
#include "plan/place/crowns.h"

#include <algorithm>
#include <cmath>

#include "plan/light/shade.h"
#include "plan/place/soft_rules.h"

namespace loamsheet {

PlacementTask::PlacementTask(const std::vector<ToPlace>& plants, const std::vector<Site>& sites,
                             const std::optional<Position>& lamp)
    : plants_(plants), sites_(sites), lamp_(lamp) {
  // Asked for millions of times.
  for (const ToPlace& a : plants_) {
    for (const ToPlace& b : plants_) {
      const double kept = distance_kept(a.needs, b.needs).v;
      kept_.push_back(kept * kept);
    }
  }
  for (size_t i = 0; i < plants_.size(); ++i) (plants_[i].fixed ? fixed_ : movable_).push_back(i);
  for (size_t i = 0; i < plants_.size(); ++i) {
    const bool same = i > 0 && alike(i - 1, i);
    spots_.push_back(same ? spots_.back() : spots_of(i));
  }
}

bool PlacementTask::alike(size_t a, size_t b) const {
  const ToPlace &p = plants_[a], &q = plants_[b];
  return !p.fixed && !q.fixed && p.on == q.on && p.needs == q.needs;
}

double PlacementTask::kept(size_t a, size_t b) const {
  return std::sqrt(kept_[a * plants_.size() + b]);
}

bool PlacementTask::clash(size_t a, int site_a, size_t b, int site_b) const {
  const Position &p = site(site_a).at, &q = site(site_b).at;
  const double x = p.x - q.x, y = p.y - q.y, z = p.z - q.z;
  return x * x + y * y + z * z < kept_[a * plants_.size() + b];
}

Crown PlacementTask::crown(size_t plant, int at) const {
  return crown_of(plants_[plant].needs, site(at));
}

double PlacementTask::left(size_t a, int site_a, size_t b, int site_b) const {
  return lamp_ ? light_left(crown(a, site_a), crown(b, site_b), *lamp_) : 1;
}

long PlacementTask::loss(const Shaded& plant, const Crown& other) const {
  const double share = lamp_ ? light_left(plant.crown, other, *lamp_) : 1;
  if (share >= 1) return 0;
  const Needs& needs = plants_[plant.plant].needs;
  const double ppfd = site(plant.site).light.ppfd;
  const double open = light_fit(needs, ppfd), dim = light_fit(needs, ppfd * share);
  return dim >= open ? 0 : std::lround(needs.soft.light * (open - dim) * 1e6);
}

long PlacementTask::loss(size_t a, int site_a, size_t b, int site_b) const {
  return loss({a, site_a, crown(a, site_a)}, crown(b, site_b));
}

long PlacementTask::cost(const Shaded& a, const Shaded& b) const {
  const long here = may_shade(b.crown, a.crown) ? loss(a, b.crown) : 0;
  return here + (may_shade(a.crown, b.crown) ? loss(b, a.crown) : 0);
}

long PlacementTask::cost(size_t a, int site_a, size_t b, int site_b) const {
  return loss(a, site_a, b, site_b) + loss(b, site_b, a, site_a);
}

long PlacementTask::solo(size_t plant, int at) const {
  return score(plants_[plant].needs, site(at));
}

// Obeys the hard rules alone and beside what is fixed.
std::optional<SiteWorth> PlacementTask::spot(size_t plant, int at) const {
  const ToPlace& wanted = plants_[plant];
  const bool there = wanted.on.empty() || wanted.on == site(at).on;
  if (!there || !fits(wanted.needs, site(at))) return std::nullopt;
  SiteWorth spot{at, 0};
  for (const size_t other : fixed_) {
    const int held = *plants_[other].fixed;
    if (clash(plant, at, other, held)) return std::nullopt;
    spot.worth -= cost(plant, at, other, held);
  }
  spot.worth += solo(plant, at);
  return spot;
}

SiteWorths PlacementTask::spots_of(size_t plant) const {
  if (const auto& fixed = plants_[plant].fixed) return {{*fixed, solo(plant, *fixed)}};
  SiteWorths all;
  for (size_t s = 0; s < sites_.size(); ++s) {
    if (const auto found = spot(plant, static_cast<int>(s))) all.push_back(*found);
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const SiteWorth& a, const SiteWorth& b) { return a.worth > b.worth; });
  return all;
}

}  // namespace loamsheet
