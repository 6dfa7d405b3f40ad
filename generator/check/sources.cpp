// The sources that the facts of a build rest on, so that findings can name them.
#include "check/checking.h"

namespace loamsheet {
namespace {

class Named {
 public:
  explicit Named(Checking& c) : c_(c) {}

  void take(const Origin& origin) {
    if (!origin.published() || !c_.catalogue.sources.has(origin.name)) return;
    if (c_.build.sources.contains(origin.name)) return;
    if (auto source = taken(read_source(c_.catalogue, origin.name), c_.sink)) {
      c_.build.sources[origin.name] = std::move(*source);
    }
  }

  template <class... Facts>
  void facts(const Facts&... known) {
    ((known ? take(known->origin) : void()), ...);
  }

 private:
  Checking& c_;
};

void take(Named& named, const Animal& a) {
  named.facts(a.diet, a.browses, a.society, a.lays, a.lives_with, a.wear, a.mass, a.length);
  named.facts(a.floor_length, a.floor_width, a.headroom, a.day, a.basking, a.night, a.humidity);
  named.facts(a.body.skin_takes_up, a.body.moults_bare, a.body.thickness);
}

void take(Named& named, const Plant& p) {
  for (const Hazard& hazard : p.hazards) named.take(hazard.origin);
  named.facts(p.robustness, p.humidity, p.coldest, p.warmest);
}

}  // namespace

void check_sources(Checking& c) {
  Named named(c);
  for (const auto& [kind, rule] : c.build.hazards) named.take(rule.origin);
  for (const HazardousMaterial& material : c.build.hazardous) named.take(material.hazard.origin);
  for (const KeptAnimal& kept : c.build.kept) take(named, kept.facts);
  for (const PlantUse& plant : c.build.plants) take(named, plant.facts);
  for (const CrewUse& crew : c.build.crew) named.facts(crew.facts.harasses);
}

}  // namespace loamsheet
