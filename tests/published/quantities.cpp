#include "quantities.h"

#include "base/date.h"
#include "base/geometry.h"
#include "base/text.h"
#include "plan/fill/mass.h"
#include "plan/fill/water_density.h"
#include "plan/shop/lift.h"

namespace loamsheet::tests {
namespace {

double number(const Inputs& in, const std::string& name) {
  return std::stod(in.at(name));
}

Millimetres length(const Inputs& in, const std::string& name) {
  return {number(in, name)};
}

std::string shown(double v) {
  return significant(v, 15);
}

Enclosure glass_box(const Inputs& in, Millimetres height) {
  Enclosure tank;
  tank.footprint = rectangle(length(in, "width"), length(in, "depth"));
  tank.height = height;
  tank.walls.thickness = length(in, "thickness");
  tank.walls.density = {number(in, "density")};
  return tank;
}

// What a bow-front adds to a box of the same chord.
double segment(const Inputs& in, double (*measure)(const Region&)) {
  const Millimetres chord = length(in, "chord");
  return measure(bow_front(chord, 1_mm, length(in, "rise"))) - measure(rectangle(chord, 1_mm));
}

double square_millimetres(const Region& r) {
  return area(r).v * 1e6;
}
double around(const Region& r) {
  return perimeter(r).v;
}

double or_else(const Inputs& in, const std::string& name, double value) {
  return in.count(name) ? number(in, name) : value;
}

// Lengths in centimetres.
Kilograms limit_of(const Inputs& in, double centimetres) {
  LiftTask task;
  task.horizontal = centimetres * number(in, "h");
  task.vertical = centimetres * number(in, "v");
  task.travel = centimetres * number(in, "d");
  task.twist = or_else(in, "a", 0);
  task.per_minute = or_else(in, "f", 0.2);
  task.coupling = or_else(in, "coupling", 1);
  return weight_limit(task);
}

// The manual states its equation twice, and in whole numbers: 10 in stand for 25 cm and 51 lb for
// 23 kg. On that scale its two forms are one.
double limit_in_pounds(const Inputs& in) {
  return limit_of(in, 2.5).v * 51 / 23;
}

Region disc(const Inputs& in) {
  return circle(length(in, "radius") * 2);
}

Date date(const Inputs& in) {
  return *parse_date(in.at("date"));
}

int day_of_year(Date d) {
  return days_between(*parse_date(iso(d).substr(0, 4) + "-01-01"), d) + 1;
}

}  // namespace

const std::map<std::string, Quantity>& quantities() {
  static const std::map<std::string, Quantity> all = {
      {"water_density", [](const Inputs& in) { return shown(water_density({number(in, "t")}).v); }},
      {"pane_mass", [](const Inputs& in) { return shown(empty_mass(glass_box(in, 0_mm)).v); }},
      {"open_box_mass",
       [](const Inputs& in) { return shown(empty_mass(glass_box(in, length(in, "height"))).v); }},
      {"weight_limit", [](const Inputs& in) { return shown(limit_of(in, 1).v); }},
      {"weight_limit_lb", [](const Inputs& in) { return shown(limit_in_pounds(in)); }},
      {"segment_area", [](const Inputs& in) { return shown(segment(in, square_millimetres)); }},
      {"segment_arc",
       [](const Inputs& in) { return shown(segment(in, around) + number(in, "chord")); }},
      {"disc_area", [](const Inputs& in) { return shown(square_millimetres(disc(in))); }},
      {"disc_perimeter", [](const Inputs& in) { return shown(around(disc(in))); }},
      {"weekday", [](const Inputs& in) { return std::to_string(weekday(date(in)) + 1); }},
      {"day_of_year", [](const Inputs& in) { return std::to_string(day_of_year(date(in))); }},
      {"is_date", [](const Inputs& in) { return parse_date(in.at("date")) ? "yes" : "no"; }},
      {"later",
       [](const Inputs& in) {
         return iso(plus_days(date(in), static_cast<int>(number(in, "days"))));
       }},
  };
  return all;
}

}  // namespace loamsheet::tests
