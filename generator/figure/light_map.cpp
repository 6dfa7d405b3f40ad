// light map: photon flux density on level leaves in an upright plane midway between front and back,
// as bands of grey between contour lines with their values.
#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "figure/contours.h"
#include "figure/dimensioned.h"
#include "figure/hatch.h"
#include "figure/light_plane.h"
#include "figure/opening.h"
#include "figure/scale.h"
#include "figure/views.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

// mm on paper.
constexpr double half_page = 112;
constexpr double level_line = 5.8, side_line = 5.0;  // from the walls to a dimension line
constexpr double fan = 6.5, note_line = 4.4;
constexpr double around_label = 0.7;  // of a contour, kept free
constexpr double long_run = 30;       // of a line that has its value even when it is not alone
constexpr double least_run = 3;       // of a line that is drawn
constexpr double darkest = 0.74;      // grey
const Pen contour_pen{0.25, 0, {}}, lamp_pen{0.35, 0, {}};

struct Trial {
  const FigureInput& in;
  Tank tank;
  Lettering size;
  LightPlane plane;
};

// A ring with the level that it stands for.
struct Contour {
  size_t level;
  Ring ring;
};

std::vector<Contour> contours_at(const Samples& samples, const std::vector<double>& levels) {
  std::vector<Contour> all;
  for (size_t i = 0; i < levels.size(); ++i) {
    for (Ring& ring : contours(samples, std::log(levels[i]))) all.push_back({i, std::move(ring)});
  }
  return all;
}

// The large ones first: a ring lies within every larger one that it meets.
Marks bands(const Samples& samples, std::vector<Contour> all, size_t levels) {
  std::stable_sort(all.begin(), all.end(), [](const Contour& a, const Contour& b) {
    return std::fabs(a.ring.area) > std::fabs(b.ring.area);
  });
  const auto tone = [&](size_t band) {
    return darkest + (1 - darkest) * static_cast<double>(band) / static_cast<double>(levels);
  };
  Marks out{filled(samples.box, tone(0))};
  for (Contour& c : all) {
    out.push_back(Filled{std::move(c.ring.points), tone(c.ring.area > 0 ? c.level + 1 : c.level)});
  }
  return out;
}

using Runs = std::vector<std::vector<Point>>;

// Where the value of a run may stand: best where the run is level and near the middle.
struct Spot {
  Point at;
  double cost;
};

std::vector<Spot> spots_on(const std::vector<Point>& run, const Box& box) {
  std::vector<Spot> spots;
  for (size_t i = 0; i + 1 < run.size(); ++i) {
    const Point &a = run[i], &b = run[i + 1];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    if (length == 0) continue;
    const Point middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const double aside = std::fabs(middle.x - (box.left + box.right) / 2) / box.width();
    spots.push_back({middle, std::fabs(b.y - a.y) / length + aside});
  }
  std::stable_sort(spots.begin(), spots.end(),
                   [](const Spot& a, const Spot& b) { return a.cost < b.cost; });
  return spots;
}

double length(const std::vector<Point>& run) {
  double sum = 0;
  for (size_t i = 0; i + 1 < run.size(); ++i) {
    sum += std::hypot(run[i + 1].x - run[i].x, run[i + 1].y - run[i].y);
  }
  return sum;
}

Box grown(const Box& b, double by) {
  return {b.left - by, b.bottom - by, b.right + by, b.top + by};
}

bool meets(const std::vector<Point>& run, const Box& box) {
  const auto region = rectangle_points(box);
  for (size_t i = 0; i + 1 < run.size(); ++i) {
    if (!box_of(run[i], run[i + 1]).overlaps(box)) continue;
    if (clipped(run[i], run[i + 1], region)) return true;
  }
  return false;
}

