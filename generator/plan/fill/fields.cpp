#include "base/fields.h"
#include "plan/fill/fill.h"

namespace loamsheet {

void fields(const DrainagePlan& layer, FieldSink& to) {
  to.add("volume", unit::l, layer.volume);
  to.add("buy", unit::l, layer.buy);
  to.add("dry", unit::kg, layer.dry);
  to.add("void", unit::l, layer.voids);
}

void fields(const SeparatorPlan& layer, FieldSink& to) {
  to.add("area", unit::m2, layer.area);
  to.add_all("cut", unit::mm, {layer.cut_width, layer.cut_depth});
}

void fields(const PartPlan& part, FieldSink& to) {
  to.add("material", part.material);
  if (to.inner()) to.add("volume", unit::l, part.volume);
  to.add("buy", unit::l, part.buy);
  to.add("dry", unit::kg, part.dry);
}

void fields(const SubstratePlan& layer, FieldSink& to) {
  to.add("volume", unit::l, layer.volume);
  to.add("buy", unit::l, layer.buy);
  to.add("pockets", unit::l, layer.pockets);
  to.add("dry", unit::kg, layer.dry);
  to.list("parts", layer.parts);
}

void fields(const LitterPlan& layer, FieldSink& to) {
  to.add("volume", unit::l, layer.volume);
  to.add("buy", unit::l, layer.buy);
  to.add("dry", unit::kg, layer.dry);
}

void fields(const MossPlan& layer, FieldSink& to) {
  to.add("area", unit::m2, layer.area);
  to.add("volume", unit::l, layer.volume);
  to.add("dry", unit::kg, layer.dry);
}

void fields(const Profile& tops, FieldSink& to) {
  to.add("drainage", unit::mm, tops.drainage_top);
  to.add_all("substrate", unit::mm, {tops.substrate_front, tops.substrate_back});
  to.add_all("litter", unit::mm, {tops.litter_front, tops.litter_back});
  to.add("highest", unit::mm, tops.highest);
}

void fields(const MassPlan& mass, FieldSink& to) {
  to.add("empty", unit::kg, mass.empty);
  to.add("dry", unit::kg, mass.dry);
  to.add("wet", unit::kg, mass.wet);
  to.add("stand_margin", unit::kg, mass.stand_margin);
  to.add("stand_load", unit::kg_m2, mass.stand_load);
}

void fields(const WaterPlan& water, FieldSink& to) {
  to.add("first_watering", unit::l, water.first_watering);
  to.add("standing", unit::mm, water.standing);
  to.add("highest_standing", unit::mm, water.highest_standing);
}

void fields(const TapeMark& mark, FieldSink& to) {
  to.add("layer", mark.layer);
  to.add("front", unit::mm, mark.front);
  to.add("back", unit::mm, mark.back);
  if (mark.from) to.add("from", unit::mm, *mark.from);
}

void fields(const Cut& cut, FieldSink& to) {
  to.add("use", cut.use);
  to.add("material", cut.material);
  to.add("count", cut.count);
  to.add_all("cut", unit::mm, {cut.width, cut.depth});
  to.add("overlap", unit::mm, cut.overlap);
}

void fields(const SupportsPlan& supports, FieldSink& to) {
  to.add("spacing", unit::mm, supports.spacing);
  to.add("count", supports.count);
  to.add("load", unit::kg, supports.load);
}

void fields(const DosePlan& dose, FieldSink& to) {
  to.add("material", dose.material);
  to.add("dose", unit::g, dose.dose);
  to.add("teaspoons", dose.teaspoons);
  to.add("nitrogen", unit::mg_l, dose.nitrogen_mg_l);
}

void fields(const CrewPlan& crew, FieldSink& to) {
  to.add("species", crew.species);
  to.add("given", crew.given);
  to.add("suggested", crew.suggested);
}

void fields(const FixedLoad& load, FieldSink& to) {
  to.add("id", load.id);
  to.add_known("fixed_by", load.fixed_by ? (*load.fixed_by)->id : "");
  to.add("own", unit::kg, load.own);
  to.add("pocket", unit::kg, load.pocket);
  to.add("landing", unit::kg, load.landing);
  to.add("must_hold", unit::kg, load.sum());
}

void fields(const WaterAreaPlan& area, FieldSink& to) {
  to.add("volume", unit::l, area.volume);
  to.add_all("dam", unit::mm, {area.dam_length, area.dam_height});
  to.add("dam", unit::kg, area.dam);
  to.add("pane_load", unit::n, area.pane_load_n);
  to.add("floor_pressure", unit::kpa, area.floor_pressure_kpa);
  to.add("uplift", unit::kg, area.uplift);
}

void fields(const TransportPlan& move, FieldSink& to) {
  to.add("date", move.date);
  to.add("mass", unit::kg, move.mass);
  to.add("taken_out", unit::kg, move.taken_out);
  to.add("stones", move.stones);
}

namespace {

void drainage(const Filling& plan, FieldSink& to) {
  if (!plan.layers.drainage) return to.nothing({"drainage"});
  to.open({"drainage"});
  fields(*plan.layers.drainage, to);
  if (plan.supports) to.object("supports", plan.supports);
  to.close();
}

}  // namespace

void fields_of_layers(const Filling& plan, FieldSink& to) {
  to.open({"footprint"});
  to.add("area", unit::m2, plan.footprint_area);
  to.add("perimeter", unit::m, plan.footprint_perimeter);
  to.close();
  to.open({"layers"});
  drainage(plan, to);
  to.object("separator", plan.layers.separator);
  to.object("substrate", plan.layers.substrate);
  to.object("litter", plan.layers.litter);
  to.object("moss", plan.layers.moss);
  if (to.inner()) to.object("profile", plan.layers.profile);
  to.close();
  to.object("mass", plan.mass);
}

void fields_of_goods(const Filling& plan, FieldSink& to) {
  to.list("marks", plan.marks);
  to.list("cuts", plan.cuts);
  to.list("amendments", plan.doses);
  to.list("crew", plan.crew);
  to.list("fixed", plan.fixed);
  to.object("water_area", plan.water_area);
  to.object("transport", plan.transport);
}

}  // namespace loamsheet
