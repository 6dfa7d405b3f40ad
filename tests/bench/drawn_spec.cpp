#include "drawn_spec.h"

#include <algorithm>

namespace loamsheet::tests {
namespace {

// Park and Miller's generator: small, and the same everywhere.
class Draw {
 public:
  explicit Draw(unsigned number) : state_(number * 7919u + 17u) {
    for (int i = 0; i < 5; ++i) next();
  }
  int between(int low, int high) {
    return low + static_cast<int>(next() % static_cast<unsigned>(high - low + 1));
  }
  template <class T>
  const T& one_of(const std::vector<T>& all) {
    return all[static_cast<size_t>(between(0, static_cast<int>(all.size()) - 1))];
  }

 private:
  unsigned next() {
    state_ = static_cast<unsigned>(state_ * 48271ull % 2147483647ull);
    return state_;
  }
  unsigned state_;
};

struct Size {
  int width, depth, height;  // cm
};

std::string cm(int v) {
  return std::to_string(v) + " cm";
}

std::string point(const std::vector<int>& at) {
  std::string out;
  for (int v : at) out += (out.empty() ? "[" : ", ") + cm(v);
  return out + ']';
}

std::string branch(Draw& draw, const Size& s, int number) {
  const int from = draw.between(5, s.width / 3), to = draw.between(s.width / 2, s.width - 5);
  return "  - {id: branch-" + std::to_string(number) + ", kind: branch, from: " +
         point({from, draw.between(15, s.depth - 5), draw.between(16, 22)}) +
         ", to: " + point({to, draw.between(15, s.depth - 5), s.height * 2 / 3}) +
         ", diameter: " + cm(draw.between(3, 5)) + ", mass: 0.8 kg, fixed_by: wedged}\n";
}

std::string ledge(Draw& draw, const Size& s) {
  return "  - {id: ledge, kind: ledge, at: " +
         point({draw.between(15, s.width - 15), s.depth - 9, s.height / 2}) +
         ", width: 22 cm, depth: 10 cm, height: 8 cm, pocket: 1.5 L, mass: 0.6 kg, "
         "fixed_by: silicone}\n";
}

std::string furnishings(Draw& draw, const Size& s) {
  std::string out = "furnishings:\n  - {id: bowl, kind: water-bowl, at: " +
                    point({draw.between(10, s.width - 10), 10}) +
                    ", diameter: 10 cm, depth: 2 cm, mass: 0.4 kg}\n";
  for (int i = draw.between(0, 3); i > 0; --i) out += branch(draw, s, i);
  if (draw.between(0, 1) == 1) out += ledge(draw, s);
  return out;
}

std::string lamps(Draw& draw, const Size& s) {
  const int flux = s.width * s.depth * draw.between(15, 25) / 10;
  return "lamps:\n  - {id: day, kind: bar, length: " + cm(s.width - 10) +
         ", flux: " + std::to_string(flux) +
         " lm, spectrum: white-led, power: " + std::to_string(flux / 120) +
         " W, at: " + point({s.width / 2, s.depth / 2, s.height + 6}) + ", hours: 12 h}\n";
}

std::string plants(Draw& draw, std::vector<std::string> species) {
  std::string out = "plants:\n";
  for (int i = draw.between(6, 12); i > 0; --i) {
    const std::string one = draw.one_of(species);
    std::erase(species, one);
    out += "  - " + std::to_string(draw.between(1, 2)) + ' ' + one + '\n';
  }
  return out;
}

}  // namespace

std::string drawn_spec(unsigned number, const std::vector<std::string>& species) {
  static const std::vector<std::pair<std::string, Size>> tanks{{"tank-45x45x60", {45, 45, 60}},
                                                               {"tank-60x45x45", {60, 45, 45}},
                                                               {"tank-90x45x60", {90, 45, 60}}};
  Draw draw(number);
  const auto& [tank, size] = draw.one_of(tanks);
  return "# Drawn by number, invented.\nuse: [" + tank + ", humid-sloped, room-temperate]\n" +
         "build: {title: Drawn " + std::to_string(number) + ", reference: TT-9" +
         std::to_string(1000 + number).substr(1) + ", plant_on: 2026-03-07, where: site}\n" +
         "enclosure: {background: {material: cork-bark, thickness: 3 cm}}\n" + lamps(draw, size) +
         furnishings(draw, size) + "animals: [{species: dendrobates-tinctorius, count: 2}]\n" +
         plants(draw, species);
}

}  // namespace loamsheet::tests
