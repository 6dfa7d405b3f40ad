// A spec in US units and the same in metric ones give the same plan.
#include <catch2/catch.hpp>

#include "../cases/overlay.h"
#include "base/text.h"
#include "data/data.h"
#include "job/job.h"
#include "laws.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// A length of whole eighths of an inch, and a mass of whole pounds, in either system.
struct Typed {
  bool us = true;

  std::string length(int eighths) const {
    if (us) return std::to_string(eighths) + "/8 in";
    return significant(eighths * 3.175, 15) + " mm";
  }
  std::string mass(int pounds) const {
    if (us) return std::to_string(pounds) + " lb";
    return significant(pounds * 453.59237, 15) + " g";
  }
};

struct Measures {
  int width, depth, height, front, back, drainage, turn_up, rating;
};

Measures drawn_measures() {
  return {drawn(100, 400), drawn(80, 250), drawn(200, 400), drawn(8, 30),
          drawn(8, 40),    drawn(8, 24),   drawn(0, 16),    drawn(100, 900)};
}

std::string spec_of(const Measures& m, const Typed& t) {
  return "build: {title: T, reference: TT-0195, plant_on: 2026-03-07}\n"
         "enclosure:\n"
         "  footprint: {shape: rectangle, width: " +
         t.length(m.width) + ", depth: " + t.length(m.depth) +
         "}\n  height: " + t.length(m.height) +
         "\n  walls: {material: glass, thickness: " + t.length(2) +
         "}\n"
         "  openings:\n    - {name: lid, where: top, area: " +
         (t.us ? "20 in2" : "129.032 cm2") + "}\n  stand: {rated_load: " + t.mass(m.rating) +
         "}\nlayers:\n  drainage: {kind: granules, material: expanded-clay, depth: " +
         t.length(m.drainage) +
         "}\n  separator: {material: fibreglass-mesh, turn_up: " + t.length(m.turn_up) +
         "}\n  substrate: {mix: woodland, front: " + t.length(m.front) +
         ", back: " + t.length(m.back) + "}\n";
}

std::string numbers_of(const std::string& spec) {
  Overlay world("typed.yaml", spec);
  const auto planned = plan_spec(world, "typed.yaml", "");
  INFO(render(planned.messages, nullptr));
  REQUIRE(planned);
  const Planned& p = *planned.value;
  const std::string text = numbers_text({p.build, p.plan, p.wording});
  std::string out;  // columns differ with what was typed, and so does what a finding says of them
  for (const std::string& line : split(text, '\n')) {
    if (!line.starts_with("findings")) out += line + '\n';
  }
  return out;
}

}  // namespace

TEST_CASE("units metric and US give the same plan") {
  holds("the same numbers", [] {
    const Measures m = drawn_measures();
    RC_ASSERT(numbers_of(spec_of(m, {true})) == numbers_of(spec_of(m, {false})));
  });
}
