// The sources that the facts of a build rest on, so that findings can name them.
#include "check/checking.h"
#include "check/offer.h"

namespace loamsheet {
namespace {

class Named {
 public:
  Named(const Catalogue& catalogue, Build& build, Sink& sink)
      : catalogue_(catalogue), build_(build), sink_(sink) {}

  void take(const Origin& origin) {
    if (!origin.published() || !catalogue_.sources.has(origin.name)) return;
    if (build_.sources.contains(origin.name)) return;
    if (auto source = taken(read_source(catalogue_, origin.name), sink_)) {
      build_.sources[origin.name] = std::move(*source);
    }
  }

  template <class... Facts>
  void facts(const Facts&... known) {
    ((known ? take(known->origin) : void()), ...);
  }

 private:
  const Catalogue& catalogue_;
  Build& build_;
  Sink& sink_;
};

void take(Named& named, const Animal& a) {
  named.facts(a.diet, a.browses, a.society, a.lays, a.lives_with, a.planted_with, a.wear);
  named.facts(a.mass, a.length);
  named.facts(a.floor_length, a.floor_width, a.headroom, a.day, a.basking, a.night, a.humidity);
  named.facts(a.body.skin_takes_up, a.body.moults_bare, a.body.thickness);
}

void take(Named& named, const Plant& p) {
  for (const Hazard& hazard : p.hazards) named.take(hazard.origin);
  named.facts(p.robustness, p.humidity, p.dampest, p.coldest, p.warmest);
}

}  // namespace

void name_sources(const Catalogue& catalogue, Build& build, const Plant& plant, Sink& sink) {
  Named named(catalogue, build, sink);
  take(named, plant);
}

void check_sources(Checking& c) {
  Named named(c.catalogue, c.build, c.sink);
  for (const auto& [kind, rule] : c.build.hazards) named.take(rule.origin);
  for (const HazardousMaterial& material : c.build.hazardous) named.take(material.hazard.origin);
  for (const KeptAnimal& kept : c.build.kept) take(named, kept.facts);
  for (const PlantUse& plant : c.build.plants) take(named, plant.facts);
  for (const Replacement& replaced : c.build.replaced) take(named, replaced.by.facts);
  for (const CrewUse& crew : c.build.crew) named.facts(crew.facts.harasses);
}

}  // namespace loamsheet
