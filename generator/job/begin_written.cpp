#include <algorithm>
#include <cmath>
#include <map>

#include "base/text.h"
#include "job/begin.h"

namespace loamsheet {
namespace {

// What lies on the floor of a kind of build (common practice).
struct Floor {
  std::string mix, litter;  // no litter: empty
  Millimetres drainage;     // zero: none
  Millimetres front, back;  // of the substrate
  std::vector<std::string> crew;
  bool damp = true;    // placed damp and misted
  bool water = false;  // beside it an area of water
};

const Floor& floor_of(const std::string& kind) {
  static const std::map<std::string, Floor> floors{
      {"humid",
       {"woodland",
        "oak-leaves",
        50_mm,
        50_mm,
        80_mm,
        {"folsomia-candida", "trichorhina-tomentosa"}}},
      {"temperate",
       {"temperate-leaf",
        "oak-leaves",
        50_mm,
        60_mm,
        90_mm,
        {"folsomia-candida", "armadillidium-vulgare"}}},
      {"arid", {"arid-sand", "", 0_mm, 80_mm, 120_mm, {"armadillidium-vulgare"}, false}},
      {"burrowing", {"burrow-clay", "", 0_mm, 120_mm, 150_mm, {"armadillidium-vulgare"}, false}},
      {"semi-aquatic",
       {"bog",
        "oak-leaves",
        50_mm,
        50_mm,
        80_mm,
        {"folsomia-candida", "trichorhina-tomentosa"},
        true,
        true}}};
  return floors.at(kind);
}

constexpr Millimetres litter_depth{10};
constexpr Millimetres shallowest_bowl{5}, deepest_bowl{20};

// Panes grow with the longest side (common practice for braced glass tanks).
Millimetres pane(const TankSize& size) {
  const double longest = std::max({size.width.v, size.depth.v, size.height.v});
  return {longest <= 900 ? 5.0 : longest <= 1200 ? 6.0 : longest <= 1600 ? 8.0 : 10.0};
}

// Writes the starter part by part: a comment, then its lines.
class Writing {
 public:
  explicit Writing(const Starter& starter) : s_(starter), floor_(floor_of(starter.kind)) {}

  std::string all() {
    head();
    tank();
    climate();
    layers();
    furnishings();
    life();
    return std::move(out_);
  }

 private:
  void note(const std::string& topic, const std::string& before = "") {
    out_ += before + "# " + s_.words.say("begin." + topic) + '\n';
  }
  void part(const std::string& topic, const std::vector<std::string>& lines) {
    out_ += '\n';
    note(topic);
    for (const auto& line : lines) out_ += line + '\n';
  }

  // An amount as a spec has it, with a plain blank before its unit.
  std::string amount(const Arg& arg, std::string_view form = "") const {
    std::string text = s_.words.amount(arg, form);
    for (size_t at; (at = text.find("\u00a0")) != std::string::npos;) text.replace(at, 2, " ");
    return text;
  }
  std::string cm(Millimetres v) const { return amount(v, "cm"); }
  std::string share_of(Millimetres side, double share) const {
    return cm({std::round(side.v * share / 10) * 10});
  }

  void head() {
    note("heading");
    note("kind-" + s_.kind);
    const auto word = [&](std::string_view name) { return s_.words.say(name); };
    part("build",
         {"build:", "  title: " + word("begin.title"), "  reference: " + word("begin.reference"),
          "  revision: A", "  plant_on: " + word("begin.plant-on"), "  where: site"});
    part("print",
         {std::string("print: ") + (s_.size.inches ? "{paper: Letter, units: us, language: en}"
                                                   : "{paper: A4, units: metric, language: en}")});
  }

  // The lowest opening clears the layers where they are lowest, at the front.
  Millimetres sill() const {
    return floor_.drainage + floor_.front + (floor_.litter.empty() ? 0_mm : litter_depth) + 30_mm;
  }

  void tank() {
    const TankSize& t = s_.size;
    part("enclosure",
         {"enclosure:",
          "  footprint: {shape: rectangle, width: " + cm(t.width) + ", depth: " + cm(t.depth) + "}",
          "  height: " + cm(t.height)});
    note("walls", "  ");
    out_ += "  walls: {material: glass, thickness: " + amount(pane(t), "mm") + ", base: plain}\n";
    note("openings", "  ");
    const std::string far = cm(t.width) + ", " + cm(t.depth);
    const std::string near = amount(0_mm, "cm") + ", " + share_of(t.depth, 0.45);
    const std::string hole = amount(Millimetres{1.2}, s_.size.inches ? "mm" : "");
    out_ += "  openings:\n";
    out_ += "    - {name: lid, where: top, over: [[" + near + "], [" + far +
            "]], mesh: {open: 45 %, aperture: " + hole + "}}\n";
    out_ += "    - {name: doors, where: front, at: " + cm(sill()) +
            ", kind: door, length: " + share_of(t.width, 0.9) +
            ", gap: " + amount(Millimetres{2}, "mm") + "}\n";
    note("stand", "  ");
    out_ += "  # stand: {rated_load: " + amount(Kilograms{150}) + ", height: " + cm(700_mm) + "}\n";
    part("room", {"room: {temperature: " + amount(Range<Celsius>{{18}, {26}}) +
                  ", humidity: " + amount(Range<Fraction>{{0.35}, {0.6}}) + "}"});
  }

