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

// Whether it is worth reading: an entry that does not say the word has not the habit.
bool may_be(const Entry& entry, const std::set<std::string>& habits) {
  return habits.empty() || std::any_of(habits.begin(), habits.end(), [&](const std::string& habit) {
           return entry.text().find("habit: " + habit) != std::string::npos;
         });
}

bool is_of(const Plant& plant, const std::set<std::string>& habits) {
  return habits.empty() || (plant.habit && habits.contains(plant.habit->value));
}

}  // namespace

Outcome<PlantKind> read_plant_kind(const Catalogue& catalogue, const std::string& id) {
  auto plant = read_plant(catalogue, id);
  if (!plant) return {std::nullopt, std::move(plant.messages)};
  const auto ppfd = ppfd_wanted(catalogue, *plant.value);
  return {PlantKind{std::move(*plant.value), ppfd}, std::move(plant.messages)};
}

Outcome<Build> with_offer(Build build, const Catalogue& catalogue,
                          const std::set<std::string>& habits) {
  Sink sink;
  if (!build.to_choose.empty()) {
    if (auto rules = taken(choosing_in(*catalogue.choosing), sink)) build.choosing = *rules;
  }
  build.offered.clear();
  for (const auto& [id, entry] : catalogue.plants.entries) {
    if (!may_be(entry, habits)) continue;
    auto kind = taken(read_plant_kind(catalogue, id), sink);
    if (!kind || !is_of(kind->facts, habits)) continue;
    name_sources(catalogue, build, kind->facts, sink);
    build.offered.push_back(std::move(*kind));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(build), sink.take()};
}

}  // namespace loamsheet
