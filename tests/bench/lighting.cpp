// The light of four lamps at so many places among furnishings, for counting its instructions:
// lighting PLACES.
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "plan/light/light_field.h"

using namespace loamsheet;

namespace {

Lamp lamp(const char* kind, Position at) {
  Lamp l;
  l.kind = kind, l.at = at;
  l.length = 600_mm, l.width = 200_mm, l.beam = 40;
  l.flux = 3000, l.photons_per_lux = 0.015, l.hours = 12;
  return l;
}

Furnishing branch(Position from, Position to) {
  Furnishing f;
  f.kind = "branch", f.from = from, f.to = to, f.diameter = 40_mm;
  return f;
}

Furnishing ledge(Position at) {
  Furnishing f;
  f.kind = "ledge", f.at = at, f.width = 250_mm, f.depth = 100_mm, f.height = 30_mm;
  return f;
}

Build lit_build() {
  Build build;
  Enclosure& tank = build.enclosure;
  tank.width = 1200_mm, tank.depth = 600_mm, tank.height = 600_mm;
  tank.footprint = rectangle(tank.width, tank.depth);
  tank.walls.material = "glass";
  Opening lid;
  lid.over = Box{0, 200, 1200, 600}, lid.gross = {0.48}, lid.free = {0.216};
  tank.openings = {lid};
  build.lamps = {lamp("bar", {600, 350, 660}), lamp("panel", {300, 300, 680}),
                 lamp("spot", {900, 300, 650}), lamp("bar", {600, 150, 660})};
  build.furnishings = {branch({100, 450, 150}, {800, 300, 450}), ledge({800, 500, 350}),
                       branch({900, 100, 100}, {1100, 400, 500}), ledge({300, 520, 250})};
  return build;
}

}  // namespace

int main(int count, char** words) {
  if (count != 2) return 2;
  const LightField field(lit_build());
  const int places = std::atoi(words[1]), wide = static_cast<int>(std::sqrt(places * 2));
  double sum = 0;
  for (int i = 0; i < places; ++i) {
    sum +=
        field.at({1200.0 * (i % wide + 0.5) / wide, 600.0 * (i / wide + 0.5) * wide / places, 130})
            .ppfd;
  }
  std::printf("%d places: %.1f umol m-2 s-1 on average\n", places, sum / places);
}
