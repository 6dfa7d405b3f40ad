#include "data/goods_json.h"

namespace loamsheet {
namespace {

// Exact: the nearest double of a decimal with four places is written as that decimal.
Json money(Money amount) {
  return static_cast<double>(amount.v) / 1e4;
}

Json money(const std::optional<Money>& amount) {
  return amount ? money(*amount) : Json(nullptr);
}

Json ratio(const Ratio& r) {
  return figure(static_cast<double>(r.top) / static_cast<double>(r.bottom));
}

Json pack(const Pack& p) {
  return {{"size", figure(p.size)},   {"count", p.count},        {"sold", figure(p.sold)},
          {"sold_unit", p.sold_unit}, {"price", money(p.price)}, {"shelf", p.shelf}};
}

Json line(const QuoteLine& l) {
  const bool packed = l.count > 0;
  return {{"group", name_of(l.group)},
          {"item", l.item.empty() ? Json(nullptr) : Json(l.item)},
          {"count", packed ? Json(l.count) : Json(nullptr)},
          {"size", packed ? figure(l.size) : Json(nullptr)},
          {"unit", packed ? Json(l.unit) : Json(nullptr)},
          {"hours", l.hours ? ratio(*l.hours) : Json(nullptr)},
          {"each", money(l.each)},
          {"amount", money(l.amount)}};
}

template <class T>
Json each(const std::vector<T>& all, Json (*as_json)(const T&)) {
  Json list = Json::array();
  for (const T& one : all) list.push_back(as_json(one));
  return list;
}

Json mark(const TapeMark& m) {
  Json j{{"layer", m.layer}, {"front_mm", figure(m.front)}, {"back_mm", figure(m.back)}};
  if (m.from) j["from_mm"] = figure(*m.from);
  return j;
}

Json cut(const Cut& c) {
  return {{"use", c.use},
          {"material", c.material},
          {"count", c.count},
          {"cut_mm", Json::array({figure(c.width), figure(c.depth)})},
          {"overlap_mm", figure(c.overlap)}};
}

Json maybe(const std::optional<double>& v) {
  return v ? figure(*v) : Json(nullptr);
}

Json dose(const DosePlan& d) {
  return {{"material", d.material},
          {"dose_g", figure(d.dose.v * 1000)},
          {"teaspoons", maybe(d.teaspoons)},
          {"nitrogen_mg_l", maybe(d.nitrogen_mg_l)}};
}

Json crew(const CrewPlan& c) {
  return {{"species", c.species},
          {"given", figure(c.given)},
          {"suggested", c.suggested ? Json(*c.suggested) : Json(nullptr)}};
}

Json fixed_load(const FixedLoad& f) {
  return {{"id", f.id},
          {"fixed_by", f.fixed_by ? Json((*f.fixed_by)->id) : Json(nullptr)},
          {"own_kg", figure(f.own)},
          {"pocket_kg", figure(f.pocket)},
          {"landing_kg", figure(f.landing)},
          {"must_hold_kg", figure(f.sum())}};
}

Json water_area(const std::optional<WaterAreaPlan>& w) {
  if (!w) return nullptr;
  return {{"volume_l", figure(w->volume)},
          {"dam_mm", Json::array({figure(w->dam_length), figure(w->dam_height)})},
          {"dam_kg", figure(w->dam)},
          {"pane_load_n", figure(w->pane_load_n)},
          {"floor_pressure_kpa", figure(w->floor_pressure_kpa)},
          {"uplift_kg", figure(w->uplift)}};
}

Json supports(const std::optional<SupportsPlan>& s) {
  if (!s) return nullptr;
  return {{"spacing_mm", figure(s->spacing)}, {"count", s->count}, {"load_kg", figure(s->load)}};
}

Json transport(const std::optional<TransportPlan>& t) {
  if (!t) return nullptr;
  return {{"date", t->date ? Json(iso(*t->date)) : Json(nullptr)},
          {"mass_kg", figure(t->mass)},
          {"taken_out_kg", figure(t->taken_out)},
          {"stones", t->stones}};
}

Json range(const Range<double>& r) {
  if (r.exact()) return figure(r.low);
  return Json::array({figure(r.low), figure(r.high)});
}

Json multipliers_json(const LiftTask& task) {
  const LiftMultipliers m = multipliers(task);
  return {{"hm", figure(m.horizontal)}, {"vm", figure(m.vertical)},  {"dm", figure(m.distance)},
          {"am", figure(m.asymmetry)},  {"fm", figure(m.frequency)}, {"cm", figure(m.coupling)}};
}

Json sack_json(const SackLift& sack) {
  return {{"item", sack.item},          {"mass_kg", figure(sack.mass)},
          {"index", maybe(sack.index)}, {"limit_kg", figure(sack.limit)},
          {"people", sack.people},      {"multipliers", multipliers_json(sack.task)}};
}

}  // namespace

Json pull_list_json(const Build& build, const Plan& plan) {
  Json list = Json::array();
  for (const PullItem& i : plan.pull_list) {
    Json item{{"item", i.item}, {"need", figure(i.need)}, {"unit", i.unit}, {"for", i.use}};
    if (build.stock) {
      item["packs"] = each(i.packs, pack);
      item["price"] = money(i.price);
      item["missing"] = figure(i.missing);
      item["left_over"] = figure(i.left_over);
    }
    list.push_back(std::move(item));
  }
  return list;
}

Json quote_json(const Quote& q) {
  Json j{{"currency", q.currency}, {"lines", each(q.lines, line)}};
  for (QuoteGroup group : {QuoteGroup::materials, QuoteGroup::plants, QuoteGroup::crew,
                           QuoteGroup::labour, QuoteGroup::delivery}) {
    j[name_of(group)] = money(subtotal(q, group));
  }
  j["net"] = money(q.net);
  j["tax_share"] = ratio(q.tax_share);
  j["tax"] = money(q.tax);
  j["total"] = money(q.total);
  j["deposit_share"] = ratio(q.deposit_share);
  j["deposit"] = money(q.deposit);
  j["balance"] = money(q.balance);
  j["partial"] = q.partial();
  j["unpriced"] = q.unpriced;
  j["valid_days"] = q.valid_days ? Json(*q.valid_days) : Json(nullptr);
  j["valid_until"] = q.valid_until ? Json(iso(*q.valid_until)) : Json(nullptr);
  return j;
}

Json mass_json(const MassPlan& m) {
  return {{"empty_kg", figure(m.empty)},
          {"dry_kg", figure(m.dry)},
          {"wet_kg", figure(m.wet)},
          {"stand_margin_kg", figure(m.stand_margin)},
          {"stand_load_kg_m2", range(m.stand_load)}};
}

Json lift_json(const LiftPlan& lift, const std::optional<SackLift>& sack) {
  return {{"empty_index", maybe(lift.empty_index)},
          {"limit_kg", figure(lift.limit)},
          {"people", lift.people},
          {"by_hand", lift.by_hand},
          {"multipliers", multipliers_json(lift.task)},
          {"sack", sack ? sack_json(*sack) : Json(nullptr)}};
}

void add_goods_json(const Build& build, const Plan& plan, Json& numbers) {
  if (plan.supports) numbers["layers"]["drainage"]["supports"] = supports(plan.supports);
  numbers["marks"] = each(plan.marks, mark);
  numbers["cuts"] = each(plan.cuts, cut);
  numbers["amendments"] = each(plan.doses, dose);
  numbers["crew"] = each(plan.crew, crew);
  numbers["fixed"] = each(plan.fixed, fixed_load);
  numbers["water_area"] = water_area(plan.water_area);
  numbers["transport"] = transport(plan.transport);
  Json own = Json::array();
  for (const auto& m : build.own_materials) own.push_back({{"material", m.id}, {"from", m.from}});
  numbers["own_materials"] = std::move(own);
  if (plan.quote) numbers["quote"] = quote_json(*plan.quote);
}

}  // namespace loamsheet
