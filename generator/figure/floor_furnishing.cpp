// floor: furnishings from above.
#include <algorithm>

#include "figure/floor.h"
#include "figure/furnishing_signs.h"
#include "figure/numbers.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

using Points = std::vector<Point>;

double base_height(const Furnishing& thing) {
  return thing.kind->spans() ? std::min(thing.from.z, thing.to.z) : thing.at.z;
}

// Nothing is drawn beyond the walls.
void keep_in(Marks& marks, const Tank& t) {
  const auto into = [&](Points& points) {
    for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, t.depth)};
  };
  for (Mark& m : marks) {
    if (auto* s = std::get_if<Stroke>(&m)) into(s->points);
    if (auto* f = std::get_if<Filled>(&m)) into(f->points);
  }
}

}  // namespace

// What lies lower is drawn first.
Drawing furnishings_above(const Tank& t) {
  std::vector<const Furnishing*> things;
  for (const Furnishing& thing : t.in.build.furnishings) things.push_back(&thing);
  std::stable_sort(things.begin(), things.end(), [](const Furnishing* a, const Furnishing* b) {
    return base_height(*a) < base_height(*b);
  });
  Drawing d;
  for (const Furnishing* thing : things) {
    Marks marks = seen_from_above(t, *thing);
    keep_in(marks, t);
    const Box box = extent(marks);
    Target target = furnishing_label(t.in, *thing);
    target.at = {box.right - std::min(0.8, box.width() / 4), (box.bottom + box.top) / 2};
    if (thing->turned == 0) target.slack = box.height() / 4;
    if (thing->kind->spans()) {
      target.slack = 0;
      const Position& end = thing->from.x > thing->to.x ? thing->from : thing->to;
      const Position& other = thing->from.x > thing->to.x ? thing->to : thing->from;
      target.at = {t.x(end.x * 0.95 + other.x * 0.05), t.y(end.y * 0.95 + other.y * 0.05)};
    }
    d.targets.push_back(std::move(target));
    add(d.marks, std::move(marks));
  }
  return d;
}

}  // namespace loamsheet
