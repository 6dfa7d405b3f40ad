#include "compose/goods_words.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

// What the rows of the layers table are made of.
struct Row {
  std::string layer, material, depth, in_place, buy, dry;
};

std::vector<Words> cells(const Row& r) {
  return {bold(r.layer),     plain(r.material), plain(r.depth),
          plain(r.in_place), plain(r.buy),      plain(r.dry)};
}

Row drainage_row(const ComposeInput& in) {
  const Wording& w = in.wording;
  const DrainageLayer& layer = in.build.layers.drainage;
  const DrainagePlan& d = *in.plan.layers.drainage;
  const std::string nothing = w.say("sheet.nothing");
  return {w.say(layer.kind->row),
          layer.kind->poured ? material_name(w, layer.bulk.material) : nothing,
          w.amount(layer.depth),
          loose(w, d.volume),
          d.buy ? loose(w, *d.buy) : nothing,
          d.dry ? w.amount(*d.dry) : nothing};
}

Row separator_row(const ComposeInput& in) {
  const Wording& w = in.wording;
  const SeparatorPlan& s = *in.plan.layers.separator;
  const std::string nothing = w.say("sheet.nothing");
  return {w.say("layers.separator"),
          material_name(w, in.build.layers.separator->material),
          nothing,
          w.say("layers.cut", {{"width", s.cut_width}, {"depth", s.cut_depth}}),
          w.amount(s.area),
          nothing};
}

std::string substrate_depth(const ComposeInput& in) {
  const SubstrateLayer& s = in.build.layers.substrate;
  if (!s.terraces.empty()) {
    return in.wording.say("layers.steps", {{"front", s.front}, {"back", s.back}});
  }
  if (s.front == s.back) return in.wording.amount(s.front);
  return in.wording.say("layers.slope", {{"front", s.front}, {"back", s.back}});
}

std::string mix_name(const ComposeInput& in) {
  return material_name(in.wording, "mix-" + in.build.layers.substrate.mix);
}

Row substrate_row(const ComposeInput& in) {
  const Wording& w = in.wording;
  const SubstratePlan& s = in.plan.layers.substrate;
  return {w.say("layers.substrate"), mix_name(in),    substrate_depth(in),
          loose(w, s.volume),        loose(w, s.buy), w.amount(s.dry)};
}

Row litter_row(const ComposeInput& in) {
  const Wording& w = in.wording;
  const LitterPlan& l = *in.plan.layers.litter;
  const LitterLayer& layer = *in.build.layers.litter;
  return {w.say("layers.litter"), material_name(w, layer.bulk.material),
          w.amount(layer.depth),  loose(w, l.volume),
          loose(w, l.buy),        w.amount(l.dry)};
}

Row moss_row(const ComposeInput& in) {
  const Wording& w = in.wording;
  const MossPlan& m = *in.plan.layers.moss;
  const MossLayer& layer = *in.build.layers.moss;
  return {w.say("layers.moss"),  material_name(w, layer.bulk.material),
          w.amount(layer.depth), loose(w, m.volume),
          w.amount(m.area),      w.amount(m.dry)};
}

Table layers_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  Table table;
  table.columns = {{w.say("layers.layer"), false, 1}, {w.say("layers.material"), false, 2},
                   {w.say("layers.depth"), true, 1},  {w.say("layers.in-place"), true, 1},
                   {w.say("layers.buy"), true, 1},    {w.say("layers.dry"), true, 1}};
  const LayersPlan& plan = in.plan.layers;
  if (plan.drainage) table.rows.push_back(cells(drainage_row(in)));
  if (plan.separator) table.rows.push_back(cells(separator_row(in)));
  table.rows.push_back(cells(substrate_row(in)));
  if (plan.litter) table.rows.push_back(cells(litter_row(in)));
  if (plan.moss) table.rows.push_back(cells(moss_row(in)));
  return table;
}

Table mix_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  const auto& parts = in.build.layers.substrate.parts;
  const SubstratePlan& plan = in.plan.layers.substrate;
  Table table;
  table.totals = true;
  table.columns = {{w.say("layers.component"), false, 2},
                   {w.say("layers.share"), true, 1},
                   {w.say("layers.in-place"), true, 1},
                   {w.say("layers.buy"), true, 1},
                   {w.say("layers.dry"), true, 1}};
  for (size_t i = 0; i < parts.size(); ++i) {
    const PartPlan& p = plan.parts[i];
    table.rows.push_back({plain(capitalised(material_name(w, p.material))),
                          plain(w.amount(parts[i].share)), plain(loose(w, p.volume)),
                          plain(loose(w, p.buy)), plain(w.amount(p.dry))});
  }
  table.rows.push_back({bold(w.say("layers.mix-total")), plain(w.amount(Fraction{1})),
                        bold(loose(w, plan.volume)), bold(loose(w, plan.buy)),
                        bold(w.amount(plan.dry))});
  return table;
}

