#include "kinds/heater.h"

namespace loamsheet {
namespace {

constexpr HeaterKind rows[] = {
    {.id = "panel", .item = "heater-panel"},
    {.id = "mat", .item = "heater-mat", .from_below = true},
    {.id = "cable", .item = "heater-cable"},
    {.id = "emitter", .item = "heater-emitter"},
};

}  // namespace

std::span<const HeaterKind> HeaterKind::all() {
  return rows;
}

}  // namespace loamsheet
