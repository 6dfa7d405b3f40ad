// What the catalogue says: every entry whole, within what can be, and every fact with its origin.
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "catalogue/living.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

const Catalogue& real() {
  static const Catalogue read = [] {
    const auto world = real_world();
    return read_catalogue(*world).value.value();
  }();
  return read;
}

template <class Use>
void each_plant(Use use) {
  for (const auto& id : real().plants.ids()) {
    INFO(id);
    const auto plant = read_plant(real(), id);
    REQUIRE(plant.value);
    use(*plant.value);
  }
}

template <class Use>
void each_animal(Use use) {
  for (const auto& id : real().animals.ids()) {
    INFO(id);
    const auto animal = read_animal(real(), id);
    REQUIRE(animal.value);
    use(*animal.value);
  }
}

template <class Use>
void each_crew(Use use) {
  for (const auto& id : real().crew.ids()) {
    INFO(id);
    const auto crew = read_crew(real(), id);
    REQUIRE(crew.value);
    if (!crew.value->reference) use(*crew.value);
  }
}

// How many plants have a habit, and how many animals are of a group that ends so.
int plants_of(const std::string& habit) {
  int count = 0;
  each_plant([&](const Plant& p) { count += p.habit->value == habit; });
  return count;
}

int animals_of(const std::string& group) {
  int count = 0;
  each_animal([&](const Animal& a) { count += a.group->value.ends_with(group); });
  return count;
}

// Works on paper, or pages that are no longer to be found.
const std::set<std::string> without_link{"schabauer-2026",   "arkansas-fsa6097", "en-572-1",
                                         "ufifas-columnist", "knight",           "barnard-1996",
                                         "iso-4217"};

}  // namespace

TEST_CASE("the catalogue is as large as it is meant to be") {
  int crew = 0;
  each_crew([&](const CrewSpecies&) { ++crew; });
  CHECK(real().plants.entries.size() >= 120);
  CHECK(real().animals.entries.size() >= 50);
  CHECK(crew >= 12);
  CHECK(real().materials.entries.size() >= 40);
  CHECK(real().mixes.entries.size() >= 12);
}

TEST_CASE("there are plants of every habit and animals of every group") {
  for (const char* habit :
       {"upright", "rosette", "climber", "trailer", "ground-cover", "fern", "moss", "epiphyte",
        "bromeliad", "orchid", "succulent", "grass", "shrub"}) {
    INFO(habit);
    CHECK(plants_of(habit) >= 5);
  }
  for (const char* group : {"arboreal gecko", "terrestrial gecko", "skink", "anole", "chameleon",
                            "small boa", "colubrid", "tree frog", "dart frog", "toad", "newt",
                            "tortoise", "box turtle", "crab", "tarantula", "mantid"}) {
    INFO(group);
    CHECK(animals_of(group) >= 1);
  }
}

TEST_CASE("every plant is whole") {
  each_plant([](const Plant& p) {
    CHECK(p.family);
    CHECK(p.height);
    CHECK(p.spread);
    CHECK(p.growth);
    CHECK(p.humidity);
    CHECK(p.moisture);
    CHECK(p.root_depth);
    CHECK(p.mountable);
    CHECK(p.leaf);
    CHECK(p.first_month);
  });
}

TEST_CASE("plants have sizes, warmth and roots that plants have") {
  each_plant([](const Plant& p) {
    CHECK(p.height->value.low <= p.height->value.high);
    CHECK(p.height->value.low >= 5_mm);
    CHECK(p.height->value.high <= 20000_mm);
    CHECK(p.spread->value.low <= p.spread->value.high);
    CHECK(p.spread->value.low >= 10_mm);
    CHECK(p.root_depth->value.low <= 120_mm);
    CHECK(p.root_depth->value.high <= 250_mm);
    CHECK(p.coldest->value.v >= -30);
    CHECK(p.warmest->value.v <= 45);
    CHECK(p.warmest->value.v - p.coldest->value.v >= 5);
    if (p.dampest) CHECK(p.dampest->value.v >= p.humidity->value.v + 0.1);
  });
}

TEST_CASE("what grows without soil may be planted in none, and mosses are low and mountable") {
  each_plant([](const Plant& p) {
    if (p.root_depth->value.low == 0_mm) CHECK(p.mountable->value);
    if (p.habit->value != "moss") return;
    CHECK(p.height->value.high <= 100_mm);
    CHECK(p.mountable->value);
  });
}

TEST_CASE("a plant without known hazards lists no other, and food is not poison") {
  each_plant([](const Plant& p) {
    const auto is = [&](const char* kind) {
      return std::any_of(p.hazards.begin(), p.hazards.end(),
                         [&](const Hazard& h) { return h.kind == kind; });
    };
    if (is("none-known")) CHECK(p.hazards.size() == 1);
    if (p.edible && p.edible->value) {
      CHECK_FALSE(is("toxic-if-eaten"));
      CHECK_FALSE(is("calcium-oxalate"));
      CHECK_FALSE(is("saponin"));
    }
  });
}

