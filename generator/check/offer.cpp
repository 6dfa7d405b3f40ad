#include "check/offer.h"

#include <algorithm>

#include "catalogue/living.h"

namespace loamsheet {
namespace {

// What its light class wants; {0, 0} when the catalogue does not know.
Range<double> ppfd_wanted(const Catalogue& catalogue, const Plant& plant) {
  Range<double> wanted;
  if (plant.light) {
    const auto found = catalogue.light.find(plant.light->value);
    if (found != catalogue.light.end()) wanted = found->second.ppfd.value;
  }
  if (plant.ppfd_from) wanted.low = plant.ppfd_from->value;
  wanted.high = std::max(wanted.low, wanted.high);
  return wanted;
}

}  // namespace

Outcome<PlantKind> read_plant_kind(const Catalogue& catalogue, const std::string& id) {
  auto plant = read_plant(catalogue, id);
  if (!plant) return {std::nullopt, std::move(plant.messages)};
  const auto ppfd = ppfd_wanted(catalogue, *plant.value);
  return {PlantKind{std::move(*plant.value), ppfd}, std::move(plant.messages)};
}

Outcome<Build> with_offer(Build build, const Catalogue& catalogue) {
  Sink sink;
  build.offered.clear();
  for (const std::string& id : catalogue.plants.ids()) {
    if (auto kind = taken(read_plant_kind(catalogue, id), sink)) {
      name_sources(catalogue, build, kind->facts, sink);
      build.offered.push_back(std::move(*kind));
    }
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(build), sink.take()};
}

}  // namespace loamsheet
