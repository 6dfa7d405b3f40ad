// numbers: the numbers of plants in small circles, on or beside what they belong to, clear of
// each other, of every label and of every leader.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

// Something that gets a number: the area of its symbol, and where the number had best stand.
struct Numbered {
  int number = 0;
  Box symbol;
  Point wanted;
  double round = 0;  // mm: radius of a symbol that is a circle; the number may stand in it bare
};

struct NumberRoom {
  Box within;         // the circles stay inside
  double size = 7.5;  // points
};

// The circles, each with a leader where it cannot stand at its symbol. One that finds no place at
// all is left out; its number is added to `left_out`.
Marks place_numbers(const Typefaces&, const Marks& around, const std::vector<Numbered>&,
                    const NumberRoom&, std::vector<int>& left_out);

// A circle as points.
std::vector<Point> circle_points(Point middle, double radius);

inline constexpr double plant_tone = 0.9;  // of plants, as grey

// Whether a segment comes into a box.
bool segment_meets(Point a, Point b, const Box&);

// Whether two segments have a point in common.
bool segments_meet(Point a, Point b, Point c, Point d);

}  // namespace loamsheet
