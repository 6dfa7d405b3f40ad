// The elevation: drawn without a fault at every size, and saying what the build says.
#include <catch2/catch.hpp>
#include <cmath>

#include "examples.h"
#include "figure/faults.h"

using namespace loamsheet;
using namespace loamsheet::examples;

namespace {

Figures all_drawn(const Example& x, UnitSystem units = UnitSystem::metric) {
  const Wording wording = words(units);
  auto figures = make_figures({x.build, x.plan, wording, faces()});
  REQUIRE(figures);
  REQUIRE(figures.value->find("elevation"));
  return std::move(*figures.value);
}

Figure drawn(const Example& x, UnitSystem units = UnitSystem::metric) {
  return *all_drawn(x, units).find("elevation");
}

void check_figure(const Figure& f, const Example& x) {
  CAPTURE(f.id, f.scale, x.build.enclosure.width.v, x.build.enclosure.height.v);
  CHECK(faults(f) == std::vector<std::string>{});
  CHECK(f.width <= 178);
  CHECK(f.height <= 120);
  for (const std::string& words : {f.title, f.alt}) CHECK_FALSE(words.empty());
}

void check_sound(const Example& x, UnitSystem units = UnitSystem::metric) {
  const Figures figures = all_drawn(x, units);
  const Figure& front = *figures.find("elevation");
  check_figure(front, x);
  const Figure* section = figures.find("section");
  CHECK((section != nullptr) == front.section_apart);
  if (section) check_figure(*section, x);
}

std::vector<std::string> labels(const Figure& f) {
  std::vector<std::string> out;
  for (const Mark& m : f.marks) {
    if (const auto* label = std::get_if<Label>(&m)) out.push_back(label->text);
  }
  return out;
}

bool says(const Figure& f, const std::string& text) {
  const auto all = labels(f);
  return std::find(all.begin(), all.end(), text) != all.end();
}

const std::vector<double> sizes{200, 300, 450, 600, 900, 1300, 2000};

Example thin_layers(Example x) {
  Layers& l = x.build.layers;
  l.drainage.depth = 5_mm;
  l.substrate.front = 5_mm, l.substrate.back = 5_mm;
  l.litter->depth = 5_mm;
  x.plan.water.standing = Range<Millimetres>{1_mm, 2_mm};
  x.plan.water.highest_standing = 2_mm;
  settle(x);
  return x;
}

Example dry(Example x) {
  x.build.layers.drainage.kind = "none";
  x.build.layers.separator.reset();
  x.build.layers.litter.reset();
  x.plan.water = {};
  settle(x);
  return x;
}

}  // namespace

TEST_CASE("a section that would cost the elevation its scale is a figure of its own") {
  const Example wide = humid({900_mm, 450_mm, 600_mm});
  CHECK_FALSE(drawn(wide).section_apart);
  CHECK(all_drawn(wide).find("section") == nullptr);
  const Wording wording = words(UnitSystem::metric);
  const auto low = make_figures({wide.build, wide.plan, wording, faces(), 178, 90});
  REQUIRE(low);
  REQUIRE(low.value->find("elevation")->section_apart);
  CHECK(low.value->find("elevation")->scale == drawn(wide).scale);
  REQUIRE(low.value->find("section"));
  CHECK(low.value->find("section")->scale == 5);
}

TEST_CASE("no size, unit or set of layers makes a faulty figure") {
  for (double width : sizes) {
    for (double height : sizes) {
      const Size size{{width}, {std::min(width, 700.0)}, {height}};
      for (UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
        check_sound(humid(size), units);
        check_sound(arid(size), units);
        check_sound(thin_layers(humid(size)), units);
        check_sound(dry(humid(size)), units);
      }
    }
  }
}

TEST_CASE("every footprint is drawn without a fault") {
  for (double size : sizes) {
    const Millimetres w{size}, cut{size / 3};
    const Example plain = humid({w, w, {std::max(size, 300.0)}});
    const std::vector<std::pair<const char*, Region>> shapes{
        {"bow-front", bow_front(w, w * 0.5, w * 0.15)},
        {"corner", cut_corner(w, cut)},
        {"hexagon", hexagon(w)},
        {"round", circle(w)},
        {"outline", polygon({{0, 0}, {size, 0}, {size * 0.8, size}, {0, size * 0.7}})}};
    for (const auto& [shape, region] : shapes) {
      Example x = plain;
      reshape(x, shape, region);
      check_sound(x);
      check_sound(x, UnitSystem::us);
    }
  }
}

