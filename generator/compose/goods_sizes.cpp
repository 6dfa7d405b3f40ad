// goods_sizes: what tells two things of a kind apart on a pull list: their measures, their watts.
#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "compose/goods_words.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

double length_of(const Furnishing& thing) {
  if (!thing.kind->spans()) return thing.width.v;
  const Position &a = thing.from, &b = thing.to;
  return std::hypot(b.x - a.x, b.y - a.y, b.z - a.z);
}

// "30 cm long, 12 cm across".
std::string round_size(const Wording& w, const Furnishing& thing) {
  std::vector<std::string> parts;
  const double length = length_of(thing);
  if (length > 0) parts.push_back(w.say("pull.long", {{"length", Millimetres{length}}}));
  parts.push_back(w.say("pull.across", {{"diameter", thing.diameter}}));
  if (thing.depth.v > 0) parts.push_back(w.say("pull.deep", {{"depth", thing.depth}}));
  return join(parts, w.say("build.between"));
}

// "16 cm × 12 cm × 7 cm"; empty when nothing is stated.
std::string size_of(const Wording& w, const Furnishing& thing) {
  if (thing.diameter.v > 0) return round_size(w, thing);
  std::vector<std::string> sides;
  for (const Millimetres side : {thing.width, thing.depth, thing.height}) {
    if (side.v > 0) sides.push_back(w.amount(side));
  }
  return join(sides, w.say("pull.by"));
}

std::string watts(const Wording& w, double power) {
  return power > 0 ? w.say("pull.watts", {{"power", power}}) : "";
}

std::string lamp_size(const Wording& w, const Lamp& lamp) {
  std::vector<std::string> parts;
  if (lamp.length.v > 0) parts.push_back(w.amount(lamp.length));
  if (lamp.power > 0) parts.push_back(watts(w, lamp.power));
  return join(parts, w.say("build.between"));
}

}  // namespace

std::string sizes_of(const ComposeInput& in, const PullItem& item) {
  const Wording& w = in.wording;
  std::vector<std::string> sizes;
  const auto add = [&](std::string_view kind, std::string size) {
    const bool new_one = std::find(sizes.begin(), sizes.end(), size) == sizes.end();
    if (kind == item.item && !size.empty() && new_one) sizes.push_back(std::move(size));
  };
  if (item.use == "furnishing") {
    for (const Furnishing& thing : in.build.furnishings) add(thing.kind->item, size_of(w, thing));
  }
  if (item.use == "equipment") {
    for (const Lamp& lamp : in.build.lamps) add(lamp.kind->item, lamp_size(w, lamp));
    for (const Heater& heater : in.build.heaters) {
      add(heater.kind->item, watts(w, heater.power));
    }
  }
  return join(sizes, w.say("pull.or"));
}

}  // namespace loamsheet
