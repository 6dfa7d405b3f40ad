#include "plan/light/light_field.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "plan/light/constants.h"
#include "plan/light/photons.h"
#include "plan/light/screen.h"

namespace loamsheet {
namespace {

using std::numbers::pi;

constexpr int line_parts = 8;   // of a bar, each with its own way to the place
constexpr int panel_parts = 4;  // of a panel, along each side
constexpr double mm_per_m = 1000;
constexpr double mol_in_hour = 0.0036;  // of 1 umol a second

Space around(const Crown& c) {
  return {{c.middle.x - c.radius, c.middle.y - c.radius, c.middle.z - c.half_height},
          {c.middle.x + c.radius, c.middle.y + c.radius, c.middle.z + c.half_height}};
}

// What may stand between a place and the lamps over it.
class Between {
 public:
  Between(const std::vector<Solid>& solids, const std::vector<Crown>& crowns, const Position& to) {
    screens_.reserve(solids.size());
    for (const Solid& s : solids) {
      if (s.around.high.z > to.z && !holds(s, to)) screens_.emplace_back(s, to);
    }
    for (const Crown& c : crowns) {
      if (c.casts) crowns_.emplace_back(&c, slopes_to(around(c), to));
    }
  }

  // From here on only what may hide ways of these slopes.
  void look(const Box& slopes) {
    screens.clear(), crowns.clear();
    for (const Screen& s : screens_) {
      if (s.may_hide(slopes)) screens.push_back(&s);
    }
    for (const auto& [crown, hides] : crowns_) {
      if (hides.overlaps(slopes)) crowns.push_back(crown);
    }
  }

  bool is_hidden(const Position& way) const {
    for (const Screen* s : screens) {
      if (s->hides(way)) return true;
    }
    return false;
  }

  std::vector<const Screen*> screens;
  std::vector<const Crown*> crowns;

 private:
  std::vector<Screen> screens_;
  std::vector<std::pair<const Crown*, Box>> crowns_;
};

// A lamp as seen from the place it lights, in metres, with what may stand between.
struct View {
  const LampPath& path;
  const Lamp& lamp;
  const Position& to;
  double x, y, down;  // of the lamp's middle, seen from the place
  const Between& between;
  std::optional<double> through;  // the top, if that is the same for all of the lamp

  bool is_open() const { return through && between.screens.empty() && between.crowns.empty(); }
  int parts(int otherwise) const { return is_open() ? 1 : otherwise; }

  // What arrives from a point of the lamp at these offsets from its middle.
  double open(double along, double across) const {
    const Position way{(x + along) * mm_per_m, (y + across) * mm_per_m, down * mm_per_m};
    const Position from{to.x + way.x, to.y + way.y, lamp.at.z};
    double left = through ? *through : path.light(from, to);
    if (between.is_hidden(way)) left *= constants::scattered_into_shadow;
    for (const Crown* c : between.crowns) left *= light_left(to, *c, from);
    return left;
  }
};

// The factor of every part times what of it arrives, summed by the ends between the parts: where
// two neighbours are equally open, the end between them need not be worked out.
double from_line(const View& v) {
  const int parts = v.parts(line_parts);
  const double length = v.lamp.length.v / mm_per_m;
  const auto along = [&](double part) { return length * (part / parts - 0.5); };
  double sum = 0, before = 0;
  for (int i = 0; i <= parts; ++i) {
    const double open = i < parts ? v.open(along(i + 0.5), 0) : 0;
    if (open != before) sum += (before - open) * line_factor(v.x + along(i), v.y, v.down);
    before = open;
  }
  return v.lamp.flux / (pi * length) * sum;
}

// What arrives from each part of a panel, with a rim of nothing around.
using Shares = std::array<std::array<double, panel_parts + 2>, panel_parts + 2>;

Shares panel_shares(const View& v, double length, double width) {
  Shares shares{};
  const int parts = v.parts(panel_parts);
  for (int i = 0; i < parts; ++i) {
    for (int j = 0; j < parts; ++j) {
      shares[i + 1][j + 1] =
          v.open(length * ((i + 0.5) / parts - 0.5), width * ((j + 0.5) / parts - 0.5));
    }
  }
  return shares;
}

// As a line, by the corners between the parts.
double from_panel(const View& v) {
  const double length = v.lamp.length.v / mm_per_m, width = v.lamp.width.v / mm_per_m;
  const Shares open = panel_shares(v, length, width);
  const int parts = v.parts(panel_parts);
  double sum = 0;
  for (int i = 0; i <= parts; ++i) {
    for (int j = 0; j <= parts; ++j) {
      const double change = open[i][j] - open[i + 1][j] - open[i][j + 1] + open[i + 1][j + 1];
      if (change == 0) continue;
      const double x = length * (double(i) / parts - 0.5), y = width * (double(j) / parts - 0.5);
      sum += change * corner_factor(v.x + x, v.y + y, v.down);
    }
  }
  return v.lamp.flux / (length * width) * sum;
}

double from_beam(const View& v) {
  const double m = beam_exponent(v.lamp.beam);
  const double square = v.x * v.x + v.y * v.y + v.down * v.down;
  const double cosine = v.down / std::sqrt(square);
  const double middle = v.lamp.flux * (m + 1) / (2 * pi);  // candela
  return middle * std::pow(cosine, m) * cosine / square * v.open(0, 0);
}

// The level part of space that a lamp shines from.
Space shining(const Lamp& lamp) {
  using enum LampKind::Shines;
  const auto shines = lamp.kind->shines;
  const double along = shines == beam ? 0 : lamp.length.v / 2;
  const double across = shines == panel ? lamp.width.v / 2 : 0;
  const Position& at = lamp.at;
  return {{at.x - along, at.y - across, at.z}, {at.x + along, at.y + across, at.z}};
}

double illuminance(const View& view) {
  switch (view.lamp.kind->shines) {
    case LampKind::Shines::line:
      return from_line(view);
    case LampKind::Shines::panel:
      return from_panel(view);
    case LampKind::Shines::beam:
      return from_beam(view);
  }
  return 0;
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
  Between between(solids_, crowns, to);
  for (const Lamp& lamp : lamps_) {
    const double up = lamp.at.z - to.z;
    if (up <= 0 || lamp.flux <= 0) continue;
    const Space shines = shining(lamp);
    between.look(slopes_to(shines, to));
    const View view{path_,
                    lamp,
                    to,
                    (lamp.at.x - to.x) / mm_per_m,
                    (lamp.at.y - to.y) / mm_per_m,
                    up / mm_per_m,
                    between,
                    path_.light(shines.low, shines.high, to)};
    const double ppfd = illuminance(view) * lamp.photons_per_lux;
    light.ppfd += ppfd;
    light.dli += ppfd * lamp.hours * mol_in_hour;
  }
  return light;
}

}  // namespace loamsheet
