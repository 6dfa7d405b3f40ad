#include "plan/light.h"

#include <array>
#include <cmath>
#include <numbers>

#include "plan/climate.h"
#include "plan/lamp_path.h"

namespace loamsheet {
namespace {

using std::numbers::pi;

constexpr int line_parts = 8;   // of a bar, each with its own way through the top
constexpr int panel_parts = 4;  // of a panel, along each side
constexpr double mm_per_m = 1000;
constexpr double mol_in_hour = 0.0036;  // of 1 umol a second

// A lamp as seen from the place it lights, in metres.
struct View {
  const Enclosure& tank;
  const Lamp& lamp;
  const Position& to;
  double x, y, down;  // of the lamp's middle, seen from the place

  // What the top lets through from a point of the lamp at these offsets from its middle.
  double open(double along, double across) const {
    const Position from{lamp.at.x + along * mm_per_m, lamp.at.y + across * mm_per_m, lamp.at.z};
    return light_let_through(tank, from, to);
  }
};

double from_line(const View& v) {
  const double length = v.lamp.length.v / mm_per_m, part = length / line_parts;
  double sum = 0, before = line_factor(v.x - length / 2, v.y, v.down);
  for (int i = 0; i < line_parts; ++i) {
    const double end = (i + 1) * part - length / 2;
    const double here = line_factor(v.x + end, v.y, v.down);
    sum += (here - before) * v.open(end - part / 2, 0);
    before = here;
  }
  return v.lamp.flux / (pi * length) * sum;
}

using Corners = std::array<std::array<double, panel_parts + 1>, panel_parts + 1>;

Corners panel_corners(const View& v, double length, double width) {
  Corners corners;
  for (int i = 0; i <= panel_parts; ++i) {
    for (int j = 0; j <= panel_parts; ++j) {
      corners[i][j] = corner_factor(v.x + length * (double(i) / panel_parts - 0.5),
                                    v.y + width * (double(j) / panel_parts - 0.5), v.down);
    }
  }
  return corners;
}

double from_panel(const View& v) {
  const double length = v.lamp.length.v / mm_per_m, width = v.lamp.width.v / mm_per_m;
  const Corners f = panel_corners(v, length, width);
  double sum = 0;
  for (int i = 0; i < panel_parts; ++i) {
    for (int j = 0; j < panel_parts; ++j) {
      const double part = f[i + 1][j + 1] - f[i][j + 1] - f[i + 1][j] + f[i][j];
      sum += part * v.open(length * ((i + 0.5) / panel_parts - 0.5),
                           width * ((j + 0.5) / panel_parts - 0.5));
    }
  }
  return v.lamp.flux / (length * width) * sum;
}

double from_spot(const View& v) {
  const double m = beam_exponent(v.lamp.beam);
  const double square = v.x * v.x + v.y * v.y + v.down * v.down;
  const double cosine = v.down / std::sqrt(square);
  const double middle = v.lamp.flux * (m + 1) / (2 * pi);  // candela
  return middle * std::pow(cosine, m) * cosine / square * v.open(0, 0);
}

double illuminance(const Enclosure& tank, const Lamp& lamp, const Position& to) {
  const double down = (lamp.at.z - to.z) / mm_per_m;
  if (down <= 0 || lamp.flux <= 0) return 0;
  const View view{tank, lamp, to, (lamp.at.x - to.x) / mm_per_m, (lamp.at.y - to.y) / mm_per_m,
                  down};
  using enum Lamp::Kind;
  if (lamp.kind == panel) return from_panel(view);
  if (lamp.kind == spot || lamp.kind == uv_spot) return from_spot(view);
  return from_line(view);
}

}  // namespace

double line_factor(double along, double across, double down) {
  const double square = across * across + down * down, distance = std::sqrt(square);
  return down * down *
         (along / (2 * square * (along * along + square)) +
          std::atan(along / distance) / (2 * square * distance));
}

double corner_factor(double a, double b, double c) {
  const double u = a / c, v = b / c;
  const double p = std::sqrt(1 + u * u), q = std::sqrt(1 + v * v);
  return (u / p * std::atan(v / p) + v / q * std::atan(u / q)) / (2 * pi);
}

double beam_exponent(double full_angle) {
  return std::log(0.5) / std::log(std::cos(full_angle / 2 * pi / 180));
}

LightAt light_at(const Build& build, const Position& at) {
  LightAt light;
  for (const Lamp& lamp : build.lamps) {
    const double ppfd = illuminance(build.enclosure, lamp, at) * lamp.photons_per_lux;
    light.ppfd += ppfd;
    light.dli += ppfd * lamp.hours * mol_in_hour;
  }
  return light;
}

}  // namespace loamsheet
