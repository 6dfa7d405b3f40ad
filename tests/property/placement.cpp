#include "plan/place/search.h"

#include <algorithm>
#include <cmath>

#include "laws.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"
#include "plan/place/soft_rules.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Millimetres drawn_length(int low, int high) {
  return {static_cast<double>(drawn(low, high))};
}

Furnishing drawn_furnishing(const Enclosure& tank) {
  const Box box = extent(tank.footprint);
  const auto x = [&] { return box.left + box.width() * drawn(0, 100) / 100; };
  const auto y = [&] { return box.bottom + box.height() * drawn(0, 100) / 100; };
  const char* kinds[] = {"branch", "ledge", "water-bowl", "hide", "tube"};
  Furnishing thing;
  thing.id = kinds[drawn(0, 4)], thing.kind = thing.id;
  thing.at = {x(), y(), tank.height.v * drawn(30, 90) / 100};
  thing.from = {x(), y(), tank.height.v * drawn(10, 90) / 100};
  thing.to = {x(), y(), tank.height.v * drawn(10, 90) / 100};
  thing.width = drawn_length(50, 300), thing.depth = drawn_length(50, 150);
  thing.diameter = drawn_length(20, 150), thing.pocket = {drawn(1, 30) / 10.0};
  thing.turned = drawn(-180, 180);
  return thing;
}

ToPlace drawn_plant() {
  ToPlace plant;
  plant.needs.habit = static_cast<Habit>(drawn(0, 6));
  plant.needs.mountable = plant.needs.habit == Habit::epiphyte || drawn(0, 1) == 1;
  plant.needs.height.low = drawn_length(0, 300);
  plant.needs.height.high = plant.needs.height.low + drawn_length(0, 300);
  plant.needs.spread = drawn_length(50, 300), plant.needs.root = drawn_length(10, 80);
  plant.needs.ppfd.low = drawn(5, 200), plant.needs.ppfd.high = plant.needs.ppfd.low * 4;
  plant.needs.humidity = Fraction{drawn(20, 90) / 100.0};
  return plant;
}

struct Drawn {
  Build build;
  std::vector<Site> sites;
  std::vector<ToPlace> plants;
};

Drawn drawn_task() {
  Drawn task{drawn_build(), {}, {}};
  for (int i = drawn(0, 4); i > 0; --i) {
    task.build.furnishings.push_back(drawn_furnishing(task.build.enclosure));
  }
  task.sites = bare_sites(task.build, plan_layers(task.build, ground(task.build)));
  for (Site& site : task.sites) {
    site.light.ppfd = 20 + 300 * site.up + 50 * site.across;
    site.humidity = {{0.7 - 0.3 * site.up}, {0.9 - 0.3 * site.up}};
  }
  for (int kind = drawn(1, 6); kind > 0; --kind) {
    task.plants.insert(task.plants.end(), static_cast<size_t>(drawn(1, 3)), drawn_plant());
  }
  if (!task.sites.empty() && drawn(0, 1) == 1) {
    task.plants[0].fixed = drawn(0, static_cast<int>(task.sites.size()) - 1);
  }
  return task;
}

double apart(const Position& a, const Position& b) {
  return std::sqrt(std::pow(a.x - b.x, 2) + std::pow(a.y - b.y, 2) + std::pow(a.z - b.z, 2));
}

// The hard rules once more, from the design's words and not from the code under test.
void check_alone(const Needs& needs, const Site& site) {
  RC_ASSERT(site.kind != SiteKind::mount || needs.mountable);
  RC_ASSERT(site.kind != SiteKind::floor || needs.habit != Habit::epiphyte);
  RC_ASSERT(site.kind == SiteKind::mount || site.root >= needs.root);
  RC_ASSERT(site.headroom >= needs.height.low);
  RC_ASSERT(site.kind != SiteKind::floor || site.wall >= Millimetres{20});
}

void check_pair(const Drawn& task, const Placement& placed, size_t a, size_t b) {
  if (!placed.chosen[a] || !placed.chosen[b]) return;
  if (task.plants[a].fixed && task.plants[b].fixed) return;
  const Needs &n = task.plants[a].needs, &m = task.plants[b].needs;
  const auto creeps = [](const Needs& needs) {
    return needs.habit == Habit::creeper || needs.habit == Habit::moss;
  };
  const double share = creeps(n) || creeps(m) ? 0.7 : 1;
  const Position& at = task.sites[static_cast<size_t>(placed.chosen[a]->site)].at;
  const Position& bt = task.sites[static_cast<size_t>(placed.chosen[b]->site)].at;
  RC_ASSERT(apart(at, bt) >= (n.spread.v + m.spread.v) / 2 * share - 1e-6);
}

void check_ground(const Drawn& task, const Site& site) {
  const Point p{site.at.x, site.at.y};
  RC_ASSERT(contains(ground(task.build).land, p));
  for (const Furnishing& thing : task.build.furnishings) {
    if (thing.kind->holds_water) {
      RC_ASSERT(std::hypot(p.x - thing.at.x, p.y - thing.at.y) >= thing.diameter.v / 2);
    }
  }
}

}  // namespace

