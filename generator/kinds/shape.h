// shape: the shapes that the floor of a tank may have, a row each.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

enum class Shape { rectangle, bow_front, corner, hexagon, round, outline };

struct FloorShape {
  std::string_view id;
  std::string_view keys;
  std::string_view name, tank;  // sentences: the shape's name, and a tank of that shape
  Shape shape = Shape::rectangle;

  static std::span<const FloorShape> all();
};

}  // namespace loamsheet
