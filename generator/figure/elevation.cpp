// elevation: front view and side section to one scale, the largest preferred one that fits the
// room; dimensions, names and notes around them.
#include <algorithm>

#include "figure/dimension.h"
#include "figure/plants.h"
#include "figure/scale.h"
#include "figure/views.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

// mm on paper.
constexpr double first_line = 5.0;   // from an object to its first dimension line
constexpr double next_line = 6.2;    // from one dimension line to the next
constexpr double level_line = 5.8;   // from the floor to the width's line
constexpr double heading_gap = 2.2;  // from a view's top to its heading's base line
constexpr double fan = 6.5;          // for the leaders to slant in
constexpr double between_views = 3.2;
constexpr double above_layers = 3.5;  // of a section that is broken off
constexpr double note_line = 4.2;     // from the drawing to the notes' first base line

enum class Arrangement { beside, below, below_broken_off };

struct Trial {
  const FigureInput& in;
  Tank tank;
  Arrangement arrangement;
  Lettering size;
  Naming naming;
};

Measured measured(const Trial& t, double from, double to) {
  const Millimetres real{(to - from) * t.tank.scale};
  return {from, to, dimension_text(real, t.in.wording.units())};
}

Marks heading(const Trial& t, const char* key, double top) {
  const Text text{t.in.wording.say(key), t.size.label, Face::bold};
  return {label_at(t.in.type, text, {-t.tank.wall, top + heading_gap})};
}

Marks front_dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const Dimensioner by{t.in.type, t.size.dimension};
  Marks out = by.level(measured(t, 0, k.width), {-k.wall - level_line, -k.wall});
  std::vector<double> stops{0, k.drainage, k.substrate_front, k.litter_front};
  std::vector<Measured> chain;
  for (size_t i = 0; i + 1 < stops.size(); ++i) {
    if (stops[i + 1] > stops[i]) chain.push_back(measured(t, stops[i], stops[i + 1]));
  }
  Marks layers = by.upright(chain, {-k.wall - first_line, -k.wall});
  const double beyond = std::min(extent(layers).left + 1.6, -k.wall - first_line) - next_line;
  add(out, std::move(layers));
  add(out, by.upright({measured(t, 0, k.height)}, {beyond, -k.wall}));
  return out;
}

// The width under the section, what the front view cannot show beside it, and which way it looks.
Marks section_dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const Dimensioner by{t.in.type, t.size.dimension};
  Marks out = by.level(measured(t, 0, k.depth), {-k.wall - level_line, -k.wall});
  if (k.substrate_back != k.substrate_front) {
    add(out, by.upright({measured(t, k.drainage, k.substrate_back)},
                        {k.depth + k.wall + first_line, k.depth + k.wall}));
  }
  const Text front{t.in.wording.say("figure.front-end"), t.size.note, Face::italic};
  const Text back{t.in.wording.say("figure.back-end"), t.size.note, Face::italic};
  const double base = -k.wall - 3.4;
  const double left = -k.wall - 0.6 - width_mm(t.in.type, front);
  out.push_back(label_at(t.in.type, front, {left, base}));
  out.push_back(label_at(t.in.type, back, {k.depth + k.wall + 0.6, base}));
  return out;
}

Marks front_with_dimensions(const Trial& t, std::vector<Target>& targets) {
  Drawing front = front_view(t.tank, t.naming);
  targets = std::move(front.targets);
  add(front.marks, front_dimensions(t));
  add(front.marks, heading(t, "figure.front", t.tank.height));
  return std::move(front.marks);
}

Marks section_with_dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const double layers = k.paper(k.in.plan.layers.profile.highest) + above_layers;
  const bool broken = t.arrangement == Arrangement::below_broken_off;
  const double limit = broken ? std::min(layers, k.height) : k.height;
  Marks out = side_section(k, limit);
  add(out, section_dimensions(t));
  add(out, heading(t, "figure.section", limit + (limit < k.height ? 1.5 : 0)));
  return out;
}

// The section to the right of the labels, floor beside floor.
Marks arranged_beside(const Trial& t) {
  std::vector<Target> targets;
  Marks out = front_with_dimensions(t, targets);
  Column column;
  column.edge = t.tank.width + t.tank.wall + 1.2;
  column.left = column.edge + fan;
  column.width = 35 * t.size.label / 8;
  column.limits = {-t.tank.wall - level_line, std::max(t.tank.height, 60.0) + 1};
  Marks labels = place_labels(t.in.type, t.size, targets, column);
  Marks section = section_with_dimensions(t);
  shift(section, extent(labels).right + between_views - extent(section).left, 0);
  add(out, std::move(labels));
  add(out, std::move(section));
  return out;
}

