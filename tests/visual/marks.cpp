// Small crops against stored pictures. Each says in one sentence what must be seen.
// LOAMSHEET_REWRITE=1 stores them anew, but never in CI.
#include <cairo.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>

#include "draw/draw.h"
#include "figure/dimension.h"
#include "figure/hatch.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

const Typefaces& faces() {
  static const Typefaces loaded = std::move(load_typefaces(*real_world()).value.value());
  return loaded;
}

struct Bytes {
  const std::string& from;
  size_t at = 0;
};

cairo_status_t take(void* closure, unsigned char* to, unsigned length) {
  auto& bytes = *static_cast<Bytes*>(closure);
  if (bytes.at + length > bytes.from.size()) return CAIRO_STATUS_READ_ERROR;
  std::copy_n(bytes.from.data() + bytes.at, length, reinterpret_cast<char*>(to));
  bytes.at += length;
  return CAIRO_STATUS_SUCCESS;
}

struct Picture {
  int width, height;
  std::vector<int> grey;
};

Picture decoded_png(const std::string& png) {
  Bytes bytes{png};
  cairo_surface_t* s = cairo_image_surface_create_from_png_stream(take, &bytes);
  REQUIRE(cairo_surface_status(s) == CAIRO_STATUS_SUCCESS);
  Picture p{cairo_image_surface_get_width(s), cairo_image_surface_get_height(s), {}};
  const unsigned char* data = cairo_image_surface_get_data(s);
  for (int y = 0; y < p.height; ++y) {
    for (int x = 0; x < p.width; ++x) {
      p.grey.push_back(data[y * cairo_image_surface_get_stride(s) + 4 * x + 1]);
    }
  }
  cairo_surface_destroy(s);
  return p;
}

// Mean absolute difference of the pixels, 0 to 255.
double difference(const Picture& a, const Picture& b) {
  REQUIRE(a.width == b.width);
  REQUIRE(a.height == b.height);
  double sum = 0;
  for (size_t i = 0; i < a.grey.size(); ++i) sum += std::abs(a.grey[i] - b.grey[i]);
  return sum / static_cast<double>(a.grey.size());
}

// Drawn with this frame, it looks as stored: half a grey step of 255 on average at most, which
// another version of a drawing library may need and no missing mark of these crops keeps to.
void looks_as_stored(const std::string& name, double width, double height, Marks marks) {
  Figure f;
  f.width = width, f.height = height;
  f.marks = std::move(marks);
  const auto png = draw_png(f, faces());
  REQUIRE(png);
  const auto world = real_world();
  const std::string path = LOAMSHEET_SOURCE "/tests/visual/" + name + ".png";
  if (std::getenv("LOAMSHEET_REWRITE") != nullptr) {
    if (std::getenv("CI") != nullptr) FAIL("pictures are not rewritten in CI");
    REQUIRE(world->write(path, *png.value));
  }
  const auto stored = world->read(path);
  REQUIRE(stored);
  CHECK(difference(decoded_png(*png.value), decoded_png(*stored)) < 0.5);
}

}  // namespace

TEST_CASE("seven materials are told apart by their marks alone, without colour") {
  Marks marks;
  for (int i = 0; i < 7; ++i) {
    const double x = 1 + 11.0 * i;
    const std::vector<Point> region = rectangle_points({x, 1, x + 10, 9});
    add(marks, hatch(static_cast<Texture>(i), region));
    marks.push_back(Stroke{region, true, pen::thin});
  }
  looks_as_stored("hatches", 79, 10, marks);
}

TEST_CASE("values stand above level lines and left of upright ones, which read from the right") {
  const Dimensioner by{faces(), 8};
  Marks marks{outline_of({20, 12, 45, 27}, pen::wide)};
  add(marks, by.level({20, 45, "900"}, {6, 12}));
  add(marks, by.upright({{12, 27, "600"}}, {13, 20}));
  looks_as_stored("dimensions", 50, 30, marks);
}

TEST_CASE(
    "values of thin layers stand beside the chain, none on another, each joined to its part") {
  const Dimensioner by{faces(), 8};
  const auto chain = by.upright({{3, 5.5, "50"}, {5.5, 8, "50"}, {8, 8.5, "10"}}, {15, 20});
  Marks marks{outline_of({20, 3, 30, 8.5}, pen::wide)};
  add(marks, chain);
  looks_as_stored("thin-chain", 32, 16, marks);
}

TEST_CASE("a leader ends in a dot on what it names, and a mesh is a heavier dashed line") {
  Marks marks{line({2, 4}, {38, 4}, pen::mesh), line({2, 8}, {38, 8}, pen::narrow),
              Leader{{{30, 14}, {25, 8}, {12, 8}}, pen::narrow},
              label_at(faces(), {"Leaf litter", 8, Face::bold}, {31, 13})};
  looks_as_stored("leader", 52, 18, marks);
}
