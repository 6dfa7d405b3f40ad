// Figures as PDF, SVG and PNG.
#include "draw/draw.h"

#include <catch2/catch.hpp>

#include "figure/sketch.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

const Typefaces& faces() {
  static const Typefaces loaded = std::move(load_typefaces(*real_world()).value.value());
  return loaded;
}

Figure sample(const std::string& id) {
  Figure f;
  f.id = id;
  f.width = 60, f.height = 20;
  f.marks = {filled({0, 0, 60, 5}, 0.9), line({5, 5}, {55, 5}, pen::wide),
             Leader{{{20, 12}, {30, 5}}, pen::narrow},
             label_at(faces(), {"Leaf litter " + id + ", 10 mm ½ – ≤", 8}, {2, 14}),
             label_at(faces(), {"upright", 8, Face::italic}, {58, 2}, true)};
  return f;
}

size_t count(const std::string& in, const std::string& what) {
  size_t n = 0;
  for (size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1)) ++n;
  return n;
}

}  // namespace

TEST_CASE("all figures are pages of one PDF, each as large as its figure") {
  const auto pdf = draw_pdf({{sample("a"), sample("b")}}, faces());
  REQUIRE(pdf);
  CHECK(pdf.value->starts_with("%PDF-1.4"));
  CHECK(count(*pdf.value, "/Type /Page ") == 2);
  CHECK(count(*pdf.value, "/MediaBox [ 0 0 170.07874 56.692913 ]") == 2);
  CHECK(count(*pdf.value, "/FontFile2") <= 4);
  CHECK(count(*pdf.value, "/SMask") == 0);
}

TEST_CASE("the same figures give the same bytes") {
  const Figures figures{{sample("a")}};
  CHECK(*draw_pdf(figures, faces()).value == *draw_pdf(figures, faces()).value);
  CHECK(*draw_svg(figures.all[0], faces()).value == *draw_svg(figures.all[0], faces()).value);
  CHECK(*draw_png(figures.all[0], faces()).value == *draw_png(figures.all[0], faces()).value);
}

TEST_CASE("a figure without text needs no face") {
  Figure f = sample("a");
  f.marks.resize(3);
  const auto pdf = draw_pdf({{f}}, faces());
  REQUIRE(pdf);
  CHECK(count(*pdf.value, "/FontFile2") == 0);
}

TEST_CASE("an SVG states the figure's size, a PNG has 200 dots an inch") {
  const auto svg = draw_svg(sample("a"), faces());
  REQUIRE(svg);
  CHECK(svg.value->find("viewBox=\"0 0 170.07874 56.692913\"") != std::string::npos);
  const auto png = draw_png(sample("a"), faces());
  REQUIRE(png);
  REQUIRE(png.value->size() > 24);
  CHECK(png.value->starts_with("\x89PNG"));
  const auto byte = [&](size_t i) { return static_cast<unsigned char>((*png.value)[i]); };
  CHECK(byte(18) * 256 + byte(19) == 473);  // 60 mm
  CHECK(byte(22) * 256 + byte(23) == 158);  // 20 mm
}
