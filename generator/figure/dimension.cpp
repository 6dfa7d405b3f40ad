#include "figure/dimension.h"

#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "figure/labels.h"

namespace loamsheet {
namespace {

constexpr double gap = 0.9;          // from the object to its extension line
constexpr double past = 8 * 0.18;    // extension lines run 8 line widths past
constexpr double stroke_half = 0.9;  // of an oblique stroke, in x and y
constexpr double value_gap = 0.7;    // from the line to the value's box
constexpr double clear = 2.4;        // length beside a value, for the oblique strokes

Marks oblique(Point at) {
  return {line({at.x - stroke_half, at.y - stroke_half}, {at.x + stroke_half, at.y + stroke_half},
               pen::thin)};
}

// An extension line from the object's coordinate to past the dimension line, both along one axis.
std::pair<double, double> reach(const DimensionLine& d) {
  const double sign = d.at < d.object ? -1 : 1;
  return {d.object + sign * gap, d.at + sign * past};
}

Marks level_frame(const Measured& m, const DimensionLine& d) {
  const auto [start, end] = reach(d);
  Marks out{line({m.from, start}, {m.from, end}), line({m.to, start}, {m.to, end}),
            line({m.from, d.at}, {m.to, d.at})};
  add(out, oblique({m.from, d.at}));
  add(out, oblique({m.to, d.at}));
  return out;
}

Marks upright_frame(const Measured& m, const DimensionLine& d) {
  const auto [start, end] = reach(d);
  Marks out{line({start, m.from}, {end, m.from}), line({start, m.to}, {end, m.to}),
            line({d.at, m.from}, {d.at, m.to})};
  add(out, oblique({d.at, m.from}));
  add(out, oblique({d.at, m.to}));
  return out;
}

// Heights of the chain's values, one under the other beside the chain, in the chain's order.
std::vector<double> value_heights(const Dimensioner& by, const std::vector<Measured>& chain) {
  std::vector<LabelPiece> pieces;
  for (size_t i = chain.size(); i-- > 0;) {
    const Box box = label_at(by.type, {chain[i].value, by.size}, {}).box;
    pieces.push_back({(chain[i].from + chain[i].to) / 2, box.height()});
  }
  auto heights = spread(pieces, 0.2, {chain.front().from + 0.3, 1e9});
  std::reverse(heights.begin(), heights.end());
  return heights;
}

// Values that do not fit between their strokes: level, on the far side of the chain, each joined
// to its part of the line.
Marks values_outside(const Dimensioner& by, const std::vector<Measured>& chain,
                     const DimensionLine& d) {
  const double sign = d.at < d.object ? -1 : 1, turn = d.at + sign * (past + 0.3);
  const double end = turn + sign * 2.1;
  const auto heights = value_heights(by, chain);
  Marks out;
  for (size_t i = 0; i < chain.size(); ++i) {
    const Text text{chain[i].value, by.size};
    const double middle = (chain[i].from + chain[i].to) / 2, wide = width_mm(by.type, text);
    const std::vector<Point> path{{d.at, middle}, {turn, middle}, {end, heights[i]}};
    out.push_back(Stroke{path, false, pen::narrow});
    const double left = sign < 0 ? end - 0.6 - wide : end + 0.6;
    out.push_back(
        label_at(by.type, text, {left, heights[i] - label_at(by.type, text, {}).box.top / 2}));
  }
  return out;
}

Mark value_beside(const Dimensioner& by, const Measured& m, double at) {
  const Text text{m.value, by.size};
  const Label flat = label_at(by.type, text, {}, true);
  const double start = (m.from + m.to - width_mm(by.type, text)) / 2;
  return label_at(by.type, text, {at - value_gap - flat.box.right, start}, true);
}

}  // namespace

std::string dimension_text(Millimetres length, UnitSystem units) {
  if (units == UnitSystem::metric) return significant(std::round(length.v * 10) / 10, 6);
  const long sixteenths = std::lround(length.v / 25.4 * 16);
  const long whole = sixteenths / 16;
  long top = sixteenths % 16, bottom = 16;
  while (top != 0 && top % 2 == 0) top /= 2, bottom /= 2;
  if (top == 0) return std::to_string(whole);
  const std::string part = std::to_string(top) + '/' + std::to_string(bottom);
  return whole == 0 ? part : std::to_string(whole) + ' ' + part;
}

Marks Dimensioner::level(const Measured& m, const DimensionLine& d) const {
  Marks out = level_frame(m, d);
  const Text text{m.value, size};
  const double wide = width_mm(type, text),
               base = d.at + value_gap - label_at(type, text, {}).box.bottom;
  const bool fits = wide + clear <= m.to - m.from;
  const double left = fits ? (m.from + m.to - wide) / 2 : m.to + clear;
  if (!fits) out.push_back(line({m.to, d.at}, {left + wide, d.at}));
  out.push_back(label_at(type, text, {left, base}));
  return out;
}

Marks Dimensioner::upright(const std::vector<Measured>& chain, const DimensionLine& d) const {
  Marks out;
  bool fits = true;
  for (const Measured& m : chain) {
    add(out, upright_frame(m, d));
    fits = fits && width_mm(type, {m.value, size}) + clear <= m.to - m.from;
  }
  if (!fits) {
    add(out, values_outside(*this, chain, d));
    return out;
  }
  for (const Measured& m : chain) out.push_back(value_beside(*this, m, d.at));
  return out;
}

}  // namespace loamsheet
