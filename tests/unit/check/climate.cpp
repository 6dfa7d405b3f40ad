#include <algorithm>
#include <catch2/catch.hpp>

#include "example.h"

using namespace loamsheet;

namespace {

std::string with_lamp(const std::string& lamp) {
  return example_spec + "lamps:\n  - " + lamp + "\n";
}

std::string complaint(const std::string& text) {
  MemoryWorld world;
  world.files["a/spec.yaml"] = text;
  auto spec = read_spec(world, "a/spec.yaml", "");
  INFO(render(spec.messages, {}));
  REQUIRE(spec.value);
  const auto build = check(*spec.value, real_catalogue());
  REQUIRE_FALSE(build.value);
  return build.messages.front().message;
}

}  // namespace

TEST_CASE("a bar takes its place, length, flux, photons and hours from the spec") {
  const Build b = built(with_lamp(
      "{id: day, kind: bar, length: 50 cm, flux: 3000 lm, spectrum: fluorescent, power: 30 W, "
      "at: [30 cm, 20 cm, 50 cm], hours: 12 h}"));
  REQUIRE(b.lamps.size() == 1);
  const Lamp& lamp = b.lamps[0];
  CHECK(lamp.kind->id == "bar");
  CHECK(lamp.at.z == Approx(500));
  CHECK(lamp.length == 500_mm);
  CHECK(lamp.flux == 3000);
  CHECK(lamp.photons_per_lux == Approx(0.0135));
  CHECK(lamp.power == 30);
  CHECK(lamp.hours == 12);
}

TEST_CASE("a panel's width lies along x and its depth along y") {
  const Build b = built(with_lamp(
      "{id: day, kind: panel, width: 40 cm, depth: 20 cm, flux: 3000 lm, spectrum: white-led, "
      "power: 30 W, at: [30 cm, 20 cm, 50 cm], hours: 12 h}"));
  CHECK(b.lamps[0].length == 400_mm);
  CHECK(b.lamps[0].width == 200_mm);
}

TEST_CASE("a UV table is sorted by distance") {
  const Build b =
      built(with_lamp("{id: uv, kind: uv-bar, power: 24 W, at: [30 cm, 20 cm, 50 cm], hours: 10 h, "
                      "uvi: [[30 cm, 1.4], [20 cm, 2.8]]}"));
  REQUIRE(b.lamps[0].uv_index.size() == 2);
  CHECK(b.lamps[0].uv_index[0].first == 200_mm);
  CHECK(b.lamps[0].uv_index[0].second == Approx(2.8));
}

TEST_CASE("a lamp that shines must say how long or how wide it shines") {
  const std::string rest =
      "flux: 500 lm, spectrum: halogen, power: 35 W, "
      "at: [30 cm, 20 cm, 50 cm], hours: 6 h}";
  CHECK(complaint(with_lamp("{id: day, kind: bar, " + rest)) ==
        "lamp 'day' shines, but its length is not stated");
  CHECK(complaint(with_lamp("{id: warm, kind: spot, " + rest)) ==
        "lamp 'warm' shines, but its beam is not stated");
  CHECK(complaint(with_lamp("{id: flat, kind: panel, width: 40 cm, " + rest)) ==
        "lamp 'flat' shines, but its depth is not stated");
}

TEST_CASE("a distance stands in a UV table once") {
  CHECK(complaint(with_lamp("{id: uv, kind: uv-bar, power: 24 W, at: [30 cm, 20 cm, 50 cm], "
                            "hours: 10 h, uvi: [[20 cm, 2.8], [20 cm, 1.4]]}")) ==
        "the UV table of lamp 'uv' has 20 cm twice");
}

TEST_CASE("heaters keep their power and their thermostat") {
  const Build b = built(example_spec + "heaters: [{kind: panel, power: 40 W, thermostat: no}]\n");
  REQUIRE(b.heaters.size() == 1);
  CHECK(b.heaters[0].power == 40);
  CHECK_FALSE(b.heaters[0].thermostat);
}

TEST_CASE("a room is as stated, and an unknown one is what its key stands for") {
  const Build b = built(example_spec + "room: {temperature: 17–26 °C, humidity: '?'}\n");
  CHECK(b.room.stated);
  CHECK(b.room.temperature.range == Range<Celsius>{{17}, {26}});
  CHECK(b.room.temperature.unknown == -1);
  CHECK(b.room.humidity.range == Range<Fraction>{{0.20}, {0.70}});
  REQUIRE(b.room.humidity.unknown == 0);
  CHECK(b.unknowns[0].key == "room.humidity");
}

TEST_CASE("a room that is not stated is assumed and listed") {
  const Build b = built(example_spec);
  CHECK_FALSE(b.room.stated);
  CHECK(b.room.temperature.range == Range<Celsius>{{15}, {30}});
  CHECK(std::any_of(b.assumed.begin(), b.assumed.end(), [](const Assumed& a) {
    return a.key == "room.temperature" && a.value == "15–30 °C" && a.from == "default";
  }));
}

TEST_CASE("misting is by nozzles or by hand, with an amount in litres") {
  const Build pump =
      built(example_spec + "misting: {by: nozzles, count: 2, flow: 90 mL/min, tank: 10 L}\n");
  REQUIRE(pump.misting);
  CHECK(pump.misting->nozzles == 2);
  CHECK(pump.misting->flow.range.low.v == Approx(0.09));
  CHECK(pump.misting->tank->v == Approx(10));
  const Build hand = built(example_spec + "misting: {by: hand, per_pull: 0.9 mL}\n");
  CHECK(hand.misting->by_hand);
  CHECK(hand.misting->pull.range.high.v == Approx(0.0009));
}
