// figure: Plan -> Figures, display lists in millimetres on paper. A figure is a value with its
// own extent: measuring, dumping and drawing are visitors of the same list, so that they cannot
// disagree. Never: a drawing library.
#pragma once
#include <string>
#include <variant>
#include <vector>

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "plan/plan.h"
#include "type/type.h"

namespace loamsheet {

// Paper millimetres, y up from the figure's lower edge.
struct Pen {
  double width = 0.18;         // mm, after ISO 128-2: 0.18, 0.25, 0.35, 0.5, 0.7
  double grey = 0;             // 0 black to 1 white
  std::vector<double> dashes;  // mm; empty: continuous
  bool operator==(const Pen&) const = default;
};

struct Stroke {  // an open or closed line through points
  std::vector<Point> points;
  bool closed = false;
  Pen pen;
};

struct Filled {  // a filled figure without an edge
  std::vector<Point> points;
  double grey = 1;
};

struct Label {
  std::string text;
  Point at;         // left end of the base line, before turning
  double size = 8;  // points
  Face face = Face::regular;
  bool upright = false;  // turned by 90 degrees to the left: reads from the right
  Box box;               // the area it takes up, set when made
};

inline constexpr double leader_dot = 0.4;  // mm, radius of the dot that ends a leader

struct Leader {  // from a label to what it names, ending in a dot
  std::vector<Point> points;
  Pen pen;
};

using Mark = std::variant<Filled, Stroke, Leader, Label>;  // painted in list order

struct Figure {
  std::string id;                // "elevation"
  std::string title, alt;        // words: caption, and description for who cannot see it
  double width = 0, height = 0;  // mm; every mark lies within
  int scale = 1;                 // drawn at 1:scale
  std::vector<Mark> marks;
  bool section_apart = false;  // of an elevation: the side section is a figure of its own
};

struct Figures {
  std::vector<Figure> all;
  const Figure* find(std::string_view id) const;
};

// What figures are made from, and the room there is for each on paper.
struct FigureInput {
  const Build& build;
  const Plan& plan;
  const Wording& wording;
  const Typefaces& type;
  double room_width = 178, room_height = 120;  // mm
  double own_page = 140;                       // mm high, of the plan view, beside its tables
};

// Names of the views that can be drawn; "light" only of a build with a lamp that shines.
const std::vector<std::string>& view_names();

// The figures of the sheet: elevation, plan and, where the elevation goes without it, the section.
Outcome<Figures> make_figures(const FigureInput&);

// One view by its name.
Outcome<Figure> make_figure(const FigureInput&, const std::string& view);

Box extent(const Figure&);
std::string dump(const Figures&);

}  // namespace loamsheet