std::string outlet(const ComposeInput& in) {
  return material_name(in.wording, std::string(in.build.layers.drainage.outlet->item));
}

std::string drainage_how(const ComposeInput& in) {
  const Wording& w = in.wording;
  const DrainageLayer& d = in.build.layers.drainage;
  if (!d.kind->keeps_water_off) return w.say(d.kind->how);
  return w.say(d.kind->how, {{"material", material_name(w, d.bulk.material)},
                             {"volume", in.plan.layers.drainage->volume},
                             {"depth", d.depth},
                             {"outlet", outlet(in)}});
}

std::string placed(const ComposeInput& in) {
  const std::string& how = in.build.layers.substrate.placed;
  return in.wording.say(how == "?" ? "layers.placed-unknown" : "layers.placed-" + how);
}

std::string substrate_how(const ComposeInput& in) {
  const SubstrateLayer& s = in.build.layers.substrate;
  const char* how = s.front == s.back ? "layers.substrate-level-how" : "layers.substrate-how";
  return in.wording.say(s.terraces.empty() ? how : "layers.terraces-how",
                        {{"volume", in.plan.layers.substrate.blend},
                         {"mix", mix_name(in)},
                         {"placed", placed(in)},
                         {"front", s.front},
                         {"back", s.back}});
}

// Terraces, and the pockets of ledges.
void add_raised(const ComposeInput& in, BulletList& list) {
  const Wording& w = in.wording;
  for (const Terrace& t : in.build.layers.substrate.terraces) {
    list.items.push_back(
        plain(w.say(t.held_by.empty() ? "layers.terrace-unheld-how" : "layers.terrace-how",
                    {{"from", t.from}, {"height", t.height}, {"thing", t.held_by}})));
  }
  const Litres pockets = in.plan.layers.substrate.pockets;
  if (pockets.v > 0) {
    list.items.push_back(plain(w.say("layers.pockets-how", {{"volume", pockets}})));
  }
}

BulletList how_they_go_in(const ComposeInput& in) {
  const Wording& w = in.wording;
  const Layers& layers = in.build.layers;
  BulletList list;
  list.items.push_back(plain(drainage_how(in)));
  if (layers.drainage.kind->poured && layers.drainage.outlet->draws) {
    list.items.push_back(plain(w.say("layers.outlet-how", {{"outlet", outlet(in)}})));
  }
  if (const auto& s = in.plan.layers.separator) {
    list.items.push_back(plain(
        w.say("layers.separator-how", {{"material", material_name(w, layers.separator->material)},
                                       {"width", s->cut_width},
                                       {"depth", s->cut_depth},
                                       {"turn_up", layers.separator->turn_up}})));
  }
  list.items.push_back(plain(substrate_how(in)));
  add_raised(in, list);
  if (const auto& l = in.plan.layers.litter) {
    list.items.push_back(plain(
        w.say("layers.litter-how", {{"volume", l->volume},
                                    {"material", material_name(w, layers.litter->bulk.material)},
                                    {"depth", layers.litter->depth}})));
  }
  if (const auto& m = in.plan.layers.moss) {
    list.items.push_back(plain(
        w.say("layers.moss-how",
              {{"area", m->area}, {"material", material_name(w, layers.moss->bulk.material)}})));
  }
  return list;
}

}  // namespace

Part layers_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  const SubstrateLayer& s = in.build.layers.substrate;
  Part part{"layers", w.say("sheet.part-layers"), false, {}};
  part.blocks.push_back(Heading{1, w.say("layers.heading")});
  part.blocks.push_back(Heading{2, w.say("layers.order")});
  part.blocks.push_back(layers_table(in));
  add_figure(in, "section", part.blocks);
  part.blocks.push_back(Heading{2, w.say("layers.mix-heading", {{"mix", mix_name(in)}})});
  part.blocks.push_back(mix_table(in));
  part.blocks.push_back(Paragraph{
      plain(w.say("layers.mix-note", {{"settling", s.settling}, {"hold_back", s.hold_back}})),
      true});
  part.blocks.push_back(Heading{2, w.say("layers.work-heading")});
  part.blocks.push_back(how_they_go_in(in));
  return part;
}

}  // namespace loamsheet
