#include "layout/measure.h"

#include <algorithm>
#include <limits>

#include "layout/atoms.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-6;  // points: sums of the same widths may differ by rounding

struct Best {
  double cost = std::numeric_limits<double>::infinity();
  size_t from = 0;
};

// What a line costs: one for the line itself, its free share squared unless it ends the
// paragraph, a little for a break inside a word and for a last line of next to nothing.
double cost(double free, Gap end) {
  if (end == Gap::line) return free > 0.8 ? 1.05 : 1;
  return 1 + 0.25 * free * free + (end == Gap::seam ? 0.05 : 0);
}

// For every atom that may start a line (and the end), the line before it on the best way there.
std::vector<Best> best_ways(const std::vector<Atom>& atoms, double measure) {
  std::vector<Best> best(atoms.size() + 1);
  best[0].cost = 0;
  for (size_t from = 0; from < atoms.size(); ++from) {
    double width = 0;
    for (size_t to = from + 1; to <= atoms.size(); ++to) {
      const Atom& last = atoms[to - 1];
      width += last.width;
      if (width > measure + hair && to > from + 1) break;
      const double free = std::max(0.0, measure - width) / measure;
      const double total = best[from].cost + cost(free, last.after);
      if (last.after != Gap::none && total < best[to].cost) best[to] = {total, from};
      if (last.after == Gap::line) break;
      width += last.blank;
    }
  }
  return best;
}

void append(Line& line, const Atom& atom) {
  if (line.pieces.empty() || line.pieces.back().face != atom.face) {
    line.pieces.push_back({"", atom.face, line.width, 0});
  }
  Piece& piece = line.pieces.back();
  piece.text += atom.text;
  piece.width += atom.width;
  line.width += atom.width;
}

Line line_of(const std::vector<Atom>& atoms, size_t from, size_t to) {
  Line line;
  for (size_t i = from; i < to; ++i) {
    append(line, atoms[i]);
    if (i + 1 < to && atoms[i].after == Gap::blank) {
      append(line, {" ", atoms[i].face, atoms[i].blank, Gap::none, 0});
    }
  }
  if (to > from && atoms[to - 1].after == Gap::blank) line.pieces.back().text += ' ';
  return line;
}

}  // namespace

TextStyle text_style(const PageStyle& style, const std::string& name, const Typefaces& type) {
  TextStyle text;
  text.size = style[name + ".size"];
  text.leading = style[name + ".leading"];
  text.grey = style.has(name + ".grey") ? style[name + ".grey"] : 0;
  text.drop = (text.leading + type.metrics(Face::regular).cap_height * text.size) / 2;
  return text;
}

std::vector<Line> break_lines(const Words& words, double size, double measure,
                              const Typefaces& type) {
  const auto parts = broken_by_force(atoms(words, size, type), size, measure, type);
  const auto best = best_ways(parts, measure);
  std::vector<Line> lines;
  for (size_t to = parts.size(); to > 0; to = best[to].from) {
    lines.push_back(line_of(parts, best[to].from, to));
  }
  std::reverse(lines.begin(), lines.end());
  return lines;
}

Need need(const Words& words, double size, const Typefaces& type) {
  Need n;
  double whole = 0, piece = 0;
  for (const Atom& atom : atoms(words, size, type)) {
    piece += atom.width;
    whole += atom.width;
    n.least = std::max(n.least, piece);
    n.most = std::max(n.most, whole);
    if (atom.after != Gap::none) piece = 0;
    whole = atom.after == Gap::line ? 0 : whole + atom.blank;
  }
  return n;
}

Words in_face(std::string text, Face face) {
  return {{std::move(text), face}};
}

}  // namespace loamsheet