TEST_CASE("many furnishings, a water area, thick walls and large print are drawn without a fault") {
  for (double width : sizes) {
    Example x = humid({{width}, {width / 2}, {500}});
    x.build.water_area = WaterArea{WaterArea::Side::right, {0.3}, 100_mm};
    x.build.enclosure.walls.thickness = 18_mm;
    for (int i = 0; i < 12; ++i) {
      Standing s;
      s.id = "stone-" + std::to_string(i + 1);
      s.at = {width * (0.05 + 0.05 * i), width / 4};
      s.base = {0.005};
      s.height = 120_mm;
      s.on_base = i % 2 == 0;
      x.build.standing.push_back(s);
    }
    check_sound(x);
    x.build.print.large = true;
    check_sound(x);
  }
}

TEST_CASE("the scale is the largest preferred one that fits") {
  CHECK(drawn(humid({900_mm, 450_mm, 600_mm})).scale == 10);
  CHECK(drawn(humid({200_mm, 200_mm, 250_mm})).scale == 5);
  CHECK(drawn(humid({450_mm, 450_mm, 750_mm})).scale == 10);
  CHECK(drawn(arid()).scale == 10);
  CHECK(drawn(humid({2000_mm, 700_mm, 600_mm})).scale == 20);
}

TEST_CASE("a room too small for any scale is a fault of the program, not a figure cut short") {
  const Example x = humid();
  const Wording wording = words();
  const auto figures = make_figures({x.build, x.plan, wording, faces(), 20, 10});
  CHECK_FALSE(figures);
  REQUIRE(figures.messages.size() == 2);
  CHECK(figures.messages[0].fault == Fault::internal);
  CHECK(figures.messages[0].message ==
        "the elevation does not fit 20 x 10 mm at any preferred scale");
  CHECK(figures.messages[1].message == "the plan does not fit 20 x 10 mm at any preferred scale");
}

TEST_CASE("dimensions are those of the build, in the sheet's units") {
  const Figure metric = drawn(humid());
  for (const char* value : {"900", "600", "450", "50", "10", "80"}) {
    CAPTURE(value);
    CHECK(says(metric, value));
  }
  const Figure us = drawn(humid({{36 * 25.4}, {18 * 25.4}, {24 * 25.4}}), UnitSystem::us);
  for (const char* value : {"36", "24", "18", "3 1/8"}) {
    CAPTURE(value);
    CHECK(says(us, value));
  }
}

TEST_CASE("layers, water, openings and background are named") {
  const Figure f = drawn(humid());
  for (const char* name : {"Expanded clay", "Fibreglass mesh", "Woodland mix", "Oak leaves",
                           "Standing water", "Highest waterline", "Cork bark", "Lid", "Doors"}) {
    CAPTURE(name);
    CHECK(says(f, name));
    CHECK(f.alt.size() > 200);
  }
  CHECK(says(drawn(arid()), "Arid sand mix"));
  CHECK_FALSE(says(drawn(arid()), "Standing water"));
}

TEST_CASE("a mix of the spec's own stands for itself") {
  Example x = humid();
  x.build.layers.substrate.mix = "old-bench-mix";
  CHECK(says(drawn(x), "Old bench mix"));
}

TEST_CASE("a shape other than a rectangle is noted") {
  Example x = humid();
  reshape(x, "round", circle(500_mm));
  CHECK(says(drawn(x), "Footprint: round. The views show its greatest width and depth."));
}

TEST_CASE("the description holds the numbers in words") {
  std::string alt = drawn(humid()).alt;
  for (size_t at; (at = alt.find("\u00a0")) != std::string::npos;) alt.replace(at, 2, " ");
  for (const char* part : {"90 cm wide", "45 cm deep", "60 cm high", "expanded clay",
                           "woodland mix, 5 cm deep at the front, rising to 8 cm at the back"}) {
    CAPTURE(part, alt);
    CHECK(alt.find(part) != std::string::npos);
  }
}
