// The spec's own materials and mixes, which stand before those of the catalogue.
#include "check/checking.h"
#include "check/names.h"

namespace loamsheet {
namespace {

class Own {
 public:
  Own(const Node& node, Origin origin) : node_(node), origin_(std::move(origin)) {}

  template <class U>
  void take(std::string_view key, std::optional<Fact<Range<Amount<U>>>>& into) const {
    if (const auto r = node_.range(key)) into = {{{r->low}, {r->high}}, origin_};
  }
  template <class U>
  void take(std::string_view key, std::optional<Fact<Amount<U>>>& into) const {
    if (const auto v = node_.number(key)) into = {{*v}, origin_};
  }
  void take(std::string_view key, std::optional<Fact<double>>& into) const {
    if (const auto v = node_.number(key)) into = {*v, origin_};
  }

 private:
  const Node& node_;
  Origin origin_;
};

// A material of the catalogue under the same name lends what the spec does not state.
void take_material(Checking& c, const std::string& id, const Node& node) {
  Material& m = c.materials.own(id);
  m.where = node.name.line > 0 ? node.name : node.where;
  m.role = node.text("role").value_or(m.role);
  const Own own(node, {node.text("from").value_or("")});
  own.take("dry_density", m.dry_density);
  own.take("porosity", m.porosity);
  own.take("voids", m.voids);
  own.take("field_capacity", m.field_capacity);
  own.take("moisture_dry", m.moisture_dry);
  own.take("moisture_damp", m.moisture_damp);
  own.take("settling", m.settling);
  own.take("areal_mass", m.areal_kg_m2);
  own.take("roll_width", m.roll_width);
  own.take("nitrogen", m.nitrogen);
  c.build.own_materials.push_back({id, node.text("from").value_or("")});
  c.sink.add(contradictions(m));
}

void take_mix(Checking& c, const std::string& id, const Node& node) {
  Mix mix;
  mix.id = id;
  mix.where = node.name.line > 0 ? node.name : node.where;
  for (const auto& [material, parts] : node.entries) {
    if (!c.materials.has(material)) {
      unknown_name(c, {material, parts.name}, "material", c.materials.ids());
    }
    mix.parts.push_back({material, node.number(material).value_or(0)});
  }
  c.own_mixes[id] = std::move(mix);
}

}  // namespace

void check_own_materials(Checking& c) {
  if (const Node* materials = c.root.find("materials")) {
    for (const auto& [id, node] : materials->entries) take_material(c, id, node);
  }
  if (const Node* mixes = c.root.find("mixes")) {
    for (const auto& [id, node] : mixes->entries) take_mix(c, id, node);
  }
}

}  // namespace loamsheet
