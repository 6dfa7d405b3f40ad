#include "figure/numbers.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

namespace loamsheet {
namespace {

constexpr double least_radius = 1.75, inner_gap = 0.3;  // mm
constexpr double clear = 0.35;                          // mm, around a circle
constexpr double ring = 0.7, farthest = 60;             // mm, of the places tried
constexpr int turns = 24;                               // places on a ring
constexpr double over_line = 5;      // mm that a place is worth less for hiding a line
constexpr double far_from_it = 1.5;  // mm that a place is worth less for needing a leader
const Pen circle_pen{0.25, 0, {}};

struct Segment {
  Point from, to;
  Box box = box_of(from, to);
};

Box grown(const Box& b, double by) {
  return {b.left - by, b.bottom - by, b.right + by, b.top + by};
}

Box square_at(Point p, double half) {
  return grown({p.x, p.y, p.x, p.y}, half);
}

double distance(Point p, const Box& b) {
  return std::hypot(std::max({b.left - p.x, 0.0, p.x - b.right}),
                    std::max({b.bottom - p.y, 0.0, p.y - b.top}));
}

void add_segments(const std::vector<Point>& points, bool closed, std::vector<Segment>& to) {
  for (size_t i = 0; i + 1 < points.size(); ++i) to.push_back({points[i], points[i + 1]});
  if (closed && points.size() > 2) to.push_back({points.back(), points.front()});
}

// What lies around, and what was placed so far.
struct Surroundings {
  std::vector<Segment> leaders, lines;  // never touched; better not hidden
  std::vector<Box> taken;               // labels and circles

  explicit Surroundings(const Marks& marks) {
    for (const Mark& m : marks) {
      if (const auto* l = std::get_if<Label>(&m)) taken.push_back(l->box);
      if (const auto* l = std::get_if<Leader>(&m)) add_segments(l->points, false, leaders);
      const auto* s = std::get_if<Stroke>(&m);
      if (s && s->pen.width >= 0.25) add_segments(s->points, s->closed, lines);
    }
  }
};

bool meets_any(const std::vector<Segment>& segments, const Box& box) {
  return std::any_of(segments.begin(), segments.end(), [&](const Segment& s) {
    return s.box.overlaps(box, 1e-9) && segment_meets(s.from, s.to, box);
  });
}

class Placer {
 public:
  Placer(const Typefaces& type, const Marks& around, const std::vector<Numbered>& all,
         const NumberRoom& room)
      : type_(type), around_(around), all_(all), room_(room) {}

  bool place(const Numbered& n, Marks& out) {
    const double radius = radius_of(n);
    const auto place = best(n, radius);
    if (!place) return false;
    if (!place->at_symbol) {
      const Segment path = leader(n, place->at, radius);
      out.push_back(Leader{{path.from, path.to}, pen::narrow});
      around_.leaders.push_back(path);
    }
    around_.taken.push_back(square_at(place->at, radius));
    draw(n, place->at, radius, out);
    return true;
  }

 private:
  struct Place {
    Point at;
    bool at_symbol;
    double cost;
  };

  Label label(const Numbered& n, Point at) const {
    return label_at(type_, {std::to_string(n.number), room_.size}, at);
  }

  double radius_of(const Numbered& n) const {
    const Box b = label(n, {}).box;
    return std::max(least_radius, std::hypot(b.width(), b.height()) / 2 + inner_gap);
  }

  void draw(const Numbered& n, Point at, double radius, Marks& out) const {
    const Box b = label(n, {}).box;
    const double half = std::hypot(b.width(), b.height()) / 2 + 0.05;
    if (std::hypot(at.x - n.wanted.x, at.y - n.wanted.y) + half <= n.round) {
      out.push_back(Filled{circle_points(at, half), plant_tone});
    } else {
      const auto disc = circle_points(at, radius);
      out.push_back(Filled{disc, 1});
      out.push_back(Stroke{disc, true, circle_pen});
    }
    out.push_back(label(n, {at.x - (b.left + b.right) / 2, at.y - (b.bottom + b.top) / 2}));
  }

  // From the circle's edge to the middle of the symbol.
  static Segment leader(const Numbered& n, Point at, double radius) {
    const Point to{(n.symbol.left + n.symbol.right) / 2, (n.symbol.bottom + n.symbol.top) / 2};
    const double far = std::hypot(to.x - at.x, to.y - at.y);
    return {{at.x + (to.x - at.x) * radius / far, at.y + (to.y - at.y) * radius / far}, to};
  }

