// The parts of a figure on their own: dimension texts, spreading, hatching, faults.
#include <catch2/catch.hpp>
#include <cmath>

#include "examples.h"
#include "figure/dimension.h"
#include "figure/faults.h"
#include "figure/hatch.h"
#include "figure/labels.h"
#include "figure/scale.h"

using namespace loamsheet;
using examples::faces;

TEST_CASE("preferred reductions run 1, 2, 5, 10 (ISO 5455:1979, clause 4)") {
  const auto scales = preferred_scales();
  CHECK(std::vector<int>(scales.begin(), scales.begin() + 7) ==
        std::vector<int>{1, 2, 5, 10, 20, 50, 100});
}

TEST_CASE("millimetres are bare, inches go to sixteenths in lowest terms") {
  CHECK(dimension_text(900_mm, UnitSystem::metric) == "900");
  CHECK(dimension_text(62.5_mm, UnitSystem::metric) == "62.5");
  CHECK(dimension_text({25.4 * 24}, UnitSystem::us) == "24");
  CHECK(dimension_text({25.4 * 24.5625}, UnitSystem::us) == "24 9/16");
  CHECK(dimension_text({25.4 * 0.25}, UnitSystem::us) == "1/4");
  CHECK(dimension_text({25.4 * 11.99}, UnitSystem::us) == "12");
}

TEST_CASE("pieces with room stay where they want to be") {
  CHECK(spread({{30, 4}, {20, 4}}, 1, {0, 40}) == std::vector<double>{30, 20});
}

TEST_CASE("pieces that collide part evenly, in order, within the limits") {
  const auto middle = spread({{20, 4}, {20, 4}, {20, 4}}, 1, {0, 40});
  CHECK(middle == std::vector<double>{25, 20, 15});
  const auto low = spread({{1, 4}, {0, 4}}, 1, {0, 40});
  CHECK(low == std::vector<double>{7, 2});
  const auto high = spread({{40, 4}, {39, 4}}, 1, {0, 40});
  CHECK(high == std::vector<double>{38, 33});
}

TEST_CASE("hatching stays inside its region") {
  const std::vector<Point> region{{0, 0}, {60, 0}, {60, 9}, {0, 5}};
  for (Texture t : {Texture::pebbles, Texture::fibres, Texture::grains, Texture::clay,
                    Texture::leaves, Texture::diagonal, Texture::posts}) {
    const Marks marks = hatch(t, region);
    CAPTURE(static_cast<int>(t));
    CHECK(marks.size() > 5);
    for (const Mark& m : marks) {
      const Box box = extent(m);
      CHECK(box.left >= -0.1);
      CHECK(box.bottom >= -0.1);
      CHECK(box.right <= 60.1);
      CHECK(box.top <= 5 + 4 * box.right / 60 + 0.1);
    }
  }
}

TEST_CASE("a deep layer has a wider pattern, not thousands of marks") {
  CHECK(hatch(Texture::pebbles, {{0, 0}, {170, 0}, {170, 60}, {0, 60}}).size() < 600);
  CHECK(hatch(Texture::fibres, {{0, 0}, {170, 0}, {170, 0.3}, {0, 0.3}}).empty());
}

TEST_CASE("a segment is cut to a region") {
  const std::vector<Point> square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
  const auto cut = clipped({-5, 5}, {20, 5}, square);
  REQUIRE(cut);
  CHECK(cut->first == Point{0, 5});
  CHECK(cut->second == Point{10, 5});
  CHECK_FALSE(clipped({-5, 12}, {20, 12}, square));
  CHECK_FALSE(clipped({-5, 0}, {0, 12}, square));
}

TEST_CASE("each kind of fault is found") {
  const auto text = [](const char* words, Point at, double size = 8) {
    return label_at(faces(), {words, size}, at);
  };
  Figure f;
  f.width = f.height = 50;
  f.marks = {text("one", {10, 10}),          text("two", {11, 11}),
             Leader{{{0, 0}, {40, 40}}, {}}, Leader{{{40, 30}, {30, 40}}, {}},
             text("small", {2, 40}, 6),      line({45, 45}, {55, 45})};
  const std::vector<std::string> expected{
      "labels overlap: 'one' and 'two'", "leaders 1 and 2 cross",
      "a leader runs through 'one'",     "a leader runs through 'two'",
      "'small' is under 7 points",       "marks reach outside the frame of 50.00 x 50.00 mm"};
  CHECK(faults(f) == expected);
}

TEST_CASE("an upright label stands on its left end and takes the room of its turned text") {
  const Label flat = label_at(faces(), {"Ag", 10}, {5, 5});
  const Label turned = label_at(faces(), {"Ag", 10}, {5, 5}, true);
  CHECK(turned.box.width() == Approx(flat.box.height()));
  CHECK(turned.box.height() == Approx(flat.box.width()));
  CHECK(turned.box.bottom == 5);
  CHECK(turned.box.right > 5);
}
