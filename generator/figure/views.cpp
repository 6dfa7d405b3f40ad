#include "figure/views.h"

#include <algorithm>
#include <array>
#include <future>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr double large_print = 1.25;
constexpr double edge = 0.3;  // mm about the marks: letters may stand a hair beyond their width

Diagnostic no_room(const FigureInput& in, const std::string& view) {
  Diagnostic d;
  d.message = "the " + view + " does not fit " + fixed(in.room_width, 0) + " x " +
              fixed(in.room_height, 0) + " mm at any preferred scale";
  d.fault = Fault::internal;
  return d;
}

Diagnostic no_light() {
  Diagnostic d;
  d.message = "there is no light to draw: no lamp states its flux";
  d.expected = "a lamp with its flux, such as flux: 3000 lm";
  return d;
}

// A view that can be drawn alone. A further view is a further row, and a function of views.h.
struct View {
  std::string_view name;
  std::optional<Figure> (*draw)(const FigureInput&);
  bool of_light = false;  // there is none without a lamp that shines
};
constexpr std::array views{View{"elevation", elevation}, View{"plan", plan_view},
                           View{"light", light_map, true}};

bool is_lit(const FigureInput& in) {
  const auto& lamps = in.build.lamps;
  return std::any_of(lamps.begin(), lamps.end(), [](const Lamp& l) { return l.flux > 0; });
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
  return drawn.width() + 2 * edge <= in.room_width && drawn.height() + 2 * edge <= in.room_height;
}

Figure framed(std::string id, Marks marks, int scale) {
  const Box box = extent(marks);
  shift(marks, edge - box.left, edge - box.bottom);
  Figure f;
  f.id = std::move(id);
  f.scale = scale;
  f.width = box.width() + 2 * edge;
  f.height = box.height() + 2 * edge;
  f.marks = std::move(marks);
  return f;
}

const std::vector<std::string>& view_names() {
  static const std::vector<std::string> names = [] {
    std::vector<std::string> all;
    for (const View& view : views) all.emplace_back(view.name);
    return all;
  }();
  return names;
}

Outcome<Figures> make_figures(const FigureInput& in) {
  std::array drawn{std::async(std::launch::deferred, elevation, std::cref(in)),
                   std::async(std::launch::async, plan_view, std::cref(in))};
  Figures figures;
  Sink sink;
  for (size_t i = 0; i < drawn.size(); ++i) {
    auto figure = drawn[i].get();
    if (!figure) sink.add(no_room(in, view_names()[i]));
    if (figure) figures.all.push_back(std::move(*figure));
  }
  const Figure* front = figures.find("elevation");
  if (front && front->section_apart) {
    auto section = side_view(in);
    if (!section) sink.add(no_room(in, "section"));
    if (section) figures.all.push_back(std::move(*section));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(figures), sink.take()};
}

Outcome<Figure> make_figure(const FigureInput& in, const std::string& view) {
  const View& row =
      *std::find_if(views.begin(), views.end(), [&](const View& v) { return v.name == view; });
  if (row.of_light && !is_lit(in)) return failure<Figure>(no_light());
  auto figure = row.draw(in);
  if (!figure) return failure<Figure>(no_room(in, view));
  return {std::move(*figure), {}};
}

}  // namespace loamsheet
