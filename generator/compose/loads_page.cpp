#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

using Fact = Facts::Fact;

std::string force(const Wording& w, double newtons) {
  return w.say("loads.newtons", {{"force", fixed(newtons, 0)}});
}

std::string stand_load(const Wording& w, const Range<double>& load) {
  if (load.exact()) return w.amount(load.low, "per-area");
  return w.say("loads.per-area", {{"low", load.low}, {"high", load.high}});
}

Facts weights(const ComposeInput& in) {
  const Wording& w = in.wording;
  const MassPlan& m = in.plan.mass;
  Facts facts{3, {}};
  facts.facts.push_back({w.say("loads.empty"), bold(w.amount(m.empty)), ""});
  facts.facts.push_back({w.say("loads.dry"), bold(w.amount(m.dry)), w.say("loads.dry-note")});
  facts.facts.push_back({w.say("loads.wet"), bold(w.amount(m.wet)), w.say("loads.wet-note")});
  facts.facts.push_back(
      {w.say("loads.on-stand"), bold(stand_load(w, m.stand_load)), w.say("loads.on-stand-note")});
  if (const auto& s = in.plan.supports) {
    facts.facts.push_back(
        {w.say("loads.supports"), bold(w.amount(s->count)),
         w.say("loads.supports-note", {{"spacing", s->spacing}, {"load", s->load}})});
  }
  return facts;
}

std::vector<Words> lift_row(const Wording& w, const std::string& what, Kilograms mass,
                            const LiftTask& task) {
  const LiftMultipliers m = multipliers(task);
  std::vector<Words> row{plain(what), plain(w.amount(mass))};
  for (double v : {m.horizontal, m.vertical, m.distance, m.asymmetry, m.frequency, m.coupling}) {
    row.push_back(plain(fixed(v, 2)));
  }
  const Kilograms limit = weight_limit(task);
  row.push_back(bold(w.amount(limit)));
  row.push_back(plain(limit.v > 0 ? fixed(mass / limit, 1) : w.say("sheet.nothing")));
  return row;
}

void add_lifting(const ComposeInput& in, std::vector<Block>& blocks) {
  if (!in.plan.lift) return;
  const Wording& w = in.wording;
  Table table;
  table.columns.push_back({w.say("loads.what"), false, 3});
  for (const char* title : {"loads.mass", "loads.hm", "loads.vm", "loads.dm", "loads.am",
                            "loads.fm", "loads.cm", "loads.limit", "loads.index"}) {
    table.columns.push_back({w.say(title), true, 1});
  }
  table.rows.push_back(
      lift_row(w, w.say("loads.the-tank"), in.plan.mass.empty, in.plan.lift->task));
  if (const auto& sack = in.plan.sack) {
    const std::string what = w.say("loads.the-sack", {{"material", material_name(w, sack->item)}});
    table.rows.push_back(lift_row(w, what, sack->mass, sack->task));
  }
  blocks.push_back(Heading{2, w.say("loads.lifting")});
  blocks.push_back(std::move(table));
  blocks.push_back(Paragraph{plain(w.say("loads.lifting-note")), true});
}

void add_fixed(const ComposeInput& in, std::vector<Block>& blocks) {
  if (in.plan.fixed.empty()) return;
  const Wording& w = in.wording;
  Table table;
  table.columns = {{w.say("loads.thing"), false, 2},  {w.say("loads.fixed-by"), false, 2},
                   {w.say("loads.own"), true, 1},     {w.say("loads.pocket"), true, 1},
                   {w.say("loads.landing"), true, 1}, {w.say("loads.must-hold"), true, 1}};
  for (const FixedLoad& load : in.plan.fixed) {
    const std::string nothing = w.say("sheet.nothing");
    const auto some = [&](Kilograms m) { return plain(m.v > 0 ? w.amount(m) : nothing); };
    table.rows.push_back({plain(load.id),
                          plain(load.fixed_by ? w.say((*load.fixed_by)->word) : nothing),
                          load.own ? some(*load.own) : plain(w.say("loads.not-stated")),
                          some(load.pocket), some(load.landing), bold(w.amount(load.sum()))});
  }
  blocks.push_back(Heading{2, w.say("loads.fixed")});
  blocks.push_back(std::move(table));
  blocks.push_back(Paragraph{plain(w.say("loads.fixed-note")), true});
}

void add_water(const ComposeInput& in, std::vector<Block>& blocks) {
  const auto& water = in.plan.water_area;
  if (!water) return;
  const Dam& dam = in.build.water_area->dam;
  const Wording& w = in.wording;
  BulletList list;
  list.items.push_back(plain(w.say("loads.water-dam", {{"volume", water->volume},
                                                       {"length", water->dam_length},
                                                       {"height", water->dam_height},
                                                       {"material", material_name(w, dam.material)},
                                                       {"thickness", dam.thickness},
                                                       {"mass", water->dam}})));
  list.items.push_back(plain(w.say("loads.water-out")));
  list.items.push_back(
      plain(w.say("loads.water-pane", {{"force", force(w, water->pane_load_n)},
                                       {"pressure", fixed(water->floor_pressure_kpa, 2)}})));
  if (water->uplift) {
    list.items.push_back(plain(w.say("loads.water-uplift", {{"uplift", *water->uplift}})));
  }
  if (in.build.water_area->filter) list.items.push_back(plain(w.say("loads.water-filter")));
  blocks.push_back(Heading{2, w.say("loads.water")});
  blocks.push_back(std::move(list));
}

void add_move(const ComposeInput& in, std::vector<Block>& blocks) {
  const auto& move = in.plan.transport;
  if (!move) return;
  const Wording& w = in.wording;
  blocks.push_back(Heading{2, w.say("loads.move")});
  blocks.push_back(Paragraph{
      plain(move->date ? w.say("loads.move-mass-on", {{"date", *move->date}, {"mass", move->mass}})
                       : w.say("loads.move-mass", {{"mass", move->mass}})),
      false});
  TickList steps;
  steps.items.push_back(plain(w.say("loads.move-animals")));
  steps.items.push_back(plain(w.say("loads.move-drain")));
  if (!move->stones.empty()) {
    steps.items.push_back(plain(w.say(
        "loads.move-stones", {{"stones", listed(w, move->stones)}, {"mass", move->taken_out}})));
  }
  for (const char* step :
       {"loads.move-power", "loads.move-board", "loads.move-lift", "loads.move-again"}) {
    steps.items.push_back(plain(w.say(step)));
  }
  blocks.push_back(std::move(steps));
}

}  // namespace

Part loads_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"loads", w.say("sheet.part-loads"), false, {}};
  part.blocks.push_back(Heading{1, w.say("loads.heading")});
  part.blocks.push_back(weights(in));
  add_lifting(in, part.blocks);
  add_fixed(in, part.blocks);
  add_water(in, part.blocks);
  add_move(in, part.blocks);
  return part;
}

}  // namespace loamsheet