  std::string place(double x, double y, Millimetres above) const {
    const TankSize& t = s_.size;
    return "[" + share_of(t.width, x) + ", " + share_of(t.depth, y) + ", " + cm(t.height + above) +
           "]";
  }

  void climate() {
    const TankSize& t = s_.size;
    const double flux = std::ceil(t.width.v * t.depth.v / 1e6 * 150) * 100;
    std::vector<std::string> lamps{
        "lamps:", "  - {id: day, kind: bar, length: " + share_of(t.width, 0.85) +
                      ", flux: " + fixed(flux, 0) +
                      " lm, spectrum: white-led, power: " + fixed(std::ceil(flux / 120), 0) +
                      " W, at: " + place(0.5, 0.7, 60_mm) + ", hours: 12 h}"};
    if (s_.animal && s_.animal->basking) {
      lamps.push_back(
          "  - {id: warm, kind: spot, beam: 40 °, flux: 500 lm, spectrum: halogen, "
          "power: 35 W, at: " +
          place(0.75, 0.7, 40_mm) + ", hours: 8 h}");
    }
    part("lamps", lamps);
    part("heaters", {"heaters:", "  - {kind: panel, power: 40 W, thermostat: yes}"});
    if (!floor_.damp) return;
    part("misting", {"misting: {by: hand, per_pull: 0.9 mL}", "water_source: reverse-osmosis"});
  }

  void layers() {
    part("layers", {"layers:"});
    if (floor_.drainage.v > 0) {
      out_ +=
          "  drainage: {kind: granules, material: expanded-clay, depth: " + cm(floor_.drainage) +
          ", outlet: siphon-tube}\n";
      out_ += "  separator: {material: fibreglass-mesh, turn_up: " + cm(30_mm) + "}\n";
    } else {
      out_ += "  drainage: {kind: none}\n";
    }
    out_ += "  substrate: {mix: " + floor_.mix + ", front: " + cm(floor_.front) +
            ", back: " + cm(floor_.back) +
            ", hold_back: 10 %, placed: " + (floor_.damp ? "damp" : "dry") + "}\n";
    if (!floor_.litter.empty()) {
      out_ += "  litter: {material: " + floor_.litter + ", depth: " + cm(litter_depth) + "}\n";
    }
    if (!floor_.water) return;
    part("water-area",
         {"water_area: {side: left, floor: 30 %, depth: " + cm(60_mm) + ", filter: yes}"});
  }

  // Shallow enough for the smallest to stand in.
  Millimetres bowl_depth() const {
    if (!s_.animal || !s_.animal->length) return deepest_bowl;
    const double half = std::floor(s_.animal->length->value.low.v / 2);
    return std::clamp(Millimetres{half}, shallowest_bowl, deepest_bowl);
  }

  std::vector<std::string> laying_box(const std::string& at) const {
    if (!s_.animal || !s_.animal->lays || s_.animal->lays->value != "soil") return {};
    return {"  - {id: egg-box, kind: laying-box, " + at + ", width: " + cm(100_mm) +
            ", depth: " + cm(80_mm) + ", height: " + cm(80_mm) +
            ", mass: " + amount(Kilograms{0.4}) + ", stands_on: substrate}"};
  }

  void furnishings() {
    const TankSize& t = s_.size;
    const auto at = [&](double x, double y) {
      return "at: [" + share_of(t.width, x) + ", " + share_of(t.depth, y) + "]";
    };
    const std::string hide = ", width: " + cm(100_mm) + ", depth: " + cm(80_mm) +
                             ", height: " + cm(60_mm) + ", mass: " + amount(Kilograms{0.5}) +
                             ", stands_on: substrate}";
    std::vector<std::string> lines{
        "furnishings:", "  - {id: cool-hide, kind: hide, " + at(0.25, 0.7) + hide,
        "  - {id: warm-hide, kind: hide, " + at(0.75, 0.7) + hide,
        "  - {id: bowl, kind: water-bowl, " + at(0.6, 0.25) + ", diameter: " + cm(80_mm) +
            ", depth: " + cm(bowl_depth()) + ", mass: " + amount(Kilograms{0.3}) + "}"};
    for (auto& line : laying_box(at(0.3, 0.25))) lines.push_back(std::move(line));
    part("furnishings", lines);
  }

  void life() {
    if (s_.animal) {
      part("animals", {"animals:", "  - {species: " + s_.animal->id + ", count: 1, stage: adult}"});
    }
    listed("plants", starter_plants(s_), [](const std::string& id) { return "  - 1 " + id; });
    listed("crew", floor_.crew,
           [](const std::string& id) { return "  - {species: " + id + ", cultures: 1}"; });
    part("calendar", {"calendar: {days: 35}"});
  }

  template <class Line>
  void listed(const std::string& key, const std::vector<std::string>& ids, Line line) {
    if (ids.empty()) return part("no-" + key, {key + ": []"});
    std::vector<std::string> lines{key + ':'};
    for (const auto& id : ids) lines.push_back(line(id));
    part(key, lines);
  }

  const Starter& s_;
  const Floor& floor_;
  std::string out_;
};

}  // namespace

std::string written(const Starter& starter) {
  return Writing(starter).all();
}

}  // namespace loamsheet
