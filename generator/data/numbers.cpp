#include <optional>

#include "compose/findings.h"
#include "data/data.h"
#include "data/findings_json.h"
#include "data/json.h"

namespace loamsheet {
namespace {

Json identity(const Identity& id) {
  return {{"title", id.title},
          {"reference", id.reference},
          {"revision", id.revision},
          {"plant_on", iso(id.plant_on)}};
}

Json assumed(const std::vector<Assumed>& all) {
  Json list = Json::array();
  for (const auto& a : all) list.push_back({{"key", a.key}, {"value", a.value}, {"from", a.from}});
  return list;
}

Json drainage(const std::optional<DrainagePlan>& d) {
  if (!d) return nullptr;
  return {{"volume_l", figure(d->volume)},
          {"buy_l", figure(d->buy)},
          {"dry_kg", figure(d->dry)},
          {"void_l", figure(d->voids)}};
}

Json separator(const std::optional<SeparatorPlan>& s) {
  if (!s) return nullptr;
  return {{"area_m2", figure(s->area)},
          {"cut_mm", Json::array({figure(s->cut_width), figure(s->cut_depth)})}};
}

Json substrate(const SubstratePlan& s) {
  Json parts = Json::array();
  for (const auto& part : s.parts) {
    parts.push_back(
        {{"material", part.material}, {"buy_l", figure(part.buy)}, {"dry_kg", figure(part.dry)}});
  }
  return {{"volume_l", figure(s.volume)},
          {"buy_l", figure(s.buy)},
          {"dry_kg", figure(s.dry)},
          {"parts", parts}};
}

Json litter(const std::optional<LitterPlan>& l) {
  if (!l) return nullptr;
  return {{"volume_l", figure(l->volume)}, {"buy_l", figure(l->buy)}, {"dry_kg", figure(l->dry)}};
}

Json pull_list(const std::vector<PullItem>& items) {
  Json list = Json::array();
  for (const auto& i : items) {
    list.push_back({{"item", i.item}, {"need", figure(i.need)}, {"unit", i.unit}});
  }
  return list;
}

Json mass(const MassPlan& m) {
  return {{"empty_kg", figure(m.empty)},
          {"dry_kg", figure(m.dry)},
          {"wet_kg", figure(m.wet)},
          {"stand_margin_kg", figure(m.stand_margin)}};
}

Json water(const WaterPlan& w) {
  return {{"first_watering_l", figure(w.first_watering)},
          {"standing_mm", figure(w.standing)},
          {"highest_standing_mm", figure(w.highest_standing)}};
}

Json ready(const PlannedBuild& p) {
  Json because = Json::array();
  for (const auto& id : p.plan.ready.because) {
    because.push_back(p.wording.say("calendar.because." + id, {{"days", p.plan.ready.days}}));
  }
  return {
      {"earliest", iso(p.plan.ready.earliest)}, {"days", p.plan.ready.days}, {"because", because}};
}

Json numbers(const PlannedBuild& p) {
  const Plan& plan = p.plan;
  Json j;
  j["loamsheet"] = LOAMSHEET_VERSION;
  j["build"] = identity(p.build.identity);
  j["status"] = name_of(plan.status);
  j["assumed"] = assumed(p.build.assumed);
  j["footprint"] = {{"area_m2", figure(plan.footprint_area)},
                    {"perimeter_m", figure(plan.footprint_perimeter.v / 1000)}};
  j["layers"] = {{"drainage", drainage(plan.layers.drainage)},
                 {"separator", separator(plan.layers.separator)},
                 {"substrate", substrate(plan.layers.substrate)},
                 {"litter", litter(plan.layers.litter)}};
  j["mass"] = mass(plan.mass);
  j["water"] = water(plan.water);
  j["ready"] = ready(p);
  j["pull_list"] = pull_list(plan.pull_list);
  j["findings"] = findings_array(p);
  return j;
}

void flatten(const Json& j, const std::string& path, std::string& out) {
  if (!j.is_structured() || j.empty()) {
    out += path + ' ' + (j.is_string() ? j.get<std::string>() : j.dump()) + '\n';
    return;
  }
  for (const auto& [key, value] : j.items()) {
    const std::string step = j.is_array() ? '[' + key + ']' : (path.empty() ? "" : ".") + key;
    flatten(value, path + step, out);
  }
}

}  // namespace

std::string numbers_json(const PlannedBuild& p) {
  return numbers(p).dump(2) + '\n';
}

std::string numbers_text(const PlannedBuild& p) {
  std::string out;
  flatten(numbers(p), "", out);
  return out;
}

}  // namespace loamsheet
