// canvas: marks to Cairo's calls. Everything was decided before; nothing is placed here.
#include "draw/canvas.h"

#include <algorithm>
#include <numbers>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr double mm_per_point = 25.4 / 72;

struct Painter {
  const Canvas& on;
  double height;

  cairo_t* cr() const { return on.context; }

  void trace(const std::vector<Point>& points, bool closed) const {
    for (const Point& p : points) cairo_line_to(cr(), p.x, height - p.y);
    if (closed) cairo_close_path(cr());
  }

  void use(const Pen& pen) const {
    cairo_set_source_rgb(cr(), pen.grey, pen.grey, pen.grey);
    cairo_set_line_width(cr(), pen.width);
    cairo_set_dash(cr(), pen.dashes.data(), static_cast<int>(pen.dashes.size()), 0);
  }

  void operator()(const Filled& f) const {
    cairo_set_source_rgb(cr(), f.grey, f.grey, f.grey);
    trace(f.points, true);
    cairo_fill(cr());
  }

  // Neighbours with one pen are one path: hatching is hundreds of short lines.
  void strokes(std::span<const Mark> run) const {
    use(std::get<Stroke>(run.front()).pen);
    for (const Mark& m : run) {
      cairo_new_sub_path(cr());
      trace(std::get<Stroke>(m).points, std::get<Stroke>(m).closed);
    }
    cairo_stroke(cr());
  }

  void operator()(const Stroke&) const {}  // painted in runs

  void operator()(const Leader& l) const {
    use(l.pen);
    trace(l.points, false);
    cairo_stroke(cr());
    const Point dot = l.points.back();
    cairo_arc(cr(), dot.x, height - dot.y, leader_dot, 0, 2 * std::numbers::pi);
    cairo_fill(cr());
  }

  void operator()(const Label& l) const;
};

// Glyphs one by one where the measures put them; the text goes along, so that it can be searched.
struct Run {
  std::vector<cairo_glyph_t> glyphs;
  std::vector<cairo_text_cluster_t> clusters;
};

// The blank that keeps a number with its unit has done its work; it shares a glyph with the plain
// one, and two meanings of a glyph would make Cairo write a second font.
std::string with_plain_blanks(std::string text) {
  for (size_t at; (at = text.find("\u00a0")) != std::string::npos;) text.replace(at, 2, " ");
  return text;
}

Run set_out(const Canvas& on, const Label& l, const std::string& text) {
  Run run;
  double x = 0;
  for (char32_t c : decoded(text)) {
    const std::string letter = utf8(c);
    run.glyphs.push_back({on.faces.glyph(l.face, c), x, 0});
    run.clusters.push_back({static_cast<int>(letter.size()), 1});
    x += on.type.width(l.face, l.size, letter) * mm_per_point;
  }
  return run;
}

void Painter::operator()(const Label& l) const {
  const std::string text = with_plain_blanks(l.text);
  const Run run = set_out(on, l, text);
  cairo_save(cr());
  cairo_set_source_rgb(cr(), 0, 0, 0);
  cairo_translate(cr(), l.at.x, height - l.at.y);
  if (l.upright) cairo_rotate(cr(), -std::numbers::pi / 2);
  cairo_set_font_face(cr(), on.faces[l.face]);
  cairo_set_font_size(cr(), l.size * mm_per_point);
  cairo_show_text_glyphs(cr(), text.data(), static_cast<int>(text.size()), run.glyphs.data(),
                         static_cast<int>(run.glyphs.size()), run.clusters.data(),
                         static_cast<int>(run.clusters.size()),
                         static_cast<cairo_text_cluster_flags_t>(0));
  cairo_restore(cr());
}

// How many marks from the first are strokes with the first's pen; 0 when it is no stroke.
size_t run_length(std::span<const Mark> marks) {
  const auto* first = std::get_if<Stroke>(&marks.front());
  size_t n = 0;
  while (first && n < marks.size()) {
    const auto* next = std::get_if<Stroke>(&marks[n]);
    if (!next || !(next->pen == first->pen)) break;
    ++n;
  }
  return n;
}

}  // namespace

void paint(const Canvas& canvas, const Figure& figure) {
  cairo_set_line_join(canvas.context, CAIRO_LINE_JOIN_MITER);
  const Painter painter{canvas, figure.height};
  std::span<const Mark> rest(figure.marks);
  while (!rest.empty()) {
    const size_t run = run_length(rest);
    if (run > 0)
      painter.strokes(rest.first(run));
    else
      std::visit(painter, rest.front());
    rest = rest.subspan(std::max<size_t>(run, 1));
  }
}

}  // namespace loamsheet
