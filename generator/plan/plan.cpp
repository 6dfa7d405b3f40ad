#include "plan/plan.h"

#include <algorithm>
#include <tuple>

#include "base/fields.h"
#include "base/text_sink.h"
#include "check/build.h"
#include "plan/care/readiness.h"
#include "plan/fill/scenario.h"
#include "plan/fit/fit.h"

namespace loamsheet {
namespace {

bool depends_on_unknown(const Build& build, const Decisions& decisions) {
  for (size_t i = 0; i < build.unknowns.size(); ++i) {
    if (matters(build, decisions, i)) return true;
    if (air_depends_on(build, static_cast<int>(i))) return true;
  }
  return false;
}

Status status(const Build& build, const Decisions& decisions, const std::vector<Finding>& found) {
  const bool stopped = std::any_of(found.begin(), found.end(),
                                   [](const Finding& f) { return f.weight == Weight::stop; });
  if (stopped) return Status::not_cleared;
  return depends_on_unknown(build, decisions) ? Status::provisional : Status::cleared;
}

bool comes_before(const Finding& a, const Finding& b, const std::string& spec_file) {
  const auto rank = [&](const Finding& f) {
    const int place = f.where.line == 0 ? 2 : f.where.file == spec_file ? 0 : 1;
    return std::tuple(f.weight, place, f.where.file, f.where.line, f.where.column);
  };
  return rank(a) < rank(b);
}

// Cautions that are taken on stay among the findings, with who took them on.
void take_on(const Build& build, Found& all) {
  for (const Acceptance& accepted : build.accepted) {
    for (Finding& finding : all) {
      if (finding.rule != accepted.rule || finding.weight != Weight::caution) continue;
      finding.taken_on = TakenOn{accepted.by, accepted.reason};
    }
  }
}

// What two entries of one species give twice in the same words is told once, at the first.
void drop_repeats(Found& all) {
  Found told;
  for (Finding& finding : all) {
    const bool again = std::any_of(told.begin(), told.end(), [&](const Finding& f) {
      return f.rule == finding.rule && f.weight == finding.weight && f.args == finding.args;
    });
    if (!again) told.push_back(std::move(finding));
  }
  all = std::move(told);
}

// Values that nobody knows.
Found input_findings(const Build& build) {
  Found found;
  for (const UnknownInput& unknown : build.unknowns) {
    found.push_back({Weight::caution,
                     "value-unknown",
                     unknown.where,
                     {{"input", unknown.key}, {"range", unknown.shown}, {"from", unknown.from}}});
  }
  return found;
}

Found fit_findings(const Build& build) {
  Found all;
  for (const auto rule :
       {animal_fit, plant_fit, furniture_fit, escape_fit, material_fit, crew_fit, stone_fit}) {
    append(all, rule(build));
  }
  return all;
}

// What each room finds against the plan.
Found found_by_rooms(const Build& build, const Plan& plan) {
  Found all = layer_findings(build, plan);
  for (Found more :
       {drainage_findings(build, plan), tank_findings(build, plan), water_findings(build, plan),
        stock_findings(build, plan), dose_findings(build, plan), fixing_findings(build, plan),
        sack_findings(build, plan), lift_findings(build, plan), schedule_findings(build, plan),
        fit_findings(build), placed_findings(build, plan), lamp_findings(build),
        uv_findings(build, plan), lit_findings(build, plan), climate_findings(build, plan),
        input_findings(build)}) {
    append(all, std::move(more));
  }
  append(all, record_findings(build, plan.selections, all));
  return all;
}

// Stops first, then cautions, then notes; each in the order of the spec, those without a place
// last.
Found all_findings(const Build& build, const Plan& plan) {
  Found all = found_by_rooms(build, plan);
  drop_repeats(all);
  take_on(build, all);
  std::stable_sort(all.begin(), all.end(), [&](const Finding& a, const Finding& b) {
    return comes_before(a, b, build.spec_file);
  });
  return all;
}

void add_climate(const Build& build, Plan& plan) {
  plan.uv = uv_plans(build);
  plan.air = air_plan(build);
  plan.heat = heat_plan(build);
  plan.readings = first_readings(build);
  plan.upkeep = plan_upkeep(build, plan.layers, *plan.air, last_day(build, plan.ready.days));
}

void fields_of_climate(const Build& build, const Plan& plan, FieldSink& to) {
  to.open({"water"});
  fields(plan.water, to);
  if (plan.upkeep) fields(*plan.upkeep, to);
  to.close();
  if (plan.air) to.object("air", plan.air);
  if (plan.heat) to.object("heat", plan.heat);
  if (!plan.uv.empty()) {
    to.each("uv", plan.uv, [&](const UvPlan& uv) { fields(uv, build, to); });
  }
  to.list("readings", plan.readings);
}

void fields_of_plants(const Build& build, const Plan& plan, FieldSink& to) {
  const std::vector<PlacedPlant> none;
  to.list("plants", plan.planting ? plan.planting->plants : none);
  to.object("placement", plan.planting);
  if (!plan.selections.empty()) to.list("choice", plan.selections);
  if (!build.replaced.empty()) fields_of_replaced(build, to);
}

}  // namespace

Plan make_plan(const Build& build, std::vector<Selection> selections) {
  const Decisions decisions = decide(build);
  Plan plan;
  plan.selections = std::move(selections);
  static_cast<Filling&>(plan) = plan_filling(build, decisions);
  plan.ready = plan_ready(build);
  add_climate(build, plan);
  if (!build.plants.empty()) plan.planting = plan_planting(build, plan.layers, *plan.air);
  add_schedule(build, plan);
  add_shopping(build, plan);
  plan.findings = all_findings(build, plan);
  plan.status = status(build, decisions, plan.findings);
  return plan;
}

std::string name_of(Status status) {
  switch (status) {
    case Status::cleared:
      return "cleared";
    case Status::provisional:
      return "provisional";
    case Status::not_cleared:
      return "not cleared";
  }
  return "";
}

void fields(const Build& build, const Plan& plan, FieldSink& to) {
  to.object("build", build.identity);
  to.add("status", name_of(plan.status));
  to.list("assumed", build.assumed);
  fields_of_layers(plan, to);
  fields_of_lift(plan, to);
  fields_of_climate(build, plan, to);
  fields_of_plants(build, plan, to);
  to.list("order", plan.order);
  to.list("calendar", plan.calendar);
  to.open({"ready"}), fields(plan.ready, build, to), to.close();
  fields_of_list(build, plan, to);
  fields_of_goods(plan, to);
  to.list("own_materials", build.own_materials);
  if (plan.quote) to.object("quote", plan.quote);
}

std::string dump(const Build& build, const Plan& plan) {
  TextSink to;
  fields(build, plan, to);
  to.list("findings", plan.findings);
  return to.text();
}

}  // namespace loamsheet
