#include "base/fields.h"
#include "plan/air/air.h"

namespace loamsheet {

void fields(const AirState& air, FieldSink& to) {
  to.ends("temperature", unit::c, air.temperature);
  to.ends("humidity", unit::pct, air.humidity);
  to.ends("vent", unit::l_s, air.vent);
  to.ends("lost", unit::ml_h, air.lost);
  to.ends("condensed", unit::ml_h, air.condensed);
}

void fields(const Season& season, FieldSink& to) {
  to.object("day", season.day);
  to.object("night", season.night);
}

void fields(const AirPlan& air, FieldSink& to) {
  to.object("winter", air.winter);
  to.object("summer", air.summer);
}

void fields(const HeatPlan& heat, FieldSink& to) {
  to.add("needed_day", unit::w, heat.needed_day);
  to.add("needed_night", unit::w, heat.needed_night);
  to.add("fitted", unit::w, heat.fitted);
  to.add("kwh_month", heat.kwh_month);
  to.add("cost_month", heat.cost_month);
  to.ends("all_off", unit::c, heat.all_off);
  to.ends("all_on", unit::c, heat.all_on);
}

void fields(const FirstReading& reading, FieldSink& to) {
  to.add("of", reading.of);
  to.add("moves_humidity", unit::share_pct, reading.humidity);
  to.add("moves_temperature", unit::k, reading.warmth);
}

namespace {

// Of one misting: seconds of the pump, or pulls of the trigger.
void day_of(const WaterDay& day, bool by_hand, FieldSink& to) {
  to.add("day", day.day);
  to.add("watered", unit::ml, day.watered);
  to.add("mist", unit::ml, day.mist);
  to.add("mistings", day.mistings);
  to.add("mist_s", by_hand ? std::nullopt : std::optional(day.each));
  to.add("mist_pulls", by_hand ? std::optional(day.each) : std::nullopt);
  to.add("lost", unit::ml, day.lost);
  to.add("drained", unit::ml, day.drained);
  to.add("stored", unit::ml, day.stored);
  to.add("standing", unit::mm, day.standing);
}

}  // namespace

void fields(const UpkeepPlan& upkeep, FieldSink& to) {
  to.add("placed", unit::ml, upkeep.placed);
  to.add("stuck_on_overflow", unit::l, upkeep.stuck_on_overflow);
  to.add("fill_every", unit::days, upkeep.fill_every);
  to.add("flush_every_d", upkeep.flush_every);
  if (to.inner()) to.add("regime_from_d", upkeep.regime_from);
  to.each("days", upkeep.days, [&](const WaterDay& day) { day_of(day, upkeep.by_hand, to); });
}

}  // namespace loamsheet
