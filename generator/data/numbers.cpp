#include <optional>

#include "compose/findings.h"
#include "data/climate_json.h"
#include "data/data.h"
#include "data/findings_json.h"
#include "data/goods_json.h"
#include "data/json.h"
#include "data/planting_json.h"
#include "data/schedule_json.h"
#include "data/upkeep_json.h"

namespace loamsheet {
namespace {

Json identity(const Identity& id) {
  return {{"title", id.title},
          {"reference", id.reference},
          {"revision", id.revision},
          {"plant_on", iso(id.plant_on)},
          {"slip_d", id.slip}};
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
          {"pockets_l", figure(s.pockets)},
          {"dry_kg", figure(s.dry)},
          {"parts", parts}};
}

Json moss(const std::optional<MossPlan>& m) {
  if (!m) return nullptr;
  return {
      {"area_m2", figure(m->area)}, {"volume_l", figure(m->volume)}, {"dry_kg", figure(m->dry)}};
}

Json litter(const std::optional<LitterPlan>& l) {
  if (!l) return nullptr;
  return {{"volume_l", figure(l->volume)}, {"buy_l", figure(l->buy)}, {"dry_kg", figure(l->dry)}};
}

Json water(const WaterPlan& w) {
  return {{"first_watering_l", figure(w.first_watering)},
          {"standing_mm", figure(w.standing)},
          {"highest_standing_mm", figure(w.highest_standing)}};
}

Json uv(const Build& build, const UvPlan& uv) {
  return {{"animal", build.kept[uv.animal].facts.id},
          {"zone", Json::array({uv.zone.low, uv.zone.high})},
          {"basking_index", figure(uv.basking)},
          {"basking_at_mm", Json::array({figure(uv.back.x), figure(uv.back.y), figure(uv.back.z)})},
          {"most", figure(uv.most)},
          {"gradient", Json::array({figure(uv.gradient.low), figure(uv.gradient.high)})},
          {"mean", Json::array({figure(uv.mean.low), figure(uv.mean.high)})}};
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
                 {"litter", litter(plan.layers.litter)},
                 {"moss", moss(plan.layers.moss)}};
  j["mass"] = mass_json(plan.mass);
  if (plan.lift) j["lift"] = lift_json(*plan.lift, plan.sack);
  j["water"] = water(plan.water);
  if (plan.upkeep) add_upkeep(*plan.upkeep, j["water"]);
  if (plan.air) j["air"] = air_json(*plan.air);
  if (plan.heat) j["heat"] = heat_json(*plan.heat);
  for (const UvPlan& each : plan.uv) j["uv"].push_back(uv(p.build, each));
  j["readings"] = readings_json(plan.readings);
  const PlantingPlan planting = plan.planting.value_or(PlantingPlan{});
  j["plants"] = plants_json(planting, p.wording);
  j["placement"] = plan.planting ? placement_json(planting) : Json(nullptr);
  if (!plan.selections.empty()) j["choice"] = selections_json(plan.selections, p.wording);
  if (!p.build.replaced.empty()) j["replaced"] = replaced_json(p.build);
  j["order"] = order_json(p);
  j["calendar"] = calendar_json(p);
  j["ready"] = ready_json(p);
  j["pull_list"] = pull_list_json(p.build, plan);
  j["tools"] = plan.tools;
  add_goods_json(p.build, plan, j);
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
  return document(numbers(p));
}

std::string numbers_text(const PlannedBuild& p) {
  std::string out;
  flatten(numbers(p), "", out);
  return out;
}

}  // namespace loamsheet
