#include "figure/views.h"

#include <array>
#include <future>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr double large_print = 1.25;

Diagnostic no_room(const FigureInput& in, const std::string& view) {
  Diagnostic d;
  d.message = "the " + view + " does not fit " + fixed(in.room_width, 0) + " x " +
              fixed(in.room_height, 0) + " mm at any preferred scale";
  d.fault = Fault::internal;
  return d;
}

}  // namespace

Lettering lettering(const FigureInput& in) {
  const double by = in.build.print.large ? large_print : 1;
  const Lettering plain;
  return {plain.dimension * by, plain.label * by, plain.note * by};
}

Marks text_block(const Typefaces& type, const std::vector<Text>& lines, Point first) {
  Marks out;
  for (const Text& text : lines) {
    out.push_back(label_at(type, text, first));
    first.y -= pitch_mm(text);
  }
  return out;
}

bool fits(const Box& drawn, const FigureInput& in) {
  return drawn.width() <= in.room_width && drawn.height() <= in.room_height;
}

Figure framed(std::string id, Marks marks, int scale) {
  const Box box = extent(marks);
  shift(marks, -box.left, -box.bottom);
  Figure f;
  f.id = std::move(id);
  f.scale = scale;
  f.width = box.width();
  f.height = box.height();
  f.marks = std::move(marks);
  return f;
}

const std::vector<std::string>& view_names() {
  static const std::vector<std::string> names{"elevation", "plan"};
  return names;
}

Outcome<Figures> make_figures(const FigureInput& in) {
  std::array views{std::async(std::launch::deferred, elevation, std::cref(in)),
                   std::async(std::launch::async, plan_view, std::cref(in))};
  Figures figures;
  Sink sink;
  for (size_t i = 0; i < views.size(); ++i) {
    auto figure = views[i].get();
    if (!figure) sink.add(no_room(in, view_names()[i]));
    if (figure) figures.all.push_back(std::move(*figure));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(figures), sink.take()};
}

}  // namespace loamsheet
