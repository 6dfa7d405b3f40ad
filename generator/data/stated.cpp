#include "data/stated.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

Json value_of(const std::string& text) {
  return text;
}
Json value_of(const std::vector<std::string>& names) {
  return names;
}
Json value_of(bool yes) {
  return yes;
}
Json value_of(int n) {
  return n;
}
Json value_of(double v) {
  return figure(v);
}
Json value_of(Fraction share) {
  return figure(share.v * 100);
}
template <class Unit>
Json value_of(Amount<Unit> amount) {
  return figure(amount.v);
}
template <class T>
Json value_of(const Range<T>& range) {
  if (range.exact()) return value_of(range.low);
  return Json::array({value_of(range.low), value_of(range.high)});
}

// Values as the catalogue's entries hold them, in words.
class Shower {
 public:
  explicit Shower(const Wording& words) : words_(words) {}

  std::string operator()(const std::string& text) const { return text; }
  std::string operator()(const std::vector<std::string>& names) const { return join(names, ", "); }
  std::string operator()(bool yes) const {
    return yes ? words_.say("lookup.yes") : words_.say("lookup.no");
  }
  std::string operator()(const Range<double>& r) const {
    if (r.exact()) return words_.amount(r.low);
    return words_.say("lookup.span", {{"low", r.low}, {"high", r.high}});
  }
  std::string operator()(const Range<KilogramsPerCubicMetre>& r) const {
    return (*this)(Range<double>{r.low.v, r.high.v});
  }
  template <class T>
  std::string operator()(const T& value) const {
    return words_.amount(value);
  }

 private:
  const Wording& words_;
};

// Puts the facts of an entry in a row.
class Stating {
 public:
  Stating(std::string id, std::string name, const Wording& words)
      : show_(words), looked_{std::move(id), std::move(name), {}, false} {}

  template <class T>
  Stating& fact(const char* key, const std::optional<Fact<T>>& known) {
    if (known) add({key, value_of(known->value), show_(known->value), {known->origin.name}});
    return *this;
  }
  template <class T>
  Stating& plain(const char* key, const T& value) {
    add({key, value_of(value), show_(value), {}});
    return *this;
  }
  void add(Stated fact) { looked_.facts.push_back(std::move(fact)); }
  Looked take() { return std::move(looked_); }

 private:
  Shower show_;
  Looked looked_;
};

// "none-known" reads "none known", which promises nothing.
std::string with_blanks(std::string kind) {
  std::replace(kind.begin(), kind.end(), '-', ' ');
  return kind;
}

Stated stated_hazards(const std::vector<Hazard>& hazards) {
  Stated all{"hazards", Json::array(), "", {}};
  for (const Hazard& hazard : hazards) {
    all.value.push_back(hazard.kind);
    all.shown += (all.shown.empty() ? "" : ", ") + with_blanks(hazard.kind);
    all.from.push_back(hazard.origin.name);
  }
  return all;
}

}  // namespace

const Stated* Looked::find(std::string_view key) const {
  for (const Stated& fact : facts) {
    if (fact.key == key) return &fact;
  }
  return nullptr;
}

Looked stated(const Plant& p, const Wording& words) {
  Stating s(p.id, p.name, words);
  s.fact("family", p.family).fact("habit", p.habit).fact("growth", p.growth);
  s.fact("leaf", p.leaf).fact("role", p.role);
  s.fact("height_mm", p.height).fact("spread_mm", p.spread).fact("root_depth_mm", p.root_depth);
  s.fact("light", p.light).fact("ppfd_from_umol_m2_s", p.ppfd_from);
  s.fact("humidity_from_pct", p.humidity).fact("humidity_to_pct", p.dampest);
  s.fact("moisture", p.moisture);
  s.fact("coldest_c", p.coldest).fact("warmest_c", p.warmest);
  s.fact("mountable", p.mountable).fact("robustness", p.robustness);
  if (!p.hazards.empty()) s.add(stated_hazards(p.hazards));
  s.fact("edible", p.edible);
  s.fact("invasive", p.invasive).fact("first_month", p.first_month);
  return s.take();
}

Looked stated(const Animal& a, const Wording& words) {
  Stating s(a.id, a.name, words);
  s.fact("group", a.group).fact("build_kind", a.build_kind);
  s.fact("length_mm", a.length).fact("mass_kg", a.mass);
  s.fact("lifestyle", a.lifestyle).fact("diet", a.diet);
  s.fact("browses", a.browses).fact("activity", a.activity);
  s.fact("society", a.society).fact("lives_with", a.lives_with);
  s.fact("planted_with", a.planted_with);
  s.fact("digs", a.digs).fact("claws", a.claws).fact("climbs", a.climbs).fact("jumps", a.jumps);
  s.fact("wear", a.wear).fact("lays", a.lays).fact("water", a.water);
  s.fact("young_mm", a.young).fact("feeder_mm", a.feeder);
  s.fact("floor_length_mm", a.floor_length).fact("floor_width_mm", a.floor_width);
  s.fact("headroom_mm", a.headroom);
  s.fact("day_c", a.day).fact("basking_c", a.basking).fact("night_c", a.night);
  s.fact("warmest_c", a.warmest);
  s.fact("humidity_pct", a.humidity).fact("uv_zone", a.uv_zone).fact("permit", a.permit);
  s.fact("skin_takes_up", a.body.skin_takes_up).fact("moults_bare", a.body.moults_bare);
  s.fact("thickness_pct", a.body.thickness);
  return s.take();
}

Looked stated(const CrewSpecies& c, const Wording& words) {
  Stating s(c.id, c.name, words);
  s.fact("group", c.group).fact("needs", c.needs).fact("diet", c.diet).fact("protein", c.protein);
  s.fact("coldest_c", c.coldest).fact("warmest_c", c.warmest);
  s.fact("density_per_m2", c.density).fact("harasses", c.harasses).fact("caution", c.caution);
  Looked looked = s.take();
  looked.reference = c.reference;
  return looked;
}

Looked stated(const Material& m, const Wording& words) {
  Stating s(m.id, m.name, words);
  s.plain("role", m.role);
  if (m.rusts) s.plain("rusts", *m.rusts);
  if (!m.decay.empty()) s.plain("decay", m.decay);
  s.fact("dry_density_kg_m3", m.dry_density).fact("porosity_pct", m.porosity);
  s.fact("voids_pct", m.voids).fact("field_capacity_pct", m.field_capacity);
  s.fact("moisture_dry_pct", m.moisture_dry).fact("moisture_damp_pct", m.moisture_damp);
  s.fact("settling_pct", m.settling).fact("areal_kg_m2", m.areal_kg_m2);
  if (!m.hazards.empty()) s.add(stated_hazards(m.hazards));
  s.fact("caution", m.caution);
  return s.take();
}

}  // namespace loamsheet
