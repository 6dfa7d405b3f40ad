#include "data/upkeep_json.h"

namespace loamsheet {
namespace {

Json millilitres(Litres amount) {
  return figure(amount.v * 1000);
}

// Of one misting: seconds of the pump, or pulls of the trigger.
Json day_json(const WaterDay& day, bool by_hand) {
  return {{"day", day.day},
          {"watered_ml", millilitres(day.watered)},
          {"mist_ml", millilitres(day.mist)},
          {"mistings", day.mistings},
          {"mist_s", by_hand ? Json(nullptr) : figure(day.each)},
          {"mist_pulls", by_hand ? figure(day.each) : Json(nullptr)},
          {"lost_ml", millilitres(day.lost)},
          {"drained_ml", millilitres(day.drained)},
          {"stored_ml", millilitres(day.stored)},
          {"standing_mm", figure(day.standing)}};
}

}  // namespace

void add_upkeep(const UpkeepPlan& upkeep, Json& water) {
  water["placed_ml"] = millilitres(upkeep.placed);
  water["stuck_on_overflow_l"] = figure(upkeep.stuck_on_overflow);
  water["fill_every_d"] = upkeep.fill_every ? figure(*upkeep.fill_every) : Json(nullptr);
  water["flush_every_d"] = upkeep.flush_every ? Json(*upkeep.flush_every) : Json(nullptr);
  Json days = Json::array();
  for (const WaterDay& day : upkeep.days) days.push_back(day_json(day, upkeep.by_hand));
  water["days"] = std::move(days);
}

}  // namespace loamsheet
