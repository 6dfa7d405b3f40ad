#include "figure/words.h"

#include <algorithm>

#include "base/capital.h"
#include "base/named.h"
#include "base/text.h"

namespace loamsheet {
namespace {

// The name of a material or mix; an id of the spec's own stands for itself.
std::string named(const FigureInput& in, const std::string& prefix, std::string id) {
  const std::string key = prefix + id;
  if (in.wording.knows(key)) return in.wording.say(key);
  std::replace(id.begin(), id.end(), '-', ' ');
  return id;
}

std::string material(const FigureInput& in, const std::string& id) {
  return named(in, "material.", id);
}

std::string mix(const FigureInput& in) {
  return named(in, "material.mix-", in.build.layers.substrate.mix);
}

std::string drainage_material(const FigureInput& in) {
  const DrainageLayer& d = in.build.layers.drainage;
  return material(in, d.kind->poured ? d.bulk.material : std::string(d.kind->item));
}

Args substrate_depths(const FigureInput& in) {
  const SubstrateLayer& s = in.build.layers.substrate;
  return {{"mix", mix(in)}, {"front", s.front}, {"back", s.back}};
}

bool level(const FigureInput& in) {
  return in.build.layers.substrate.front == in.build.layers.substrate.back;
}

std::string shape_name(const FigureInput& in) {
  return in.wording.say(in.build.enclosure.shape->name);
}

std::string where(const FigureInput& in, Opening::Where at) {
  using enum Opening::Where;
  static constexpr For<Opening::Where, const char*> names[] = {{top, "figure.where-top"},
                                                               {front, "figure.where-front"},
                                                               {back, "figure.where-back"},
                                                               {left, "figure.where-left"},
                                                               {right, "figure.where-right"}};
  return in.wording.say(what_of(names, at));
}

Millimetres across(const Box& box) {
  return {box.width()};
}
Millimetres along(const Box& box) {
  return {box.height()};
}

std::string tank_sentence(const FigureInput& in, const char* views) {
  const Enclosure& e = in.build.enclosure;
  const Box box = extent(e.footprint);
  return in.wording.say("figure.alt-tank",
                        {{"views", in.wording.say(views)},
                         {"shape", shape_name(in)},
                         {"material", material(in, std::string(e.walls.material->id))},
                         {"width", across(box)},
                         {"depth", along(box)},
                         {"height", e.height}});
}

std::vector<std::string> layer_sentences(const FigureInput& in) {
  const Layers& l = in.build.layers;
  const Wording& w = in.wording;
  std::vector<std::string> out;
  if (l.drainage.kind->keeps_water_off) {
    out.push_back(w.say("figure.alt-drainage",
                        {{"material", drainage_material(in)}, {"depth", l.drainage.depth}}));
  }
  if (l.separator) {
    out.push_back(w.say("figure.alt-separator", {{"material", material(in, l.separator->material)},
                                                 {"turn_up", l.separator->turn_up}}));
  }
  out.push_back(w.say(level(in) ? "figure.alt-substrate-level" : "figure.alt-substrate-sloped",
                      substrate_depths(in)));
  if (l.litter) {
    out.push_back(w.say("figure.alt-litter", {{"material", material(in, l.litter->bulk.material)},
                                              {"depth", l.litter->depth}}));
  }
  return out;
}

std::vector<std::string> water_sentences(const FigureInput& in) {
  const WaterPlan& water = in.plan.water;
  std::vector<std::string> out;
  if (water.standing && water.standing->high.v > 0) {
    out.push_back(in.wording.say("figure.alt-standing", {{"depth", *water.standing}}));
  }
  if (water.highest_standing && water.highest_standing->v > 0) {
    out.push_back(in.wording.say("figure.alt-highest", {{"height", *water.highest_standing}}));
  }
  if (in.build.water_area) {
    const WaterArea& area = *in.build.water_area;
    const auto at =
        area.side == WaterArea::Side::left ? Opening::Where::left : Opening::Where::right;
    out.push_back(
        in.wording.say("figure.alt-water-area",
                       {{"depth", area.depth}, {"floor", area.floor}, {"where", where(in, at)}}));
  }
  return out;
}

std::vector<std::string> fitting_sentences(const FigureInput& in) {
  const Enclosure& e = in.build.enclosure;
  std::vector<std::string> out;
  if (e.background) {
    out.push_back(
        in.wording.say("figure.alt-background", {{"material", material(in, e.background->material)},
                                                 {"thickness", e.background->thickness}}));
  }
  for (const Opening& o : e.openings) {
    out.push_back(in.wording.say("figure.alt-opening", {{"name", capitalised(o.name)},
                                                        {"detail", opening_label(in, o).detail}}));
  }
  for (const Standing& s : in.build.standing) {
    out.push_back(in.wording.say("figure.alt-standing-thing",
                                 {{"name", standing_label(in, s).name}, {"height", s.height}}));
  }
  return out;
}

}  // namespace

Target drainage_label(const FigureInput& in) {
  const DrainageLayer& d = in.build.layers.drainage;
  return {
      {}, capitalised(drainage_material(in)), in.wording.say(d.kind->label, {{"depth", d.depth}})};
}

Target separator_label(const FigureInput& in) {
  const SeparatorLayer& s = *in.build.layers.separator;
  return {{},
          capitalised(material(in, s.material)),
          in.wording.say("figure.separator", {{"turn_up", s.turn_up}})};
}

Target substrate_label(const FigureInput& in) {
  return {{},
          capitalised(mix(in)),
          in.wording.say(level(in) ? "figure.substrate-level" : "figure.substrate-sloped",
                         substrate_depths(in))};
}

Target litter_label(const FigureInput& in) {
  const LitterLayer& l = *in.build.layers.litter;
  return {{},
          capitalised(material(in, l.bulk.material)),
          in.wording.say("figure.litter", {{"depth", l.depth}})};
}

Target standing_water_label(const FigureInput& in) {
  return {{},
          in.wording.say("figure.standing"),
          in.wording.say("figure.standing-detail", {{"depth", *in.plan.water.standing}})};
}

Target highest_label(const FigureInput& in) {
  return {{},
          in.wording.say("figure.highest"),
          in.wording.say("figure.highest-detail", {{"height", *in.plan.water.highest_standing}})};
}

Target background_label(const FigureInput& in) {
  const Background& b = *in.build.enclosure.background;
  return {{},
          capitalised(material(in, b.material)),
          in.wording.say("figure.background", {{"thickness", b.thickness}})};
}

Target water_area_label(const FigureInput& in) {
  return {{},
          in.wording.say("figure.water-area"),
          in.wording.say("figure.water-area-detail", {{"depth", in.build.water_area->depth}})};
}

Target opening_label(const FigureInput& in, const Opening& o) {
  const std::string name(o.mesh ? o.kind->meshed : o.kind->open);
  const std::string key = "figure." + name + (o.lower_edge ? "-from" : "");
  return {{},
          capitalised(o.name),
          in.wording.say(
              key, {{"where", where(in, o.at)}, {"height", o.lower_edge.value_or(Millimetres{})}})};
}

Target standing_label(const FigureInput& in, const Standing& s) {
  return {{},
          capitalised(named(in, "material.", s.id)),
          s.height.v > 0 ? in.wording.say("figure.standing-thing", {{"height", s.height}}) : ""};
}

Target furnishing_label(const FigureInput& in, const Furnishing& f) {
  return {{}, capitalised(named(in, "material.", f.id)), in.wording.say(f.kind->label)};
}

std::string thing_name(const FigureInput& in, const std::string& id) {
  if (id == "background") return in.wording.say("figure.on-background");
  return named(in, "material.", id);
}

std::vector<std::string> notes(const FigureInput& in, int scale) {
  const bool metric = in.wording.units() == UnitSystem::metric;
  std::vector<std::string> out{
      in.wording.say(metric ? "figure.note-metric" : "figure.note-us", {{"scale", scale}})};
  if (in.build.enclosure.shape->shape != Shape::rectangle) {
    out.push_back(in.wording.say("figure.note-shape", {{"shape", shape_name(in)}}));
  }
  return out;
}

std::string description(const FigureInput& in, const char* views) {
  std::vector<std::string> sentences{tank_sentence(in, views)};
  for (const auto& part : {layer_sentences(in), water_sentences(in), fitting_sentences(in)}) {
    sentences.insert(sentences.end(), part.begin(), part.end());
  }
  return join(sentences, " ");
}

}  // namespace loamsheet
