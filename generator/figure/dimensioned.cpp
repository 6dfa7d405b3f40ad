#include "figure/dimensioned.h"

namespace loamsheet {
namespace {

// mm on paper.
constexpr double heading_gap = 2.2;  // from a view's top to its heading's base line
constexpr double over_layers = 3.5;  // of a section that is broken off

}  // namespace

Measured measured(const Tank& tank, double from, double to) {
  const Millimetres real{(to - from) * tank.scale};
  return {from, to, dimension_text(real, tank.in.wording.units())};
}

Marks view_heading(const Tank& tank, const Lettering& size, const char* key, double top) {
  const Text text{tank.in.wording.say(key), size.label, Face::bold};
  return {label_at(tank.in.type, text, {-tank.wall, top + heading_gap})};
}

Marks layer_depths(const Tank& k, const Lettering& size) {
  const Dimensioner by{k.in.type, size.dimension};
  const std::vector<double> stops{0, k.drainage, k.substrate_front, k.litter_front};
  std::vector<Measured> chain;
  for (size_t i = 0; i + 1 < stops.size(); ++i) {
    if (stops[i + 1] > stops[i]) chain.push_back(measured(k, stops[i], stops[i + 1]));
  }
  return by.upright(chain, {-k.wall - first_line, -k.wall});
}

double above_layers(const Tank& tank) {
  return tank.paper(tank.in.plan.layers.profile.highest) + over_layers;
}

Marks dimensioned_section(const Tank& k, const Lettering& size, double limit) {
  const Dimensioner by{k.in.type, size.dimension};
  Marks out = side_section(k, limit);
  add(out, by.level(measured(k, 0, k.depth), {-k.wall - level_line, -k.wall}));
  if (k.substrate_back != k.substrate_front) {
    add(out, by.upright({measured(k, k.drainage, k.substrate_back)},
                        {k.depth + k.wall + first_line, k.depth + k.wall}));
  }
  const Text front{k.in.wording.say("figure.front-end"), size.note, Face::italic};
  const Text back{k.in.wording.say("figure.back-end"), size.note, Face::italic};
  const double base = -k.wall - 3.4;
  const double left = -k.wall - 0.6 - width_mm(k.in.type, front);
  out.push_back(label_at(k.in.type, front, {left, base}));
  out.push_back(label_at(k.in.type, back, {k.depth + k.wall + 0.6, base}));
  return out;
}

}  // namespace loamsheet