  // Nobody can take the number for another thing's.
  bool stands_at(const Numbered& n, Point at, double radius) const {
    const double own = distance(at, n.symbol);
    if (own > radius + clear) return false;
    return std::all_of(all_.begin(), all_.end(), [&](const Numbered& other) {
      return other.number == n.number || distance(at, other.symbol) > radius + clear;
    });
  }

  bool is_free(Point at, double radius) const {
    const Box box = square_at(at, radius + clear);
    const Box& in = room_.within;
    if (!in.contains({box.left, box.bottom}) || !in.contains({box.right, box.top})) return false;
    return !meets_any(around_.leaders, box) &&
           std::none_of(around_.taken.begin(), around_.taken.end(),
                        [&](const Box& b) { return b.overlaps(box); });
  }

  bool leader_is_free(const Segment& path) const {
    const Box end = square_at(path.to, leader_dot + 0.1);
    return !meets_any(around_.leaders, end) &&
           std::none_of(
               around_.leaders.begin(), around_.leaders.end(),
               [&](const Segment& s) { return segments_meet(s.from, s.to, path.from, path.to); }) &&
           std::none_of(around_.taken.begin(), around_.taken.end(), [&](const Box& b) {
             return segment_meets(path.from, path.to, grown(b, 0.1));
           });
  }

  // The place with what it costs, if it is free and costs less than `limit`.
  std::optional<Place> look_at(const Numbered& n, Point at, double radius, double limit) const {
    const bool at_symbol = stands_at(n, at, radius);
    Place place{at, at_symbol, std::hypot(at.x - n.wanted.x, at.y - n.wanted.y)};
    if (!at_symbol) place.cost += far_from_it;
    if (place.cost >= limit || !is_free(at, radius)) return std::nullopt;
    if (!at_symbol) {
      const Point middle = leader(n, {at.x + 1e-9, at.y}, radius).to;
      if (std::hypot(middle.x - at.x, middle.y - at.y) < radius + 2 * leader_dot) return {};
      if (!leader_is_free(leader(n, at, radius))) return std::nullopt;
    }
    if (meets_any(around_.lines, square_at(at, radius))) place.cost += over_line;
    return place.cost < limit ? std::optional(place) : std::nullopt;
  }

  std::optional<Place> best(const Numbered& n, double radius) const {
    std::optional<Place> found;
    for (double away = 0; away < (found ? found->cost : farthest); away += ring) {
      for (int k = 0; k < (away == 0 ? 1 : turns); ++k) {
        const double angle = std::numbers::pi * (0.5 + 2.0 * k / turns);
        const Point at{n.wanted.x + away * std::cos(angle), n.wanted.y + away * std::sin(angle)};
        const double limit = found ? found->cost - 1e-9 : std::numeric_limits<double>::max();
        if (const auto place = look_at(n, at, radius, limit)) found = place;
      }
    }
    return found;
  }

  const Typefaces& type_;
  Surroundings around_;
  const std::vector<Numbered>& all_;
  const NumberRoom& room_;
};

double side(Point a, Point b, Point p) {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

}  // namespace

std::vector<Point> circle_points(Point middle, double radius) {
  std::vector<Point> points;
  const int count = std::max(24, static_cast<int>(radius * 8));
  for (int i = 0; i < count; ++i) {
    const double angle = 2 * std::numbers::pi * i / count;
    points.push_back({middle.x + radius * std::cos(angle), middle.y + radius * std::sin(angle)});
  }
  return points;
}

bool segments_meet(Point a, Point b, Point c, Point d) {
  if (!box_of(a, b).overlaps(box_of(c, d), 1e-9)) return false;
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}

bool segment_meets(Point a, Point b, const Box& box) {
  if (!box_of(a, b).overlaps(box, 1e-9)) return false;
  if (box.contains(a) || box.contains(b)) return true;
  return segments_meet(a, b, {box.left, box.bottom}, {box.right, box.top}) ||
         segments_meet(a, b, {box.left, box.top}, {box.right, box.bottom});
}

Marks place_numbers(const Typefaces& type, const Marks& around, const std::vector<Numbered>& all,
                    const NumberRoom& room, std::vector<int>& left_out) {
  Marks out;
  Placer placer(type, around, all, room);
  for (const Numbered& n : all) {
    if (!placer.place(n, out)) left_out.push_back(n.number);
  }
  return out;
}

}  // namespace loamsheet
