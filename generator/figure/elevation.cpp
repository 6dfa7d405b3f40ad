// elevation: front view and side section to one scale, the largest preferred one that fits the
// room; dimensions, names and notes around them. Where that scale leaves no room for the section,
// it is left to a figure of its own.
#include <algorithm>

#include "figure/dimensioned.h"
#include "figure/plants.h"
#include "figure/scale.h"
#include "figure/views.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

// mm on paper.
constexpr double next_line = 6.2;  // from one dimension line to the next
constexpr double fan = 6.5;        // for the leaders to slant in
constexpr double between_views = 3.2;
constexpr double note_line = 4.2;  // from the drawing to the notes' first base line

// Where the side section goes; alone: to a figure of its own.
enum class Arrangement { beside, below, below_broken_off, alone };

struct Trial {
  const FigureInput& in;
  Tank tank;
  Arrangement arrangement;
  Lettering size;
  Naming naming;
};

Marks front_dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const Dimensioner by{t.in.type, t.size.dimension};
  Marks out = by.level(measured(k, 0, k.width), {-k.wall - level_line, -k.wall});
  Marks layers = layer_depths(k, t.size);
  const double beyond = std::min(extent(layers).left + 1.6, -k.wall - first_line) - next_line;
  add(out, std::move(layers));
  add(out, by.upright({measured(k, 0, k.height)}, {beyond, -k.wall}));
  return out;
}

Marks front_with_dimensions(const Trial& t, std::vector<Target>& targets) {
  Drawing front = front_view(t.tank, t.naming);
  targets = std::move(front.targets);
  add(front.marks, front_dimensions(t));
  add(front.marks, view_heading(t.tank, t.size, "figure.front", t.tank.height));
  return std::move(front.marks);
}

Marks section_with_dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const bool broken = t.arrangement == Arrangement::below_broken_off;
  const double limit = broken ? std::min(above_layers(k), k.height) : k.height;
  Marks out = dimensioned_section(k, t.size, limit);
  add(out, view_heading(k, t.size, "figure.section", limit + (limit < k.height ? 1.5 : 0)));
  return out;
}

// The front view with its labels.
Marks arranged_alone(const Trial& t) {
  std::vector<Target> targets;
  Marks out = front_with_dimensions(t, targets);
  Column column;
  column.edge = t.tank.width + t.tank.wall + 1.2;
  column.left = column.edge + fan;
  column.width = 35 * t.size.label / 8;
  column.limits = {-t.tank.wall - level_line, std::max(t.tank.height, 60.0) + 1};
  add(out, place_labels(t.in.type, t.size, targets, column));
  return out;
}

// The section to the right of the labels, floor beside floor.
Marks arranged_beside(const Trial& t) {
  Marks out = arranged_alone(t);
  Marks section = section_with_dimensions(t);
  shift(section, extent(out).right + between_views - extent(section).left, 0);
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

Marks arranged(const Trial& t) {
  switch (t.arrangement) {
    case Arrangement::beside:
      return arranged_beside(t);
    case Arrangement::alone:
      return arranged_alone(t);
    default:
      return arranged_below(t);
  }
}

// Numbers lie within the tank: what is too large without them is so with them.
std::optional<Figure> drawn(const Trial& t) {
  Marks marks = arranged(t);
  if (!fits(extent(marks), t.in)) return std::nullopt;
  std::vector<int> left_out;
  add_numbers(marks, t, left_out);
  add_notes(marks, t, left_out);
  if (!fits(extent(marks), t.in)) return std::nullopt;
  Figure f = framed("elevation", std::move(marks), static_cast<int>(t.tank.scale));
  f.section_apart = t.arrangement == Arrangement::alone;
  f.title = t.in.wording.say(f.section_apart ? "figure.title-front" : "figure.title",
                             {{"scale", f.scale}});
  f.alt = description(t.in, f.section_apart ? "figure.front" : "figure.front-and-section");
  return f;
}

// Views alone, before anything is drawn: most scales are out at once.
bool hopeless(const Tank& k, const FigureInput& in) {
  return k.width > in.room_width || k.height > in.room_height || k.depth > in.room_width;
}

std::optional<Figure> fitting(const FigureInput& in, int scale, Naming naming) {
  const Tank tank = tank_at(in, scale);
  if (hopeless(tank, in)) return std::nullopt;
  for (Arrangement a : {Arrangement::beside, Arrangement::below, Arrangement::below_broken_off,
                        Arrangement::alone}) {
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
