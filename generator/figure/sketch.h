// sketch: marks and the pens they are drawn with; how the parts of a figure are put together.
#pragma once
#include <vector>

#include "figure/figure.h"

namespace loamsheet {

using Marks = std::vector<Mark>;

inline constexpr double mm_per_point = 25.4 / 72;

// Widths after ISO 128-2: narrow for dimensions, hatching and leaders, wide for visible outlines.
namespace pen {
inline const Pen hatch{0.18, 0.25, {}};
inline const Pen narrow{0.18, 0, {}};
inline const Pen thin{0.25, 0, {}};
inline const Pen hidden{0.18, 0, {1.6, 0.8}};
inline const Pen wide{0.5, 0, {}};
inline const Pen grown_up{0.25, 0.4, {0.5, 0.9}};  // dotted: plants when mature
inline const Pen mesh{0.5, 0, {2.4, 1.0}};
inline const Pen chain{0.25, 0, {4.0, 0.8, 0.4, 0.8}};  // long dash and dot
}  // namespace pen

// Sizes of the lettering in points.
struct Lettering {
  double dimension = 8, label = 8, note = 7.5;
};

std::vector<Point> rectangle_points(const Box&);
Box box_of(Point a, Point b);

Mark line(Point a, Point b, const Pen& = pen::narrow);
Mark outline_of(const Box&, const Pen&);
Mark filled(const Box&, double grey);

// A text with its area. `at` is the left end of the base line.
struct Text {
  std::string words;
  double size = 8;
  Face face = Face::regular;
};
double width_mm(const Typefaces&, const Text&);
double pitch_mm(const Text&);  // from one base line to the next
Label label_at(const Typefaces&, const Text&, Point at, bool upright = false);

void add(Marks& to, Marks more);
void shift(Marks&, double dx, double dy);
Box extent(const Mark&);
Box extent(const Marks&);

}  // namespace loamsheet
