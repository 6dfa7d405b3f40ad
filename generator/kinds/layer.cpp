#include "kinds/layer.h"

namespace loamsheet {
namespace {

constexpr DrainageKind drainage[] = {
    {.id = "granules",
     .keys = "material|depth|outlet",
     .row = "layers.drainage",
     .how = "layers.granules-how",
     .label = "figure.drainage",
     .keeps_water_off = true,
     .poured = true,
     .sign = DrainageKind::Sign::pebbles},
    {.id = "raised-floor",
     .keys = "depth|outlet",
     .item = "raised-floor",
     .row = "layers.raised-floor",
     .how = "layers.raised-floor-how",
     .label = "figure.raised-floor",
     .keeps_water_off = true,
     .on_supports = true,
     .sign = DrainageKind::Sign::posts},
    {.id = "none", .how = "layers.none-how"},
};

constexpr OutletKind outlets[] = {
    {.id = "siphon-tube", .item = "outlet-siphon-tube", .draws = true},
    {.id = "port", .item = "outlet-port", .draws = true, .through_base = true},
    {.id = "none", .item = "outlet-none"},
};

}  // namespace

std::span<const DrainageKind> DrainageKind::all() {
  return drainage;
}

std::span<const OutletKind> OutletKind::all() {
  return outlets;
}

}  // namespace loamsheet
