#include "data/planting_json.h"

#include "compose/words.h"

namespace loamsheet {
namespace {

std::string sentence(const char* kind, const Reason& reason, const Wording& wording) {
  return wording.say(kind + reason.name, reason.args);
}

Json money(const std::optional<double>& amount) {
  return amount ? figure(*amount) : Json(nullptr);
}

Json picked_json(const std::vector<PickedPlant>& picked, const Wording& wording) {
  Json list = Json::array();
  for (const PickedPlant& plant : picked) {
    Json why = Json::array();
    for (const Reason& reason : plant.why) {
      why.push_back(sentence("planting.picked.", reason, wording));
    }
    list.push_back({{"number", plant.number},
                    {"species", plant.species},
                    {"role", plant.role},
                    {"price", money(plant.price)},
                    {"why", why}});
  }
  return list;
}

Json passed_json(const std::vector<PassedOver>& passed, const Wording& wording) {
  Json list = Json::array();
  for (const PassedOver& plant : passed) {
    list.push_back({{"species", plant.species},
                    {"role", plant.role},
                    {"because", plant.because.name},
                    {"words", sentence("planting.passed.", plant.because, wording)}});
  }
  return list;
}

}  // namespace

Json selections_json(const std::vector<Selection>& selections, const Wording& wording) {
  Json list = Json::array();
  for (const Selection& selection : selections) {
    list.push_back({{"wanted", selection.wanted},
                    {"budget", money(selection.budget)},
                    {"cost", money(selection.cost)},
                    {"picked", picked_json(selection.picked, wording)},
                    {"passed_over", passed_json(selection.passed_over, wording)},
                    {"empty_roles", selection.empty_roles}});
  }
  return list;
}

Json replaced_json(const Build& build) {
  Json list = Json::array();
  for (const PlantUse& use : build.plants) {
    if (!use.before) continue;
    list.push_back({{"plant", use.number},
                    {"species", use.before->facts.id},
                    {"by", use.facts.id},
                    {"on", iso(*use.replaced_on)}});
  }
  return list;
}

}  // namespace loamsheet