// What is left of a line when a box, if there is one, is taken out of it.
void draw_around(const std::vector<Point>& run, const Box& box, Marks& out) {
  if (box.empty()) {
    if (length(run) >= least_run) out.push_back(Stroke{run, false, contour_pen});
    return;
  }
  const auto region = rectangle_points(box);
  std::vector<Point> part;
  const auto end = [&] {
    if (length(part) >= least_run) out.push_back(Stroke{part, false, contour_pen});
    part.clear();
  };
  for (size_t i = 0; i + 1 < run.size(); ++i) {
    const auto cut = clipped(run[i], run[i + 1], region);
    if (part.empty()) part.push_back(run[i]);
    if (!cut) {
      part.push_back(run[i + 1]);
      continue;
    }
    part.push_back(cut->first);
    end();
    if (!(cut->second == run[i + 1])) part = {cut->second, run[i + 1]};
  }
  end();
}

// The contour lines with their values: every long run has its own, a short one only when none of
// its level is longer. A level whose value finds no place is told in `unsaid`.
class Lines {
 public:
  Lines(const Trial& t, const std::vector<double>& levels, const std::vector<Contour>& all)
      : t_(t), levels_(levels), runs_(levels.size()) {
    for (const Contour& c : all) {
      for (auto& run : inner_runs(c.ring, t.plane.samples.box)) {
        runs_[c.level].push_back(std::move(run));
      }
    }
    for (const Box& box : t.plane.taken) taken_.push_back(box);
  }

  Marks drawn(std::vector<size_t>& unsaid) {
    Marks lines, values;
    for (size_t i = 0; i < levels_.size(); ++i) {
      if (runs_[i].empty()) continue;
      double longest = 0;
      for (const auto& run : runs_[i]) longest = std::max(longest, length(run));
      bool said = false;
      for (const auto& run : runs_[i]) {
        const bool wanted = length(run) >= std::min(longest, long_run);
        said |= draw(run, wanted ? placed(i, run) : std::nullopt, lines, values);
      }
      if (!said) unsaid.push_back(i);
    }
    add(lines, t_.plane.things);
    add(lines, std::move(values));
    return lines;
  }

 private:
  bool draw(const std::vector<Point>& run, const std::optional<Label>& label, Marks& lines,
            Marks& values) {
    const Box gap = label ? grown(label->box, around_label) : Box{};
    draw_around(run, gap, lines);
    if (!label) return false;
    taken_.push_back(gap);
    values.push_back(*label);
    return true;
  }

  std::optional<Label> placed(size_t level, const std::vector<Point>& run) const {
    const Text text{significant(levels_[level], 3), t_.size.note};
    const Box size = label_at(t_.in.type, text, {}).box;
    for (const Spot& spot : spots_on(run, t_.plane.samples.box)) {
      const Point at{spot.at.x - (size.left + size.right) / 2,
                     spot.at.y - (size.bottom + size.top) / 2};
      Label label = label_at(t_.in.type, text, at);
      if (is_free(run, grown(label.box, around_label))) return label;
    }
    return std::nullopt;
  }

  bool is_free(const std::vector<Point>& run, const Box& box) const {
    const Box& in = t_.plane.samples.box;
    if (!in.contains({box.left, box.bottom}) || !in.contains({box.right, box.top})) return false;
    for (const Box& other : taken_) {
      if (other.overlaps(box)) return false;
    }
    for (size_t i = 0; i < runs_.size(); ++i) {
      for (const auto& other : runs_[i]) {
        if (&other != &run && meets(other, box)) return false;
      }
    }
    return true;
  }

  const Trial& t_;
  const std::vector<double>& levels_;
  std::vector<Runs> runs_;
  std::vector<Box> taken_;
};

// A value that finds no place takes its line and band with it.
Marks field(const Trial& t) {
  std::vector<double> levels = light_levels(t.plane.least, t.plane.most);
  while (true) {
    const auto all = contours_at(t.plane.samples, levels);
    std::vector<size_t> unsaid;
    Marks lines = Lines(t, levels, all).drawn(unsaid);
    if (!unsaid.empty()) {
      levels.erase(levels.begin() + static_cast<long>(unsaid.front()));
      continue;
    }
    Marks out = bands(t.plane.samples, all, levels.size());
    add(out, std::move(lines));
    return out;
  }
}