TEST_CASE("no hard rule is ever broken, and pinned plants stay") {
  holds("hard rules", [] {
    const Drawn task = drawn_task();
    const Placement placed = place(task.plants, task.sites);
    for (size_t i = 0; i < task.plants.size(); ++i) {
      for (size_t j = 0; j < i; ++j) check_pair(task, placed, i, j);
      if (task.plants[i].fixed) RC_ASSERT(placed.chosen[i]->site == *task.plants[i].fixed);
      if (task.plants[i].fixed || !placed.chosen[i]) continue;
      const Site& site = task.sites[static_cast<size_t>(placed.chosen[i]->site)];
      check_alone(task.plants[i].needs, site);
      if (site.kind == SiteKind::floor) check_ground(task, site);
    }
  });
}

TEST_CASE("each plant scores from 0 to 1, and no placement more than its bound") {
  holds("scores", [] {
    const Drawn task = drawn_task();
    const Placement placed = place(task.plants, task.sites);
    long sum = 0;
    for (const auto& choice : placed.chosen) {
      if (!choice) continue;
      RC_ASSERT(choice->score >= 0 && choice->score <= 1000000);
      sum += choice->score;
    }
    RC_ASSERT(sum == placed.score);
    RC_ASSERT(placed.score <= placed.bound);
  });
}

TEST_CASE("the same plants find the same places") {
  holds("deterministic", [] {
    const Drawn task = drawn_task();
    const Placement once = place(task.plants, task.sites), again = place(task.plants, task.sites);
    for (size_t i = 0; i < task.plants.size(); ++i) {
      RC_ASSERT(once.chosen[i].has_value() == again.chosen[i].has_value());
      if (once.chosen[i]) RC_ASSERT(once.chosen[i]->site == again.chosen[i]->site);
    }
  });
}

TEST_CASE("a small case scores within what trying all places gives, and never far below") {
  holds("two plants, all pairs", [] {
    Drawn task = drawn_task();
    task.plants = {drawn_plant(), drawn_plant()};
    std::vector<Site> few;
    for (size_t i = 0; i < task.sites.size(); i += task.sites.size() / 40 + 1) {
      few.push_back(task.sites[i]);
    }
    long best = 0;
    const Needs &a = task.plants[0].needs, &b = task.plants[1].needs;
    for (const Site& s : few) {
      if (fits(a, s)) best = std::max(best, score(a, s));
      for (const Site& t : few) {
        if (fits(b, t)) best = std::max(best, score(b, t));
        if (fits(a, s) && fits(b, t) && !clash(a, s, b, t)) {
          best = std::max(best, score(a, s) + score(b, t));
        }
      }
    }
    const long found = place(task.plants, few).score;
    RC_ASSERT(found <= best);
    RC_ASSERT(found >= best * 95 / 100);
  });
}

TEST_CASE("one more site never lowers the bound") {
  holds("bound", [] {
    Drawn task = drawn_task();
    RC_PRE(!task.sites.empty());
    std::vector<Site> fewer = task.sites;
    fewer.pop_back();
    for (ToPlace& plant : task.plants) plant.fixed.reset();
    RC_ASSERT(place(task.plants, fewer).bound <= place(task.plants, task.sites).bound);
  });
}

TEST_CASE("a mirrored enclosure scores alike within the gap") {
  holds("mirror", [] {
    Drawn task = drawn_task();
    std::vector<Site> mirrored = task.sites;
    for (Site& site : mirrored) {
      site.at.x = -site.at.x, site.across = 1 - site.across;
    }
    const Position lamp{450, 225, 900}, mirrored_lamp{-450, 225, 900};
    const Placement here = place(task.plants, task.sites, lamp);
    const Placement there = place(task.plants, mirrored, mirrored_lamp);
    const long gap = std::max(here.bound - here.score, there.bound - there.score);
    const long rounding = 4 * static_cast<long>(task.plants.size());
    RC_ASSERT(std::abs(here.score - there.score) <= gap + rounding);
  });
}

TEST_CASE(
    "shade costs no plant more than all it has, and never lifts a score above that in the open") {
  holds("shade", [] {
    const Drawn task = drawn_task();
    const Placement placed = place(task.plants, task.sites, Position{450, 225, 900});
    for (size_t i = 0; i < task.plants.size(); ++i) {
      if (!placed.chosen[i]) continue;
      const Choice& choice = *placed.chosen[i];
      RC_ASSERT(choice.light_left > 0 && choice.light_left <= 1);
      RC_ASSERT(choice.score >= 0);
      RC_ASSERT(choice.score <=
                score(task.plants[i].needs, task.sites[static_cast<size_t>(choice.site)]));
    }
    RC_ASSERT(placed.score <= placed.bound);
  });
}
