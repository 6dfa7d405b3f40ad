#include "plan/light_field.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "plan/climate_constants.h"
#include "plan/light.h"
#include "plan/light_constants.h"

namespace loamsheet {
namespace {

using std::numbers::pi;

constexpr int line_parts = 8;   // of a bar, each with its own way to the place
constexpr int panel_parts = 4;  // of a panel, along each side
constexpr double mm_per_m = 1000;
constexpr double mol_in_hour = 0.0036;  // of 1 umol a second

// A lamp as seen from the place it lights, in metres, with what may stand between.
struct View {
  const LampPath& path;
  const Lamp& lamp;
  const Position& to;
  double x, y, down;  // of the lamp's middle, seen from the place
  std::vector<const Solid*> solids = {};
  std::vector<const Crown*> crowns = {};

  // What arrives from a point of the lamp at these offsets from its middle.
  double open(double along, double across) const {
    const Position from{lamp.at.x + along * mm_per_m, lamp.at.y + across * mm_per_m, lamp.at.z};
    const Space way = space_of(from, to);
    const auto between = [&](const Solid* s) {
      return s->around.meets(way) && blocks(*s, from, to);
    };
    double left = path.light(from, to);
    const bool shadow = std::any_of(solids.begin(), solids.end(), between);
    if (shadow) left *= constants::scattered_into_shadow;
    for (const Crown* c : crowns) left *= light_left(to, *c, from);
    return left;
  }
};

double from_line(const View& v) {
  const double length = v.lamp.length.v / mm_per_m, part = length / line_parts;
  double sum = 0, before = line_factor(v.x - length / 2, v.y, v.down);
  for (int i = 0; i < line_parts; ++i) {
    const double end = (i + 1) * part - length / 2;
    const double here = line_factor(v.x + end, v.y, v.down);
    sum += (here - before) * v.open(end - part / 2, 0);
    before = here;
  }
  return v.lamp.flux / (pi * length) * sum;
}

using Corners = std::array<std::array<double, panel_parts + 1>, panel_parts + 1>;

Corners panel_corners(const View& v, double length, double width) {
  Corners corners;
  for (int i = 0; i <= panel_parts; ++i) {
    for (int j = 0; j <= panel_parts; ++j) {
      corners[i][j] = corner_factor(v.x + length * (double(i) / panel_parts - 0.5),
                                    v.y + width * (double(j) / panel_parts - 0.5), v.down);
    }
  }
  return corners;
}

double from_panel(const View& v) {
  const double length = v.lamp.length.v / mm_per_m, width = v.lamp.width.v / mm_per_m;
  const Corners f = panel_corners(v, length, width);
  double sum = 0;
  for (int i = 0; i < panel_parts; ++i) {
    for (int j = 0; j < panel_parts; ++j) {
      const double part = f[i + 1][j + 1] - f[i][j + 1] - f[i + 1][j] + f[i][j];
      sum += part * v.open(length * ((i + 0.5) / panel_parts - 0.5),
                           width * ((j + 0.5) / panel_parts - 0.5));
    }
  }
  return v.lamp.flux / (length * width) * sum;
}

double from_spot(const View& v) {
  const double m = beam_exponent(v.lamp.beam);
  const double square = v.x * v.x + v.y * v.y + v.down * v.down;
  const double cosine = v.down / std::sqrt(square);
  const double middle = v.lamp.flux * (m + 1) / (2 * pi);  // candela
  return middle * std::pow(cosine, m) * cosine / square * v.open(0, 0);
}

bool is_bar(const Lamp& lamp) {
  return lamp.kind == Lamp::Kind::bar || lamp.kind == Lamp::Kind::uv_bar;
}

// All ways from a lamp to a place.
Space ways(const Lamp& lamp, const Position& to) {
  const bool panel = lamp.kind == Lamp::Kind::panel;
  const double x = is_bar(lamp) || panel ? lamp.length.v / 2 : 0, y = panel ? lamp.width.v / 2 : 0;
  Space space = space_of(lamp.at, to);
  space.low.x = std::min(space.low.x, lamp.at.x - x);
  space.high.x = std::max(space.high.x, lamp.at.x + x);
  space.low.y = std::min(space.low.y, lamp.at.y - y);
  space.high.y = std::max(space.high.y, lamp.at.y + y);
  return space;
}

Space around(const Crown& c) {
  return {{c.middle.x - c.radius, c.middle.y - c.radius, c.middle.z - c.half_height},
          {c.middle.x + c.radius, c.middle.y + c.radius, c.middle.z + c.half_height}};
}

double illuminance(const View& view) {
  using enum Lamp::Kind;
  if (view.lamp.kind == panel) return from_panel(view);
  if (is_bar(view.lamp)) return from_line(view);
  return from_spot(view);
}

}  // namespace

LightField::LightField(const Build& build)
    : path_(build.enclosure), solids_(solids_in(build)), lamps_(build.lamps) {}

LightField LightField::under(std::vector<Lamp> lamps) const {
  LightField other = *this;
  other.lamps_ = std::move(lamps);
  return other;
}

LightAt LightField::at(const Position& to, const std::vector<Crown>& crowns) const {
  LightAt light;
  for (const Lamp& lamp : lamps_) {
    const double down = (lamp.at.z - to.z) / mm_per_m;
    if (down <= 0 || lamp.flux <= 0) continue;
    View view{path_, lamp, to, (lamp.at.x - to.x) / mm_per_m, (lamp.at.y - to.y) / mm_per_m, down};
    const Space space = ways(lamp, to);
    for (const Solid& s : solids_) {
      if (s.around.meets(space) && !holds(s, to)) view.solids.push_back(&s);
    }
    for (const Crown& c : crowns) {
      if (c.casts && around(c).meets(space)) view.crowns.push_back(&c);
    }
    const double ppfd = illuminance(view) * lamp.photons_per_lux;
    light.ppfd += ppfd;
    light.dli += ppfd * lamp.hours * mol_in_hour;
  }
  return light;
}

LightAt light_at(const Build& build, const Position& at) {
  return LightField(build).at(at);
}

}  // namespace loamsheet
