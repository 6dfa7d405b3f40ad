#include "kinds/shape.h"

namespace loamsheet {
namespace {

constexpr FloorShape rows[] = {
    {.id = "rectangle",
     .keys = "width|depth",
     .name = "figure.shape-rectangle",
     .tank = "build.tank-rectangle",
     .shape = Shape::rectangle},
    {.id = "bow-front",
     .keys = "width|depth|bulge",
     .name = "figure.shape-bow-front",
     .tank = "build.tank-bow-front",
     .shape = Shape::bow_front},
    {.id = "corner",
     .keys = "width|cut",
     .name = "figure.shape-corner",
     .tank = "build.tank-corner",
     .shape = Shape::corner},
    {.id = "hexagon",
     .keys = "width",
     .name = "figure.shape-hexagon",
     .tank = "build.tank-hexagon",
     .shape = Shape::hexagon},
    {.id = "round",
     .keys = "width",
     .name = "figure.shape-round",
     .tank = "build.tank-round",
     .shape = Shape::round},
    {.id = "outline",
     .keys = "points",
     .name = "figure.shape-outline",
     .tank = "build.tank-outline",
     .shape = Shape::outline},
};

}  // namespace

std::span<const FloorShape> FloorShape::all() {
  return rows;
}

}  // namespace loamsheet
