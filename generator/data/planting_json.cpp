#include "data/planting_json.h"

namespace loamsheet {
namespace {

const char* name_of(SiteKind kind) {
  switch (kind) {
    case SiteKind::floor:
      return "floor";
    case SiteKind::pocket:
      return "pocket";
    case SiteKind::mount:
      break;
  }
  return "mount";
}

Json sentences(const std::vector<Reason>& why, const Wording& wording) {
  Json list = Json::array();
  for (const Reason& reason : why) {
    Args args;
    for (const auto& [slot, value] : reason.args) {
      args.emplace_back(slot, std::visit([](const auto& v) { return Arg(v); }, value));
    }
    list.push_back(wording.say("planting.why." + reason.name, args));
  }
  return list;
}

Json percent(const Range<Fraction>& share) {
  return Json::array({figure(share.low.v * 100), figure(share.high.v * 100)});
}

// A plant without a place has no position, light or air.
void add_place(const PlacedPlant& plant, Json& j) {
  const bool placed = plant.placed;
  const auto known = [&](double v) { return placed ? figure(v) : Json(nullptr); };
  j["x_mm"] = known(plant.at.x);
  j["y_mm"] = known(plant.at.y);
  j["z_mm"] = known(plant.at.z);
  j["site"] = placed ? Json(name_of(plant.site)) : Json(nullptr);
  j["on"] = plant.on.empty() ? Json(nullptr) : Json(plant.on);
  j["ppfd_umol_m2_s"] = known(plant.light.ppfd);
  j["dli_mol_m2_d"] = known(plant.light.dli);
  j["humidity_pct"] = placed ? percent(plant.humidity) : Json(nullptr);
}

}  // namespace

Json plants_json(const PlantingPlan& planting, const Wording& wording) {
  Json list = Json::array();
  for (const PlacedPlant& plant : planting.plants) {
    Json j{{"number", plant.number}, {"species", plant.species}};
    add_place(plant, j);
    j["spread_mm"] = figure(plant.spread);
    j["height_mm"] = figure(plant.height);
    j["fit"] = figure(plant.fit);
    j["why"] = sentences(plant.why, wording);
    list.push_back(std::move(j));
  }
  return list;
}

Json placement_json(const PlantingPlan& planting) {
  return {{"score", figure(planting.score)}, {"bound", figure(planting.bound)}};
}

}  // namespace loamsheet
