// side view: the side section as a figure of its own, broken off above the layers, with their
// depths, to the largest preferred scale that leaves room for the tables of its page.
#include <algorithm>

#include "figure/dimensioned.h"
#include "figure/scale.h"
#include "figure/views.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

constexpr double tallest = 75;      // mm on paper
constexpr double clear_word = 9.0;  // mm, to the left of the word "front"

Marks drawn(const Tank& tank, const Lettering& size) {
  Marks out = dimensioned_section(tank, size, std::min(above_layers(tank), tank.height));
  Marks depths = layer_depths(tank, size);
  shift(depths, -clear_word + first_line, 0);
  add(out, std::move(depths));
  return out;
}

}  // namespace

std::optional<Figure> side_view(const FigureInput& in) {
  for (int scale : preferred_scales()) {
    const Tank tank = tank_at(in, scale);
    if (tank.depth > in.room_width) continue;
    Marks marks = drawn(tank, lettering(in));
    const Box box = extent(marks);
    if (!fits(box, in) || box.height() > tallest) continue;
    Figure f = framed("section", std::move(marks), scale);
    f.title = in.wording.say("figure.title-section", {{"scale", scale}});
    f.alt = description(in, "figure.section");
    return f;
  }
  return std::nullopt;
}

}  // namespace loamsheet
