#include "figure/legend.h"

#include <algorithm>

#include "figure/numbers.h"
#include "figure/plants.h"

namespace loamsheet {
namespace {

constexpr double sign_width = 7, sign_gap = 1.3, entry_gap = 5, row = 4.6;  // mm

// Drawn within a box as wide as a sign, about the middle of its left side.
using Sign = Marks (*)();

Marks circle_sign(double radius, const Pen& pen, double tone) {
  const auto points = circle_points({sign_width / 2, 0}, radius);
  return {Filled{points, tone}, Stroke{points, true, pen}};
}

Marks plant_sign() {
  return circle_sign(1.6, {0.35, 0, {}}, plant_tone);
}
Marks spread_sign() {
  return circle_sign(1.8, pen::grown_up, 1);
}
Marks lamp_sign() {
  return {outline_of({0, -1, sign_width, 1}, pen::hidden)};
}
Marks door_sign() {
  return {line({0, 0}, {sign_width, 0}, {0.35, 0, {}})};
}
Marks mesh_sign() {
  return {line({0, 0}, {sign_width, 0}, pen::mesh)};
}

struct LegendEntry {
  const char* key;
  Sign sign;
};

bool any_side_opening(const FigureInput& in, bool door) {
  const auto& all = in.build.enclosure.openings;
  return std::any_of(all.begin(), all.end(), [&](const Opening& o) {
    return o.at != Opening::Where::top && (door ? o.kind->swings : o.mesh && !o.kind->swings);
  });
}

std::vector<LegendEntry> entries(const FigureInput& in) {
  std::vector<LegendEntry> out;
  if (!placed_plants(in).empty()) {
    out.push_back({"figure.legend-plant", plant_sign});
    out.push_back({"figure.legend-spread", spread_sign});
  }
  if (!in.build.lamps.empty()) out.push_back({"figure.legend-lamp", lamp_sign});
  if (any_side_opening(in, true)) out.push_back({"figure.legend-door", door_sign});
  if (any_side_opening(in, false)) out.push_back({"figure.legend-mesh", mesh_sign});
  return out;
}

}  // namespace

Marks plan_legend(const LegendInput& l) {
  Marks out;
  Point at{0, 0};
  for (const LegendEntry& entry : entries(l.in)) {
    const Text words{l.in.wording.say(entry.key), l.size};
    const double wide = sign_width + sign_gap + width_mm(l.in.type, words);
    if (at.x > 0 && at.x + wide > l.width) at = {0, at.y - row * l.size / 7.5};
    Marks sign = entry.sign();
    shift(sign, at.x, at.y);
    add(out, std::move(sign));
    const Box box = label_at(l.in.type, {"0", l.size}, {}).box;
    out.push_back(label_at(l.in.type, words, {at.x + sign_width + sign_gap, at.y - box.top / 2}));
    at.x += wide + entry_gap;
  }
  return out;
}

}  // namespace loamsheet
