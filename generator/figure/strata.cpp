// strata: the layers cut through, alike in both views.
#include <algorithm>

#include "figure/hatch.h"
#include "figure/tank.h"

namespace loamsheet {
namespace {

constexpr double thin_wall = 1.2;  // mm: cut walls up to this are drawn solid
constexpr double water_tone = 0.84;
const Pen surface_pen{0.35, 0, {}};

// The share of a substrate's parts that answer to a question.
template <class Is>
double share(const SubstrateLayer& s, Is is) {
  double sum = 0;
  for (const SubstratePart& p : s.parts) sum += is(p.bulk.material) ? p.share.v : 0;
  return sum;
}

Texture texture_of(const SubstrateLayer& s) {
  const double sand = share(s, [](const std::string& m) { return m == "sand"; });
  const double clay =
      share(s, [](const std::string& m) { return m == "loam" || m == "clay-powder"; });
  if (sand >= 0.5) return Texture::grains;
  return clay + sand >= 0.5 ? Texture::clay : Texture::fibres;
}

Marks layer(const std::vector<Point>& region, Texture texture, double tone) {
  Marks out{Filled{region, tone}};
  add(out, hatch(texture, region));
  return out;
}

std::vector<Point> between(const Slope& bottom, const Slope& top) {
  return {{bottom.along.bottom, bottom.left},
          {bottom.along.top, bottom.right},
          {top.along.top, top.right},
          {top.along.bottom, top.left}};
}

Mark surface(const Slope& s) {
  return line({s.along.bottom, s.left}, {s.along.top, s.right}, surface_pen);
}

}  // namespace

Marks cut_wall(const Box& box) {
  if (std::min(box.width(), box.height()) <= thin_wall) return {filled(box, 0.15)};
  Marks out{filled(box, 1)};
  add(out, hatch(Texture::diagonal, rectangle_points(box)));
  out.push_back(outline_of(box, pen::wide));
  return out;
}

Marks cut_drainage(const Tank& t, const LabelLimits& along) {
  if (t.drainage <= 0) return {};
  const bool posts = t.in.build.layers.drainage.kind->sign == DrainageKind::Sign::posts;
  const Box box{along.bottom, 0, along.top, t.drainage};
  const double wet = std::min(t.standing_high, t.drainage);
  Marks out{filled(box, 1)};
  if (wet > 0) out.push_back(filled({along.bottom, 0, along.top, wet}, water_tone));
  add(out, hatch(posts ? Texture::posts : Texture::pebbles, rectangle_points(box)));
  out.push_back(line({along.bottom, t.drainage}, {along.top, t.drainage}, pen::thin));
  return out;
}

Marks cut_substrate(const Tank& t, const Slope& top) {
  const Slope bottom{top.along, t.drainage, t.drainage};
  Marks out = layer(between(bottom, top), texture_of(t.in.build.layers.substrate), 0.92);
  out.push_back(surface(top));
  return out;
}

Marks cut_litter(const Tank& t, const Slope& bottom, const Slope& top) {
  if (!t.in.build.layers.litter) return {};
  Marks out = layer(between(bottom, top), Texture::leaves, 0.78);
  out.push_back(surface(top));
  return out;
}

Marks separator(const Tank& t, const LabelLimits& along) {
  const auto& sheet = t.in.build.layers.separator;
  if (!sheet) return {};
  const double up = t.drainage + t.paper(sheet->turn_up), in = 0.45, y = t.drainage;
  const Pen turned{0.5, 0, {}};
  return {line({along.bottom, y}, {along.top, y}, Pen{0.7, 0, {2.6, 0.9}}),
          line({along.bottom + in, y}, {along.bottom + in, up}, turned),
          line({along.top - in, y}, {along.top - in, up}, turned)};
}

// A level line with the sign for a free surface: a triangle on its tip and two strokes below.
Marks water_level(double level, const LabelLimits& along, double x) {
  const Stroke triangle{
      {{x, level}, {x - 1.1, level + 1.9}, {x + 1.1, level + 1.9}}, true, pen::thin};
  return {line({along.bottom, level}, {along.top, level}, pen::thin), Filled{triangle.points, 1},
          triangle};
}

}  // namespace loamsheet
