// What begin prints can be checked and planned as it stands, for every animal and in both units.
#include <catch2/catch.hpp>

#include "job/begin.h"
#include "job/job.h"
#include "overlay.h"

namespace {

using namespace loamsheet;

void plans(const StarterAsk& ask) {
  auto world = real_world();
  const auto starter = starter_spec(*world, ask);
  INFO(render(starter.messages, nullptr));
  REQUIRE(starter);
  INFO(*starter.value);
  Overlay overlay("starter.yaml", *starter.value);
  const auto planned = plan_spec(overlay, "starter.yaml", "");
  INFO(render(planned.messages, nullptr));
  CHECK(planned);
  CHECK(planned.messages.empty());
}

}  // namespace

TEST_CASE("the starter of every animal is a spec without errors") {
  auto world = real_world();
  const auto catalogue = read_catalogue(*world);
  REQUIRE(catalogue);
  const auto animals = catalogue.value->animals.ids();
  CHECK(animals.size() >= 40);
  for (const auto& id : animals) {
    INFO(id);
    plans({id, ""});
  }
}

TEST_CASE("a starter takes the size and the units that were typed") {
  plans({"", "90x45x60cm"});
  plans({"", "36x18x24in"});
  plans({"eublepharis-macularius", "4x2x2ft"});
  CHECK(tank_size("36 x 18 x 24 in").value->height.v == Approx(609.6));
  CHECK_FALSE(tank_size("90x45x60"));
  CHECK_FALSE(tank_size("90x45cm"));
  CHECK_FALSE(tank_size("90x45x1cm"));
  CHECK_FALSE(tank_size("x"));
}
