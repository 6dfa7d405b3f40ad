// Plants in both views: numbered, never colliding, where the planting plan puts them.
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "examples.h"
#include "figure/faults.h"
#include "figure/habit.h"
#include "figure/plants.h"

using namespace loamsheet;
using namespace loamsheet::examples;

namespace {

const char* const habits[] = {"bromeliad", "climber", "epiphyte", "fern",   "grass",
                              "moss",      "orchid",  "rosette",  "shrub",  "ground-cover",
                              "succulent", "trailer", "upright",  "unheard"};

// Plants anywhere on and above the floor, from a seed.
void plant(Example& x, int count, unsigned seed) {
  std::mt19937 random(seed);
  const auto share = [&] { return static_cast<double>(random() % 1000) / 1000; };
  const Enclosure& e = x.build.enclosure;
  const Box box = extent(e.footprint);
  PlantingPlan plan;
  for (int i = 1; i <= count; ++i) {
    PlantUse use;
    use.number = i;
    use.facts.habit = Fact<std::string>{habits[random() % std::size(habits)], {}};
    x.build.plants.push_back(use);
    PlacedPlant p;
    p.number = i;
    p.placed = true;
    p.common_name = "plant " + std::to_string(i);
    p.site = static_cast<SiteKind>(random() % 3);
    p.at = {box.left + share() * box.width(), box.bottom + share() * box.height(),
            e.height.v * share() * 0.9};
    p.spread = {share() * e.width.v}, p.height = {share() * e.height.v};
    plan.plants.push_back(p);
  }
  x.plan.planting = plan;
}

void furnish(Example& x) {
  const double w = x.build.enclosure.width.v, d = x.build.enclosure.depth.v;
  const double h = x.build.enclosure.height.v;
  const auto thing = [&](std::string id, std::string kind, Position at) -> Furnishing& {
    Furnishing f;
    f.id = std::move(id), f.kind = std::move(kind), f.at = at;
    x.build.furnishings.push_back(f);
    return x.build.furnishings.back();
  };
  Furnishing& log = thing("log", "tube", {w * 0.3, d * 0.4, 0});
  log.width = {w * 0.3}, log.diameter = {d * 0.2}, log.turned = 20;
  Furnishing& perch = thing("perch", "branch", {});
  perch.from = {w * 0.1, d * 0.8, h * 0.3}, perch.to = {w * 0.8, d * 0.5, h * 0.8};
  perch.diameter = 40_mm;
  thing("bowl", "water-bowl", {w * 0.8, d * 0.25, 0}).diameter = {w * 0.12};
  Furnishing& slab = thing("slab", "stone", {w * 0.5, d * 0.5, 0});
  slab.width = {w * 0.15}, slab.depth = {d * 0.2};
  Furnishing& shelf = thing("shelf", "ledge", {w * 0.7, d * 0.8, h * 0.6});
  shelf.width = {w * 0.2}, shelf.depth = {d * 0.2}, shelf.height = 30_mm, shelf.pocket = 1_L;
  thing("hut", "hide", {w * 0.2, d * 0.2, 0});
  Lamp lamp;
  lamp.id = "day";
  lamp.at = {w / 2, d * 0.6, h + 60};
  lamp.length = {w * 0.8};
  x.build.lamps.push_back(lamp);
  lamp.id = "warm", lamp.kind = "spot";
  x.build.lamps.push_back(lamp);
}

Figures drawn(const Example& x, UnitSystem units = UnitSystem::metric) {
  const Wording wording = words(units);
  auto figures = make_figures({x.build, x.plan, wording, faces()});
  for (const auto& m : figures.messages) FAIL(m.message);
  REQUIRE(figures);
  return std::move(*figures.value);
}

void check_sound(const Example& x, UnitSystem units = UnitSystem::metric) {
  for (const Figure& f : drawn(x, units).all) {
    CAPTURE(f.id, f.scale, x.build.enclosure.width.v, x.build.enclosure.height.v,
            x.build.plants.size());
    CHECK(faults(f) == std::vector<std::string>{});
    CHECK(f.width <= 178);
    CHECK(f.height <= (f.id == "plan" ? 140 : 120));
    for (const std::string& said : {f.title, f.alt}) CHECK_FALSE(said.empty());
  }
}

const Label* label(const Figure& f, const std::string& text) {
  for (const Mark& m : f.marks) {
    const auto* l = std::get_if<Label>(&m);
    if (l && l->text == text) return l;
  }
  return nullptr;
}

// The numbers that stand alone in a figure or are named in its notes.
int numbers_said(const Figure& f, int count) {
  int said = 0;
  for (int i = 1; i <= count; ++i) said += label(f, std::to_string(i)) != nullptr;
  return said;
}

bool says(const Figure& f, const std::string& text) {
  for (const Mark& m : f.marks) {
    const auto* l = std::get_if<Label>(&m);
    if (l && l->text.find(text) != std::string::npos) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("no number of plants makes a faulty figure at any size") {
  unsigned seed = 0;
  for (double width : {200.0, 450.0, 900.0, 2000.0}) {
    for (double height : {250.0, 600.0, 1300.0}) {
      for (int count : {1, 7, 20}) {
        Example x = humid({{width}, {std::min(width, 700.0)}, {height}});
        plant(x, count, ++seed);
        if (seed % 2 == 0) furnish(x);
        check_sound(x, seed % 3 == 0 ? UnitSystem::us : UnitSystem::metric);
      }
    }
  }
}

TEST_CASE("planted footprints of every shape are drawn without a fault") {
  const Millimetres w = 500_mm;
  const std::vector<std::pair<const char*, Region>> shapes{
      {"bow-front", bow_front(w, w * 0.5, w * 0.15)},
      {"corner", cut_corner(w, {180})},
      {"hexagon", hexagon(w)},
      {"round", circle(w)},
      {"outline", polygon({{0, 0}, {500, 0}, {400, 500}, {200, 250}, {0, 350}})}};
  for (const auto& [shape, region] : shapes) {
    Example x = humid({w, w, 600_mm});
    reshape(x, shape, region);
    plant(x, 12, 5);
    furnish(x);
    check_sound(x);
    x.build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 60_mm};
    x.build.print.large = true;
    check_sound(x);
  }
}

TEST_CASE("every plant has its number in both views") {
  Example x = humid();
  plant(x, 15, 3);
  for (const Figure& f : drawn(x).all) {
    CAPTURE(f.id);
    CHECK(numbers_said(f, 15) == 15);
    CHECK_FALSE(says(f, "Without room"));
  }
}

TEST_CASE("plants without a place are not drawn, and without a plan nothing is said of plants") {
  Example x = humid();
  plant(x, 3, 3);
  x.plan.planting->plants[1].placed = false;
  const Figures figures = drawn(x);
  CHECK(label(*figures.find("plan"), "1"));
  CHECK_FALSE(label(*figures.find("plan"), "2"));
  x.plan.planting.reset();
  CHECK_FALSE(says(*drawn(x).find("elevation"), "planting"));
}

TEST_CASE("the plan view has its scale, its dimensions and its front") {
  const Figure f = *drawn(humid()).find("plan");
  CHECK(f.scale == 10);
  CHECK(label(f, "900"));
  CHECK(label(f, "450"));
  CHECK(label(f, "front")->box.top < label(f, "900")->box.bottom);
}

TEST_CASE("a plant stands in the plan view where the planting plan puts it") {
  Example x = humid();
  plant(x, 2, 1);
  x.plan.planting->plants[0].at = {300, 150, 100};
  x.plan.planting->plants[1].at = {700, 350, 100};
  x.plan.planting->plants[0].spread = x.plan.planting->plants[1].spread = {300};
  const Figure f = *drawn(x).find("plan");
  const Box one = label(f, "1")->box, two = label(f, "2")->box;
  CHECK((two.left + two.right - one.left - one.right) / 2 == Approx(40).margin(0.01));
  CHECK((two.bottom + two.top - one.bottom - one.top) / 2 == Approx(20).margin(0.01));
}

TEST_CASE("the description says what stands where") {
  Example x = humid();
  plant(x, 1, 1);
  furnish(x);
  x.plan.planting->plants[0].at = {300, 150, 100};
  x.plan.planting->plants[0].site = SiteKind::floor;
  std::string alt = drawn(x).find("plan")->alt;
  for (size_t at; (at = alt.find("\u00a0")) != std::string::npos;) alt.replace(at, 2, " ");
  for (const char* part : {"90 cm wide and 45 cm deep",
                           "Plant 1, plant 1: 30 cm from the left, 15 cm from the front, in the "
                           "ground",
                           "Log, its middle 27 cm from the left"}) {
    CAPTURE(part, alt);
    CHECK(alt.find(part) != std::string::npos);
  }
}

TEST_CASE("a plant is drawn at a third of its size, not under 4 cm, not over its own") {
  CHECK(planting_size(300_mm) == 100_mm);
  CHECK(planting_size(90_mm) == 40_mm);
  CHECK(planting_size(25_mm) == 25_mm);
}

TEST_CASE("each habit has a sketch of its own, about as large as the plant") {
  std::vector<Marks> seen;
  for (const char* habit : habits) {
    CAPTURE(habit);
    const Box box = extent(habit_sketch({habit, {50, 20}, 12, 10}));
    CHECK(box.width() > 3);
    CHECK(box.width() < 18);
    CHECK(box.bottom > 19);
    CHECK(box.top < 31.5);
    CHECK(box.top > 24);
  }
  const Box hung = extent(habit_sketch({"trailer", {50, 20}, 12, 10, true}));
  CHECK(hung.top < 21.5);
  CHECK(hung.bottom < 13);
}

TEST_CASE("a line under a filled area is hidden and no fault") {
  Figure f;
  f.width = f.height = 50;
  f.marks = {line({1, 11}, {49, 11}), filled({5, 5, 40, 20}, 1),
             label_at(faces(), {"moss", 8}, {10, 10})};
  CHECK(faults(f).empty());
  std::swap(f.marks[0], f.marks[1]);
  CHECK(faults(f) == std::vector<std::string>{"a line runs through 'moss'"});
}
