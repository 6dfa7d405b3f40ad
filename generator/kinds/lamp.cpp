#include "kinds/lamp.h"

namespace loamsheet {
namespace {

using Shines = LampKind::Shines;
using Sign = LampKind::Sign;

constexpr LampKind rows[] = {
    {.id = "bar", .keys = "length", .item = "lamp-bar", .label = "figure.lamp-bar"},
    {.id = "panel",
     .keys = "width|depth",
     .item = "lamp-panel",
     .label = "figure.lamp-panel",
     .shines = Shines::panel},
    {.id = "spot",
     .keys = "beam",
     .item = "lamp-spot",
     .label = "figure.lamp-spot",
     .shines = Shines::beam,
     .sign = Sign::cone,
     .warms_a_place = true},
    {.id = "uv-bar",
     .keys = "length",
     .item = "lamp-uv-bar",
     .label = "figure.lamp-uv-bar",
     .uv = true},
    {.id = "uv-spot",
     .keys = "beam",
     .item = "lamp-uv-spot",
     .label = "figure.lamp-uv-spot",
     .shines = Shines::beam,
     .sign = Sign::cone,
     .uv = true,
     .warms_a_place = true},
};

}  // namespace

std::span<const LampKind> LampKind::all() {
  return rows;
}

}  // namespace loamsheet