TEST_CASE("every animal is whole") {
  each_animal([](const Animal& a) {
    CHECK(a.group);
    CHECK(a.length);
    CHECK(a.mass);
    CHECK(a.lifestyle);
    CHECK(a.diet);
    CHECK(a.activity);
    CHECK(a.browses);
    CHECK(a.society);
    CHECK(a.lays);
    CHECK(a.digs);
    CHECK(a.claws);
    CHECK(a.climbs);
    CHECK(a.jumps);
    CHECK(a.water);
    CHECK(a.young);
    CHECK(a.day);
    CHECK(a.night);
    CHECK(a.warmest);
    CHECK(a.humidity);
    CHECK(a.permit);
  });
}

TEST_CASE("animals have sizes, warmth and damp that animals have") {
  each_animal([](const Animal& a) {
    CHECK(a.length->value.low <= a.length->value.high);
    CHECK(a.mass->value.low <= a.mass->value.high);
    CHECK(a.young->value.high < a.length->value.low);
    CHECK(a.day->value.low.v >= 10);
    CHECK(a.day->value.high.v <= 40);
    CHECK(a.night->value.low <= a.day->value.low);
    CHECK(a.night->value.high <= a.day->value.high);
    CHECK(a.warmest->value >= a.day->value.high);
    if (a.basking) CHECK(a.basking->value.high >= a.day->value.high);
    CHECK(a.humidity->value.low.v >= 0.1);
    if (a.uv_zone) CHECK(a.uv_zone->value.low <= a.uv_zone->value.high);
    CHECK(a.floor_length->value.low >= 200_mm);
  });
}

TEST_CASE("who eats plants is no insect eater, and who eats insects or meat has prey of a size") {
  each_animal([](const Animal& a) {
    const std::string &diet = a.diet->value, &browses = a.browses->value;
    if (diet == "herbivore") CHECK(browses == "yes");
    if (browses == "yes") CHECK((diet == "herbivore" || diet == "omnivore"));
    if (diet == "insectivore" || diet == "carnivore") {
      CHECK(a.feeder);
      CHECK(browses == "no");
    }
    if (a.feeder) CHECK(a.feeder->value.high < a.length->value.high);
  });
}

TEST_CASE("animals that live with another know it by its id, and it is in the catalogue") {
  each_animal([](const Animal& a) {
    if (!a.lives_with) return;
    for (const auto& other : a.lives_with->value) CHECK(real().animals.has(other));
  });
}

TEST_CASE("plants that keepers grow with an animal are in the catalogue, and it eats leaves") {
  int known = 0;
  each_animal([&](const Animal& a) {
    if (!a.planted_with) return;
    CHECK(a.browses->value == "yes");
    for (const auto& plant : a.planted_with->value) CHECK(real().plants.has(plant));
    ++known;
  });
  CHECK(known > 0);
}

TEST_CASE("every crew species is whole") {
  each_crew([](const CrewSpecies& c) {
    CHECK(c.group);
    CHECK(c.needs);
    CHECK(c.diet);
    CHECK(c.protein);
    CHECK(c.coldest);
    CHECK(c.warmest);
    CHECK(c.density);
    CHECK(c.caution);
    CHECK(c.coldest->value < c.warmest->value);
  });
}

TEST_CASE("a former name stands for one entry, and for none that is there") {
  std::set<std::string> seen;
  for (const Shelf* shelf : {&real().plants, &real().animals, &real().crew}) {
    for (const auto& [id, entry] : shelf->entries) {
      for (const auto& former : entry.synonyms) {
        INFO(id << ' ' << former);
        CHECK(seen.insert(former).second);
        CHECK_FALSE(shelf->has(former));
        CHECK(shelf->renamed(former) == id);
      }
    }
  }
  CHECK(seen.size() >= 50);
}

TEST_CASE("a published work has a name, and a link where there is one") {
  for (const auto& id : real().sources.ids()) {
    INFO(id);
    const auto source = read_source(real(), id);
    REQUIRE(source.value);
    const std::string& link = source.value->link;
    CHECK(source.value->title.size() > 8);
    CHECK(link.empty() == without_link.contains(id));
    if (!link.empty()) CHECK(link.starts_with("http"));
  }
}

TEST_CASE("a law says where it holds") {
  for (const char* law :
       {"at-486-2004", "at-retail-leopard-gecko", "de-1997", "ch-tschv", "eu-2007-526"}) {
    INFO(law);
    const auto source = read_source(real(), law);
    REQUIRE(source.value);
    CHECK_FALSE(source.value->jurisdiction.empty());
  }
}
