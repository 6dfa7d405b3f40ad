#include "base/fields.h"
#include "base/text_sink.h"
#include "check/check.h"

namespace loamsheet {
namespace {

const char* name_of(BuildKind kind) {
  switch (kind) {
    case BuildKind::humid:
      return "humid";
    case BuildKind::temperate:
      return "temperate";
    case BuildKind::arid:
      return "arid";
    case BuildKind::burrowing:
      return "burrowing";
    case BuildKind::semi_aquatic:
      return "semi-aquatic";
  }
  return "";
}

}  // namespace

void fields(const Identity& id, FieldSink& to) {
  to.add("title", id.title);
  to.add("reference", id.reference);
  to.add("revision", id.revision);
  to.add("plant_on", id.plant_on);
  to.add("slip_d", id.slip);
  if (!to.inner()) return;
  to.add("moved", id.moved);
  to.add("moves_on", id.moves_on);
  to.add_known("prepared_by", id.prepared_by);
  to.add_known("customer", id.customer);
}

void fields(const Print& print, FieldSink& to) {
  to.add("paper", print.paper);
  to.add("units", print.us_units ? "us" : "metric");
  to.add("language", print.language);
  to.add("size", print.large ? "large" : "normal");
}

void fields(const Assumed& assumed, FieldSink& to) {
  to.add("key", assumed.key);
  to.add("value", assumed.value);
  to.add("from", assumed.from);
}

void fields(const UnknownInput& unknown, FieldSink& to) {
  to.add("key", unknown.key);
  to.add("shown", unknown.shown);
  to.add("from", unknown.from);
}

void fields(const OwnMaterial& material, FieldSink& to) {
  to.add("material", material.id);
  to.add("from", material.from);
}

void fields(const HazardousMaterial& material, FieldSink& to) {
  to.add("use", material.use);
  to.add("material", material.material);
  to.add("hazard", material.hazard.kind);
}

void fields(const KeptAnimal& animal, FieldSink& to) {
  to.add("species", animal.facts.id);
  to.add("count", animal.count);
  to.add("juvenile", animal.juvenile);
  to.add("mass", unit::kg, animal.mass);
  to.add("acquired", animal.acquired);
}

void fields_of_replaced(const Build& build, FieldSink& to) {
  to.open_list({"replaced"});
  for (const PlantUse& use : build.plants) {
    if (!use.before) continue;
    to.open({});
    to.add("plant", use.number);
    to.add("species", use.before->facts.id);
    to.add("by", use.facts.id);
    to.add("on", use.replaced_on);
    to.close();
  }
  to.close();
}

void fields(const Build& build, FieldSink& to) {
  to.object("build", build.identity);
  to.object("print", build.print);
  to.object("enclosure", build.enclosure);
  to.object("layers", build.layers);
  to.object("water_area", build.water_area);
  to.list("standing", build.standing);
  to.add("kind", name_of(build.kind));
  to.list("animals", build.kept);
  to.list("hazardous", build.hazardous);
  to.list("unknown", build.unknowns);
  to.list("assumed", build.assumed);
}

std::string dump(const Build& build) {
  TextSink to;
  fields(build, to);
  return to.text();
}

}  // namespace loamsheet
