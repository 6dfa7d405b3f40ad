// Materials and mixes out of their entries.
#include <cmath>

#include "base/text.h"
#include "catalogue/catalogue.h"
#include "catalogue/entry.h"
#include "catalogue/fact_line.h"
#include "catalogue/keys.h"

namespace loamsheet {
namespace {

constexpr double identity_slack = 0.01 + 1e-9;  // of the bulk volume

void take_facts(const FactLine& line, Material& m) {
  line.take("dry_density", m.dry_density);
  line.take("porosity", m.porosity);
  line.take("voids", m.voids);
  line.take("field_capacity", m.field_capacity);
  line.take("moisture_dry", m.moisture_dry);
  line.take("moisture_damp", m.moisture_damp);
  line.take("settling", m.settling);
  line.take("areal_mass", m.areal_kg_m2);
  line.take("caution", m.caution);
  line.take(m.hazards);
  line.take("roll_width", m.roll_width);
  line.take("nitrogen", m.nitrogen);
}

std::string percent(Fraction f) {
  return significant(f.v * 100, 4) + " %";
}

void check_pores(const Material& m, std::vector<Diagnostic>& out) {
  if (!m.porosity || !m.voids || !m.field_capacity) return;
  const Fraction sum = m.voids->value + m.field_capacity->value;
  if (std::fabs(sum.v - m.porosity->value.v) <= identity_slack) return;
  out.push_back({.where = m.where,
                 .message = "pores of '" + m.id + "' do not add up: voids and field capacity are " +
                            percent(sum) + ", porosity is " + percent(m.porosity->value),
                 .expected = "porosity = voids + field_capacity, within 1 %"});
}

void check_moisture(const Material& m, std::vector<Diagnostic>& out) {
  if (m.moisture_dry && m.moisture_damp &&
      m.moisture_dry->value.high > m.moisture_damp->value.low) {
    out.push_back({.where = m.where,
                   .message = "'" + m.id + "' is wetter when dry (" +
                              percent(m.moisture_dry->value.high) + ") than when damp (" +
                              percent(m.moisture_damp->value.low) + ")",
                   .expected = "moisture_dry below moisture_damp"});
  }
  if (m.moisture_damp && m.field_capacity &&
      m.moisture_damp->value.high > m.field_capacity->value) {
    out.push_back({.where = m.where,
                   .message = "'" + m.id + "' holds more when damp (" +
                              percent(m.moisture_damp->value.high) + ") than it can hold (" +
                              percent(m.field_capacity->value) + ")",
                   .expected = "moisture_damp up to field_capacity"});
  }
}

Material material_of(const std::string& id, const Node& node, const Shelf& sources, Sink& sink) {
  Material m;
  m.id = id;
  m.name = node.text("name").value_or(id);
  m.role = node.text("role").value_or("");
  m.coarse = node.yes("coarse").value_or(false);
  m.rusts = node.yes("rusts");
  m.decay = node.text("decay").value_or("");
  m.where = node.name;
  const Node* facts = node.find("facts");
  if (!facts) return m;
  for (const Node& line : facts->items) take_facts(FactLine(line, sources, sink), m);
  return m;
}

Mix mix_of(const std::string& id, const Node& node, const Catalogue& catalogue, Sink& sink) {
  Mix mix;
  mix.id = id;
  mix.name = node.text("name").value_or(id);
  mix.where = node.name;
  mix.build_kind = node.text("for").value_or("");
  if (const Node* from = node.find("from")) mix.origin = origin_of(*from, catalogue.sources, sink);
  const Node* settling = node.find("settling");
  if (settling && settling->has("value") && settling->has("from")) {
    mix.settling = {{*settling->number("value")},
                    origin_of(*settling->find("from"), catalogue.sources, sink)};
  }
  const Node* parts = node.find("parts");
  if (!parts) return mix;
  for (const auto& [material, leaf] : parts->entries) {
    mix.parts.push_back({material, parts->number(material).value_or(0)});
    if (catalogue.materials.has(material)) continue;
    sink.add({.where = leaf.name, .message = "unknown material '" + material + "' in a mix"});
  }
  return mix;
}

}  // namespace

std::vector<Diagnostic> contradictions(const Material& m) {
  std::vector<Diagnostic> out;
  check_pores(m, out);
  check_moisture(m, out);
  return out;
}

Outcome<Material> read_material(const Catalogue& catalogue, const std::string& id) {
  Sink sink;
  const auto node = read_entry(catalogue.materials, id, material_keys(), sink);
  if (!node) return {std::nullopt, sink.take()};
  Material m = material_of(id, *node, catalogue.sources, sink);
  sink.add(contradictions(m));
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(m), sink.take()};
}

Outcome<Mix> read_mix(const Catalogue& catalogue, const std::string& id) {
  Sink sink;
  const auto node = read_entry(catalogue.mixes, id, mix_keys(), sink);
  if (!node) return {std::nullopt, sink.take()};
  Mix mix = mix_of(id, *node, catalogue, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(mix), sink.take()};
}

}  // namespace loamsheet
