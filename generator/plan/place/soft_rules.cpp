#include "plan/place/soft_rules.h"

#include <algorithm>
#include <cmath>

#include "plan/fit/constants.h"
#include "plan/light/vectors.h"
#include "plan/place/constants.h"

namespace loamsheet {
namespace {

using namespace constants;

Millimetres from_wall(const Needs& needs) {
  if (needs.habit == Habit::climber) return least_from_wall;
  return std::max(least_from_wall, needs.spread * wall_share);
}

bool covers_ground(const Needs& needs) {
  return needs.habit == Habit::creeper || needs.habit == Habit::moss;
}

double to_side(const Site& site) {
  return std::abs(2 * site.across - 1);
}

// At the back, or at a side from its middle on: nothing is hidden there. The front end of a side
// is in view.
double out_of_view(const Site& site) {
  return share(std::max(site.back, to_side(site) * share(2 * site.back)));
}

double climber_fit(const Site& site) {
  if (site.on == "background") return 1 - 0.5 * site.up;
  const double far = (site.support - near_support) / (far_support - near_support);
  return (1 - 0.7 * share(far)) * (0.4 + 0.6 * out_of_view(site));
}

// Low and at the front: it hides nothing there, and nothing hides it.
double creeper_fit(const Site& site) {
  const double low = site.kind == SiteKind::floor ? 1 : 0.6 * (1 - site.up);
  return low * (1 - 0.5 * share(site.back));
}

double epiphyte_fit(const Site& site) {
  return 0.5 + 0.5 * share(site.up * 1.5);
}

double tall_fit(const Site& site) {
  return 0.3 + 0.7 * out_of_view(site);
}

// Off the centre, a third of the way to a side, neither at the back nor in front.
double focal_fit(const Site& site) {
  const double off = std::abs(to_side(site) - constants::focal_to_side);
  return 1 - 0.6 * share(off) - 0.4 * share(std::abs(2 * site.back - 1));
}

// In the middle ground between creepers and tall plants, the higher the farther back, so that each
// is seen over the one before it.
double low_fit(const Needs& needs, const Site& site) {
  const double high = share(needs.height.high / tall_plant);
  const double back = low_in_front + (low_behind - low_in_front) * high;
  return 1 - std::abs(share(site.back) - back);
}

double shape_fit(const Needs& needs, const Site& site) {
  switch (needs.habit) {
    case Habit::climber:
      return climber_fit(site);
    case Habit::trailer:
      return 0.2 + 0.8 * share(site.drop / full_drop);
    case Habit::creeper:
    case Habit::moss:
      return creeper_fit(site);
    case Habit::epiphyte:
      return epiphyte_fit(site);
    case Habit::tall:
      return tall_fit(site);
    case Habit::low:
      break;
  }
  return needs.focal ? focal_fit(site) : low_fit(needs, site);
}

}  // namespace

bool right_kind(const Needs& needs, const Site& site) {
  if (site.kind == SiteKind::mount) return needs.mountable;
  return site.kind == SiteKind::pocket || needs.habit != Habit::epiphyte;
}

bool rooted(const Needs& needs, const Site& site) {
  return site.kind == SiteKind::mount || site.root >= needs.root;
}

bool fits(const Needs& needs, const Site& site) {
  const bool off_walls = site.kind != SiteKind::floor || site.wall >= from_wall(needs);
  return right_kind(needs, site) && rooted(needs, site) && off_walls &&
         site.headroom >= needs.height.low;
}

Millimetres distance_kept(const Needs& a, const Needs& b) {
  const Millimetres apart = (a.spread + b.spread) / 2;
  return covers_ground(a) || covers_ground(b) ? apart * (1 - ground_cover_overlap) : apart;
}

bool clash(const Needs& a, const Site& at, const Needs& b, const Site& bt) {
  const double kept = distance_kept(a, b).v;
  const double x = at.at.x - bt.at.x, y = at.at.y - bt.at.y, z = at.at.z - bt.at.z;
  return x * x + y * y + z * z < kept * kept;
}

double light_fit(const Needs& needs, const Site& site) {
  return light_fit(needs, site.light.ppfd);
}

double light_fit(const Needs& needs, double ppfd) {
  if (needs.ppfd.high <= 0) return 1;
  if (ppfd <= 0) return needs.ppfd.low <= 0 ? 1 : 0;
  if (ppfd < needs.ppfd.low)
    return share(1 - std::log(needs.ppfd.low / ppfd) / std::log(light_off));
  if (ppfd > needs.ppfd.high) {
    return share(1 - std::log(ppfd / needs.ppfd.high) / std::log(light_off));
  }
  return 1;
}

double humidity_fit(const Needs& needs, const Site& site) {
  const double air = (site.humidity.low.v + site.humidity.high.v) / 2;
  const double dry = needs.humidity ? share((needs.humidity->v - air) / humidity_off.v) : 0;
  const double damp = needs.dry ? share((air - damp_air.v) / humidity_off.v) : 0;
  return 1 - std::max(dry, damp);
}

double habit_fit(const Needs& needs, const Site& site) {
  const bool in_view = site.before_basking && needs.height.high >= constants::hides_view;
  return shape_fit(needs, site) * (in_view ? constants::view_share : 1);
}

double headroom_fit(const Needs& needs, const Site& site) {
  const bool led = needs.habit == Habit::climber || needs.habit == Habit::trailer;
  if (led || needs.height.high.v <= 0) return 1;
  return share(site.headroom / needs.height.high);
}

long score(const Needs& needs, const Site& site) {
  const SoftWeights& soft = needs.soft;
  const double sum =
      soft.light * light_fit(needs, site) + soft.humidity * humidity_fit(needs, site) +
      soft.habit * habit_fit(needs, site) + soft.headroom * headroom_fit(needs, site);
  return std::lround(sum * 1e6);
}

}  // namespace loamsheet