Marks walls(const Trial& t) {
  const Tank& k = t.tank;
  const double w = k.wall, top = k.height + top_thickness(k);
  Marks out{filled({0, 0, k.width, t.plane.samples.box.bottom}, 1)};
  out.push_back(
      line({0, t.plane.samples.box.bottom}, {k.width, t.plane.samples.box.bottom}, pen::wide));
  add(out, cut_wall({-w, -w, k.width + w, 0}));
  add(out, cut_wall({-w, 0, 0, top}));
  add(out, cut_wall({k.width, 0, k.width + w, top}));
  add(out, cut_top(k, {0, k.width}, false));
  return out;
}

// A bar or panel from its side; a spot as a cone that opens downwards.
Marks lamp_sign(const Tank& k, const Lamp& lamp) {
  const double x = k.x(lamp.at.x), z = lamp.at.z / k.scale, half = k.paper(lamp.length) / 2;
  const bool cone = lamp.kind->sign == LampKind::Sign::cone;
  const std::vector<Point> points =
      cone ? std::vector<Point>{{x - 1.3, z}, {x + 1.3, z}, {x + 0.5, z + 1.5}, {x - 0.5, z + 1.5}}
           : rectangle_points({x - half, z, x + half, z + 1.2});
  return {Filled{points, 1}, Stroke{points, true, lamp_pen}};
}

Drawing lamps(const Trial& t) {
  Drawing d;
  for (const Lamp& lamp : t.in.build.lamps) {
    if (lamp.flux <= 0) continue;
    Marks sign = lamp_sign(t.tank, lamp);
    const Box box = extent(sign);
    Target target = lamp_label(t.in, lamp);
    target.at = {box.right - 0.6, (box.bottom + box.top) / 2};
    d.targets.push_back(std::move(target));
    add(d.marks, std::move(sign));
  }
  return d;
}

Marks dimensions(const Trial& t) {
  const Tank& k = t.tank;
  const Dimensioner by{t.in.type, t.size.dimension};
  Marks out = by.level(measured(k, 0, k.width), {-k.wall - level_line, -k.wall});
  add(out, by.upright({measured(k, 0, k.height)}, {-k.wall - side_line, -k.wall}));
  return out;
}

std::vector<Text> note_lines(const Trial& t) {
  std::vector<Text> lines;
  for (std::string& said : notes(t.in, static_cast<int>(t.tank.scale))) {
    lines.push_back({std::move(said), t.size.note});
  }
  for (const char* key : {"figure.light-note", "figure.light-plane"}) {
    lines.push_back({t.in.wording.say(key), t.size.note});
  }
  return lines;
}

Figure drawn(const Trial& t) {
  Drawing lit = lamps(t);
  Column column;
  column.edge = std::max(t.tank.width + t.tank.wall, extent(lit.marks).right) + 1.2;
  column.left = column.edge + fan;
  column.width = 35 * t.size.label / 8;
  column.limits = {0, std::max(t.tank.height, extent(lit.marks).top) + 4};
  Marks marks = field(t);
  add(marks, walls(t));
  add(marks, std::move(lit.marks));
  add(marks, place_labels(t.in.type, t.size, std::move(lit.targets), column));
  add(marks, dimensions(t));
  const Box box = extent(marks);
  add(marks, text_block(t.in.type, note_lines(t), {box.left, box.bottom - note_line}));
  Figure f = framed("light", std::move(marks), static_cast<int>(t.tank.scale));
  f.title = t.in.wording.say("figure.light-title", {{"scale", f.scale}});
  f.alt = t.in.wording.say("figure.alt-light", {{"least", significant(t.plane.ground.low, 2)},
                                                {"most", significant(t.plane.ground.high, 2)}});
  return f;
}

bool hopeless(const Tank& k, const FigureInput& in) {
  return k.width + fan + 30 > in.room_width || k.height + 22 > half_page;
}

}  // namespace

std::optional<Figure> light_map(const FigureInput& in) {
  for (int scale : preferred_scales()) {
    const Tank tank = tank_at(in, scale);
    if (hopeless(tank, in)) continue;
    Figure f = drawn({in, tank, lettering(in), light_plane(tank)});
    if (f.width <= in.room_width && f.height <= half_page) return f;
  }
  return std::nullopt;
}

}  // namespace loamsheet