// The section under the front view, both fronts' left ends in line, labels right of both.
Marks arranged_below(const Trial& t) {
  std::vector<Target> targets;
  Marks out = front_with_dimensions(t, targets);
  Marks section = section_with_dimensions(t);
  shift(section, 0, extent(out).bottom - between_views - extent(section).top);
  const double right = std::max(t.tank.width + t.tank.wall, extent(section).right);
  Column column;
  column.edge = right + 1.2;  // beyond the section's dimensions, too
  column.left = column.edge + fan;
  column.width = std::max(31.0, std::min(46.0, t.in.room_width + extent(out).left - column.left));
  column.limits = {extent(section).bottom, t.tank.height + 2};
  add(out, place_labels(t.in.type, t.size, targets, column));
  add(out, std::move(section));
  return out;
}

std::vector<Text> note_lines(const Trial& t, const std::vector<int>& left_out, bool wide) {
  std::vector<std::string> said = notes(t.in, static_cast<int>(t.tank.scale));
  if (t.naming == Naming::layers_only) said.push_back(t.in.wording.say("figure.note-unnamed"));
  for (std::string& note : plant_notes(t.in, left_out, wide)) said.push_back(std::move(note));
  std::vector<Text> lines;
  for (std::string& words : said) lines.push_back({std::move(words), t.size.note});
  return lines;
}

bool is_free(const Marks& marks, const Box& box) {
  const auto meets = [&](const Mark& m) { return extent(m).overlaps(box, 1); };
  return std::none_of(marks.begin(), marks.end(), meets);
}

// Under everything; or in the lower right, where a section under the front view leaves room.
void add_notes(Marks& marks, const Trial& t, const std::vector<int>& left_out) {
  const Box box = extent(marks);
  Marks block;
  for (bool wide : {false, true}) {
    const auto lines = note_lines(t, left_out, wide);
    block = text_block(t.in.type, lines, {box.left, box.bottom - note_line});
    const Box at = extent(block);
    const double right = box.right - at.right, up = box.bottom - at.bottom;
    const Box corner{at.left + right, at.bottom + up, at.right + right, at.top + up};
    if (right <= 0 || !is_free(marks, corner)) continue;
    shift(block, right, up);
    break;
  }
  add(marks, std::move(block));
}

// After the labels, so that no number lies on a leader.
void add_numbers(Marks& marks, const Trial& t, std::vector<int>& left_out) {
  const auto numbered = plants_front(t.tank).numbered;
  const NumberRoom room{{0, 0, t.tank.width, t.tank.height}, t.size.note};
  add(marks, place_numbers(t.in.type, marks, numbered, room, left_out));
}

// Numbers lie within the tank: what is too large without them is so with them.
std::optional<Figure> drawn(const Trial& t) {
  Marks marks = t.arrangement == Arrangement::beside ? arranged_beside(t) : arranged_below(t);
  if (!fits(extent(marks), t.in)) return std::nullopt;
  std::vector<int> left_out;
  add_numbers(marks, t, left_out);
  add_notes(marks, t, left_out);
  if (!fits(extent(marks), t.in)) return std::nullopt;
  Figure f = framed("elevation", std::move(marks), static_cast<int>(t.tank.scale));
  f.title = t.in.wording.say("figure.title", {{"scale", f.scale}});
  f.alt = description(t.in);
  return f;
}

// Views alone, before anything is drawn: most scales are out at once.
bool hopeless(const Tank& k, const FigureInput& in) {
  return k.width > in.room_width || k.height > in.room_height || k.depth > in.room_width;
}

std::optional<Figure> fitting(const FigureInput& in, int scale, Naming naming) {
  const Tank tank = tank_at(in, scale);
  if (hopeless(tank, in)) return std::nullopt;
  for (Arrangement a : {Arrangement::beside, Arrangement::below, Arrangement::below_broken_off}) {
    if (auto figure = drawn({in, tank, a, lettering(in), naming})) return figure;
  }
  return std::nullopt;
}

}  // namespace

// Labels are as high at every scale, so shorter ones are tried before a smaller scale.
std::optional<Figure> elevation(const FigureInput& in) {
  for (int scale : preferred_scales()) {
    for (Naming naming : {Naming::full, Naming::names, Naming::layers_only}) {
      if (auto figure = fitting(in, scale, naming)) return figure;
    }
  }
  return std::nullopt;
}

}  // namespace loamsheet
