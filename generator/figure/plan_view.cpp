// plan view: the enclosure from above, without its top, to one scale; names beside it, numbers for
// the plants, a legend and notes below.
#include <algorithm>
#include <cmath>

#include "figure/dimensioned.h"
#include "figure/floor.h"
#include "figure/legend.h"
#include "figure/plants.h"
#include "figure/scale.h"
#include "figure/views.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

// mm on paper.
constexpr double width_line = 5.5;  // from the floor's outermost mark to the width's line
constexpr double side_line = 5.0;
constexpr double column_gap = 2.0;  // from the floor to the column of names
constexpr double fan = 6.5;
constexpr double front_word = 1.2;  // from the width's line to the word "front"
constexpr double legend_gap = 3.2;
constexpr double overhang = 1.5;  // of the floor's height, that names with details may take up

struct Trial {
  const FigureInput& in;
  Tank tank;
  Lettering size;
  Naming naming;
  DrawnPlants plants;
};

void join(Drawing& to, Drawing more) {
  add(to.marks, std::move(more.marks));
  std::move(more.targets.begin(), more.targets.end(), std::back_inserter(to.targets));
}

Drawing floor_and_things(const Trial& t) {
  const Tank& k = t.tank;
  Drawing d;
  d.marks = walls_above(k);
  join(d, water_above(k));
  join(d, background_above(k));
  join(d, furnishings_above(k));
  add(d.marks, t.plants.marks);
  join(d, openings_above(k));
  join(d, lamps_above(k));
  return d;
}

// The words that tell which side is the front, in the middle under the width.
Mark front_mark(const Trial& t, double line) {
  const Text word{t.in.wording.say("figure.plan-front"), t.size.note, Face::italic};
  const Box box = label_at(t.in.type, word, {}).box;
  return label_at(t.in.type, word, {(t.tank.width - box.width()) / 2, line - front_word - box.top});
}

Marks dimensions(const Trial& t, const Box& drawn) {
  const Tank& k = t.tank;
  const Dimensioner by{t.in.type, t.size.dimension};
  const double line = drawn.bottom - width_line;
  Marks out = by.level(measured(k, 0, k.width), {line, drawn.bottom});
  add(out, by.upright({measured(k, 0, k.depth)}, {drawn.left - side_line, drawn.left}));
  out.push_back(front_mark(t, line));
  return out;
}

constexpr double beside_number = 2.6, beside_dot = 0.6;  // mm, between a leader and these

// Whether a leader to the right at this height would run over the middle of a plant.
bool over_plant(const Target& target, double y, const std::vector<Numbered>& plants) {
  return std::any_of(plants.begin(), plants.end(), [&](const Numbered& n) {
    return n.wanted.x > target.at.x && std::fabs(n.wanted.y - y) < beside_number;
  });
}

// The steps 0, 0.3, -0.3, 0.6, ... of a dot up and down.
double next_step(double off) {
  return off > 0 ? -off : 0.3 - off;
}

// Dots at one height are moved apart, so that no leader lies on another; and, where their things
// are large enough, away from the numbers of plants.
void part(std::vector<Target>& targets, const std::vector<Numbered>& plants) {
  for (size_t i = 0; i < targets.size(); ++i) {
    Target& t = targets[i];
    const auto taken = [&](double y) {
      return std::any_of(targets.begin(), targets.begin() + static_cast<long>(i),
                         [&](const Target& o) { return std::fabs(o.at.y - y) < beside_dot; });
    };
    double off = 0;
    while (std::fabs(off) <= t.slack &&
           (taken(t.at.y + off) || over_plant(t, t.at.y + off, plants)))
      off = next_step(off);
    if (std::fabs(off) > t.slack) off = 0;
    while (taken(t.at.y + off)) off = next_step(off);
    t.at.y += off;
  }
}

Marks names(const Trial& t, std::vector<Target> targets, const Box& drawn, double left) {
  if (t.naming == Naming::layers_only) return {};
  part(targets, t.plants.numbered);
  for (Target& target : targets) {
    if (t.naming == Naming::names) target.detail.clear();
  }
  Column column;
  column.edge = drawn.right + column_gap;
  column.left = column.edge + fan;
  column.width = std::clamp(t.in.room_width + left - column.left, 24.0, 44.0);
  column.limits = {drawn.bottom - width_line, std::max(drawn.top, drawn.bottom + 40)};
  return place_labels(t.in.type, t.size, std::move(targets), column);
}

std::vector<Text> note_lines(const Trial& t, const std::vector<int>& left_out) {
  std::vector<Text> lines;
  for (std::string& words :
       plan_notes(t.in, static_cast<int>(t.tank.scale), t.naming == Naming::layers_only)) {
    lines.push_back({std::move(words), t.size.note});
  }
  for (std::string& words : unnumbered_notes(t.in, left_out)) {
    lines.push_back({std::move(words), t.size.note});
  }
  return lines;
}

// The legend and the notes.
void add_below(Marks& marks, const Trial& t, const std::vector<int>& left_out) {
  const Box all = extent(marks);
  const double wide = std::max(all.width(), std::min(120.0, t.in.room_width));
  Marks legend = plan_legend({t.in, t.size.note, wide});
  if (!legend.empty()) {
    shift(legend, all.left, all.bottom - legend_gap - extent(legend).top);
    add(marks, std::move(legend));
  }
  const auto lines = note_lines(t, left_out);
  add(marks, text_block(t.in.type, lines,
                        {all.left, extent(marks).bottom - pitch_mm(lines.front()) - 0.6}));
}

std::optional<Figure> drawn(const Trial& t) {
  Drawing d = floor_and_things(t);
  const Box box = extent(d.marks);
  Marks around = dimensions(t, box);
  const double left = extent(around).left;
  add(around, names(t, d.targets, box, left));
  add(d.marks, std::move(around));
  const bool hangs_over = extent(d.marks).height() > overhang * (box.height() + level_line);
  if (hangs_over && t.naming == Naming::full) return std::nullopt;
  if (!fits(extent(d.marks), t.in)) return std::nullopt;
  std::vector<int> left_out;
  const NumberRoom room{{0, 0, t.tank.width, t.tank.depth}, t.size.note};
  add(d.marks, place_numbers(t.in.type, d.marks, t.plants.numbered, room, left_out));
  add_below(d.marks, t, left_out);
  if (!fits(extent(d.marks), t.in)) return std::nullopt;
  Figure f = framed("plan", std::move(d.marks), static_cast<int>(t.tank.scale));
  f.title = t.in.wording.say("figure.plan-title", {{"scale", f.scale}});
  f.alt = plan_description(t.in);
  return f;
}

std::optional<Figure> fitting(const FigureInput& in, int scale, Naming naming) {
  const Tank tank = tank_at(in, scale);
  if (tank.width > in.room_width || tank.depth > in.room_height) return std::nullopt;
  return drawn({in, tank, lettering(in), naming, plants_above(tank)});
}

}  // namespace

// Its page is its own, whatever room the elevation has on the first.
std::optional<Figure> plan_view(const FigureInput& input) {
  FigureInput in = input;
  in.room_height = std::max(in.room_height, in.own_page);
  for (int scale : preferred_scales()) {
    for (Naming naming : {Naming::full, Naming::names, Naming::layers_only}) {
      if (auto figure = fitting(in, scale, naming)) return figure;
    }
  }
  return std::nullopt;
}

}  // namespace loamsheet
