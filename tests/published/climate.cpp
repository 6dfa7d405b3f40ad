#include "climate.h"

#include "base/text.h"
#include "life.h"
#include "plan/air/balance.h"
#include "plan/air/vapour.h"
#include "plan/light/light_field.h"
#include "plan/light/photons.h"

namespace loamsheet::tests {
namespace {

double number(const Inputs& in, const std::string& name) {
  return std::stod(in.at(name));
}

std::string shown(double v) {
  return significant(v, 15);
}

Celsius degrees(const Inputs& in, const std::string& name) {
  return {number(in, name)};
}

Fraction humidity(const Inputs& in) {
  return {number(in, "humidity") / 100};
}

// A lamp inside a tank of two metres, one unit of photons for each lux.
double lux(Lamp lamp, const Inputs& in, double across) {
  Build build;
  build.enclosure.height = 2000_mm;
  lamp.at = {0, 0, 1900};
  lamp.length = {number(in, "length") * 1000};
  lamp.photons_per_lux = 1;
  build.lamps = {lamp};
  const double down = number(in, "height") * 1000;
  return LightField(build).at({number(in, "aside") * 1000, across * 1000, 1900 - down}).ppfd;
}

double bar_lux(const Inputs& in, double flux) {
  Lamp lamp;
  lamp.flux = flux;
  return lux(lamp, in, 0);
}

double panel_lux(const Inputs& in) {
  Lamp lamp;
  lamp.kind = "panel";
  lamp.width = {number(in, "width") * 1000};
  lamp.flux = number(in, "flux");
  return lux(lamp, in, number(in, "across"));
}

// The light is made as strong as wanted by its photons.
double daily_light(const Inputs& in) {
  Build build;
  build.enclosure.height = 2000_mm;
  Lamp lamp;
  lamp.kind = "spot";
  lamp.beam = 90, lamp.flux = 1000, lamp.hours = number(in, "hours"), lamp.photons_per_lux = 1;
  lamp.at = {0, 0, 1000};
  build.lamps = {lamp};
  build.lamps[0].photons_per_lux = number(in, "ppfd") / LightField(build).at({0, 0, 0}).ppfd;
  return LightField(build).at({0, 0, 0}).dli;
}

// The factor between two level rectangles of one size right over each other, as the mean of the
// factor from a point over the lower one.
double parallel_factor(const Inputs& in) {
  constexpr int parts = 60;
  const double length = number(in, "length"), width = number(in, "width");
  double sum = 0;
  for (int i = 0; i < parts; ++i) {
    for (int j = 0; j < parts; ++j) {
      const double x = length * (i + 0.5) / parts, y = width * (j + 0.5) / parts;
      for (const double a : {x, length - x}) {
        for (const double b : {y, width - y}) sum += corner_factor(a, b, number(in, "height"));
      }
    }
  }
  return sum / (parts * parts);
}

double photons_per_lux(const Inputs& in) {
  return catalogue().spectra.at(in.at("spectrum")).value;
}

constexpr double lux_in_foot_candle = 10.763910416709722, daylight_lux_per_photon = 54;

// The class, or the classes, whose band holds so many foot-candles of daylight.
std::string light_class(const Inputs& in) {
  const double ppfd = number(in, "fc") * lux_in_foot_candle / daylight_lux_per_photon;
  std::string found;
  for (const char* name : {"low", "medium", "high"}) {
    const Range<double>& band = catalogue().light.at(name).ppfd.value;
    if (ppfd < band.low || ppfd > band.high) continue;
    found += (found.empty() ? "" : "-") + std::string(name);
  }
  return found;
}

double class_edge(const Inputs& in) {
  const Range<double>& band = catalogue().light.at(in.at("class")).ppfd.value;
  return in.at("end") == "low" ? band.low : band.high;
}

// Two openings, one over the other, too large to exchange much alone.
double stack_flow(const Inputs& in) {
  const std::vector<Vent> two{{0, 0, number(in, "low")},
                              {number(in, "rise"), 0, number(in, "high")}};
  return vent_flow(two, number(in, "warmer"), degrees(in, "room"));
}

double loss_of_walls(const Inputs& in) {
  Enclosure tank;
  tank.walls.material = in.at("material");
  tank.walls.thickness = {number(in, "thickness")};
  Shell shell;
  set_enclosure(shell, tank);
  shell.panes = number(in, "area");
  return wall_loss(shell);
}

}  // namespace

const std::map<std::string, Quantity>& climate_quantities() {
  static const std::map<std::string, Quantity> all = {
      {"saturation_pressure",
       [](const Inputs& in) { return shown(saturation_pressure(degrees(in, "t"))); }},
      {"stack_flow", [](const Inputs& in) { return shown(stack_flow(in)); }},
      {"wall_loss", [](const Inputs& in) { return shown(loss_of_walls(in)); }},
      {"vapour_density",
       [](const Inputs& in) {
         return shown(vapour_density(degrees(in, "t"), humidity(in)) * 1000);
       }},
      {"evaporation",
       [](const Inputs& in) {
         return shown(AirOver(degrees(in, "air"), humidity(in)).takes_from(degrees(in, "water")));
       }},
      {"panel_corner",
       [](const Inputs& in) {
         return shown(
             corner_factor(number(in, "length"), number(in, "width"), number(in, "height")));
       }},
      {"panel_lux", [](const Inputs& in) { return shown(panel_lux(in)); }},
      {"bar_lux", [](const Inputs& in) { return shown(bar_lux(in, number(in, "flux"))); }},
      {"bar_factor",
       [](const Inputs& in) {
         return shown(bar_lux(in, 3.14159265358979323846 * number(in, "length")));
       }},
      {"parallel_factor", [](const Inputs& in) { return shown(parallel_factor(in)); }},
      {"photons_per_lux", [](const Inputs& in) { return shown(photons_per_lux(in)); }},
      {"light_class", light_class},
      {"class_edge", [](const Inputs& in) { return shown(class_edge(in)); }},
      {"daily_light", [](const Inputs& in) { return shown(daily_light(in)); }},
  };
  return all;
}

}  // namespace loamsheet::tests
