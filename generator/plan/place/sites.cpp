#include "plan/place/sites.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "plan/fill/fill.h"
#include "plan/fill/ground.h"
#include "plan/light/light_field.h"
#include "plan/light/vectors.h"
#include "plan/place/constants.h"

namespace loamsheet {
namespace {

// What every site is measured against; worked out once.
struct Surroundings {
  const Build& build;
  Profile profile;
  Region land;
  std::vector<Point> edge;  // of the land, as points
  Box box;                  // of the footprint
  double back_wall = 0;     // y of the back wall or the front of the background
};

Surroundings surroundings(const Build& build, const LayersPlan& layers) {
  Surroundings s{build, layers.profile, ground(build).land, {}, {}, 0};
  s.edge = outline(s.land, 1);
  s.box = extent(build.enclosure.footprint);
  s.back_wall = s.box.top;
  if (build.enclosure.background) s.back_wall -= build.enclosure.background->thickness.v;
  return s;
}

double ground_at(const Surroundings& s, double y) {
  return (s.profile.drainage_top + substrate_depth(s.build, y)).v;
}

double to_edge(const std::vector<Point>& edge, Point p) {
  double nearest = 1e300;
  for (size_t i = 0; i < edge.size(); ++i) {
    const Point next = edge[(i + 1) % edge.size()];
    nearest = std::min(nearest, distance(flat(p), flat(edge[i]), flat(next)));
  }
  return nearest;
}

// A board over the place caps what grows below it.
double ceiling_over(const Build& build, const Position& at) {
  double ceiling = build.enclosure.height.v;
  for (const Furnishing& thing : build.furnishings) {
    const bool board = thing.kind->form == FurnishingKind::Form::board;
    const bool over = std::abs(at.x - thing.at.x) <= thing.width.v / 2 &&
                      std::abs(at.y - thing.at.y) <= thing.depth.v / 2 && thing.at.z > at.z;
    if (board && over) ceiling = std::min(ceiling, thing.at.z);
  }
  return ceiling;
}

bool before_basking(const Build& build, const Position& at) {
  return std::any_of(build.furnishings.begin(), build.furnishings.end(), [&](const Furnishing& f) {
    const double half = std::max({f.width.v, f.diameter.v, constants::unsized_thing.v}) / 2;
    return f.kind->basked_on && at.y < f.at.y && std::abs(at.x - f.at.x) < half;
  });
}

Site site_at(const Surroundings& s, SiteKind kind, const Position& at, const std::string& on) {
  const double ground = ground_at(s, at.y), height = s.build.enclosure.height.v;
  Site site;
  site.kind = kind, site.at = at, site.on = on;
  site.headroom = {std::max(0.0, ceiling_over(s.build, at) - at.z)};
  site.drop = {std::max(0.0, at.z - ground)};
  site.support = {
      std::max(0.0, std::min({at.x - s.box.left, s.box.right - at.x, s.back_wall - at.y}))};
  site.across = s.box.width() > 0 ? (at.x - s.box.left) / s.box.width() : 0;
  site.back = s.box.height() > 0 ? (at.y - s.box.bottom) / s.box.height() : 0;
  site.before_basking = before_basking(s.build, at);
  site.up = height > ground ? site.drop.v / (height - ground) : 0;
  return site;
}

Site floor_site(const Surroundings& s, Point p) {
  Site site = site_at(s, SiteKind::floor, {p.x, p.y, ground_at(s, p.y)}, "");
  site.root = substrate_depth(s.build, p.y);
  site.wall = {contains(s.land, p) ? to_edge(s.edge, p) : 0};
  return site;
}

// Wide enough that the sites stay few, whatever the tank's size.
double step_over(double area, double least, double most_sites) {
  return std::max(least, std::sqrt(area / most_sites));
}

void add_floor(const Surroundings& s, std::vector<Site>& sites) {
  const double step = step_over(area(s.land).v * 1e6, constants::floor_step.v, 2500);
  for (double y = s.box.bottom + step / 2; y < s.box.top; y += step) {
    for (double x = s.box.left + step / 2; x < s.box.right; x += step) {
      if (contains(s.land, {x, y}) && !kept_free(s.build, {x, y})) {
        sites.push_back(floor_site(s, {x, y}));
      }
    }
  }
}

// Along the middle of each thing that has a pocket.
void add_pockets(const Surroundings& s, std::vector<Site>& sites) {
  for (const Furnishing& ledge : s.build.furnishings) {
    const double floor = ledge.width.v * ledge.depth.v;
    if (!ledge.kind->offers_pocket || ledge.pocket.v <= 0 || floor <= 0) continue;
    const int count = std::max(1, static_cast<int>(ledge.width.v / constants::pocket_step.v));
    for (int i = 0; i < std::min(count, 50); ++i) {
      const double x = ledge.at.x + ledge.width.v * ((i + 0.5) / count - 0.5);
      Site site = site_at(s, SiteKind::pocket, {x, ledge.at.y, ledge.at.z}, ledge.id);
      site.root = {ledge.pocket.v * 1e6 / floor};
      sites.push_back(site);
    }
  }
}

void add_branch(const Surroundings& s, const Furnishing& branch, std::vector<Site>& sites) {
  const Position &a = branch.from, &b = branch.to;
  const double length = std::hypot(b.x - a.x, b.y - a.y, b.z - a.z);
  const int count = std::min(200, static_cast<int>(length / constants::mount_step.v));
  for (int i = 0; i < count; ++i) {
    Position at = between(a, b, (i + 0.5) / count);
    at.z += branch.diameter.v / 2;
    const bool buried = at.z <= ground_at(s, at.y);
    if (!buried && at.z < s.build.enclosure.height.v) {
      sites.push_back(site_at(s, SiteKind::mount, at, branch.id));
    }
  }
}

void add_background(const Surroundings& s, std::vector<Site>& sites) {
  const double y = s.back_wall, height = s.build.enclosure.height.v;
  const double step = step_over(s.box.width() * height, constants::mount_step.v, 800);
  for (double z = ground_at(s, y) + step; z < height - step / 2; z += step) {
    for (double x = s.box.left + step / 2; x < s.box.right; x += step) {
      if (!contains(s.build.enclosure.footprint, {x, y})) continue;
      sites.push_back(site_at(s, SiteKind::mount, {x, y, z}, "background"));
    }
  }
}

void add_raised(const Surroundings& s, std::vector<Site>& sites) {
  add_pockets(s, sites);
  for (const Furnishing& thing : s.build.furnishings) {
    if (thing.kind->offers_mounts) add_branch(s, thing, sites);
  }
  if (s.build.enclosure.background) add_background(s, sites);
}

double apart(const Site& site, const Position& pin, bool level) {
  return std::hypot(site.at.x - pin.x, site.at.y - pin.y, level ? 0 : site.at.z - pin.z);
}

}  // namespace

std::vector<Site> bare_sites(const Build& build, const LayersPlan& layers) {
  const Surroundings s = surroundings(build, layers);
  std::vector<Site> sites;
  add_floor(s, sites);
  add_raised(s, sites);
  return sites;
}

Site pinned_site(const Build& build, const LayersPlan& layers, const PlantUse& plant) {
  const Surroundings s = surroundings(build, layers);
  const bool level = !plant.pinned_height;
  const Position pin{plant.pinned->x, plant.pinned->y, plant.pinned_height.value_or(0_mm).v};
  std::vector<Site> raised;
  if (!plant.on.empty()) add_raised(s, raised);
  const Site* nearest = nullptr;
  for (const Site& site : raised) {
    if (site.on != plant.on) continue;
    if (!nearest || apart(site, pin, level) < apart(*nearest, pin, level)) nearest = &site;
  }
  return nearest ? *nearest : floor_site(s, *plant.pinned);
}

void light_up(std::vector<Site>& sites, const Build& build, const SiteClimate& climate) {
  std::map<double, Range<Fraction>> at_height;
  for (Site& site : sites) {
    const auto [found, added] = at_height.try_emplace(site.at.z);
    if (added) found->second = humidity_at(build, climate.air, Millimetres{site.at.z});
    site.humidity = found->second;
    site.light = climate.light.at(site.at);
  }
}

}  // namespace loamsheet
