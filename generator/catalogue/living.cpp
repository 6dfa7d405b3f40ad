#include "catalogue/living.h"

#include "base/capital.h"
#include "base/text.h"
#include "catalogue/entry.h"
#include "catalogue/fact_line.h"
#include "catalogue/keys.h"

namespace loamsheet {
namespace {

void take_floor(const FactLine& line, Animal& a) {
  const Node* floor = line.node().find("floor");
  if (!floor || floor->items.size() != 2) return;
  const auto side = [&](std::string_view at) {
    const double mm = floor->number(at).value_or(0);
    return Fact<Range<Millimetres>>{{{mm}, {mm}}, line.origin()};
  };
  a.floor_length = side("[0]");
  a.floor_width = side("[1]");
}

void take_ways(const FactLine& line, Animal& a) {
  line.take("browses", a.browses);
  line.take("activity", a.activity);
  line.take("society", a.society);
  line.take("lives_with", a.lives_with);
  line.take("planted_with", a.planted_with);
  line.take("digs", a.digs);
  line.take("claws", a.claws);
  line.take("climbs", a.climbs);
  line.take("jumps", a.jumps);
  line.take("lays", a.lays);
  line.take("water", a.water);
  line.take("young", a.young);
  line.take("feeder", a.feeder);
}

void take_facts(const FactLine& line, Animal& a) {
  line.take("group", a.group);
  line.take("build_kind", a.build_kind);
  line.take("length", a.length);
  line.take("mass", a.mass);
  line.take("lifestyle", a.lifestyle);
  line.take("diet", a.diet);
  line.take("wear", a.wear);
  line.take("headroom", a.headroom);
  line.take("day", a.day);
  line.take("basking", a.basking);
  line.take("night", a.night);
  line.take("warmest", a.warmest);
  line.take("humidity", a.humidity);
  line.take("uv_zone", a.uv_zone);
  line.take("permit", a.permit);
  take_floor(line, a);
  take_ways(line, a);
}

void take_facts(const FactLine& line, Plant& p) {
  line.take("family", p.family);
  line.take("habit", p.habit);
  line.take("growth", p.growth);
  line.take("leaf", p.leaf);
  line.take("role", p.role);
  line.take("height", p.height);
  line.take("spread", p.spread);
  line.take("root_depth", p.root_depth);
  line.take("light", p.light);
  line.take("ppfd_from", p.ppfd_from);
  line.take("humidity", p.humidity);
  line.take("dampest", p.dampest);
  line.take("moisture", p.moisture);
  line.take("coldest", p.coldest);
  line.take("warmest", p.warmest);
  line.take("mountable", p.mountable);
  line.take("robustness", p.robustness);
  line.take("edible", p.edible);
  line.take("invasive", p.invasive);
  line.take("first_month", p.first_month);
  line.take(p.hazards);
}

void take_facts(const FactLine& line, CrewSpecies& c) {
  line.take("group", c.group);
  line.take("needs", c.needs);
  line.take("diet", c.diet);
  line.take("protein", c.protein);
  line.take("caution", c.caution);
  line.take("coldest", c.coldest);
  line.take("warmest", c.warmest);
  line.take("density", c.density);
  line.take("harasses", c.harasses);
}

void take_own(const Node&, Animal&) {}
// The name that an id spells: genus, epithet, and a cultivar in single quotes.
std::string spelt_by(const std::string& id) {
  const auto parts = split(id, '-');
  std::string name = capitalised(parts[0]);
  if (parts.size() > 1) name += ' ' + parts[1];
  if (parts.size() > 2) name += " '" + capitalised(parts[2]) + '\'';
  return name;
}

void take_own(const Node& node, Plant& p) {
  p.botanical = node.text("botanical").value_or(spelt_by(p.id));
}
void take_own(const Node& node, CrewSpecies& c) {
  c.reference = node.yes("reference").value_or(false);
}

struct Place {
  const Catalogue& catalogue;
  const Shelf& shelf;
  std::span<const Key> table;
};

template <class Living>
Outcome<Living> read_living(const Place& place, const std::string& id) {
  Sink sink;
  const auto node = read_entry(place.shelf, id, place.table, sink);
  if (!node) return {std::nullopt, sink.take()};
  Living out;
  out.id = id;
  out.name = node->text("name").value_or("");
  take_own(*node, out);
  if (const Node* facts = node->find("facts")) {
    for (const Node& line : facts->items) {
      take_facts(FactLine(line, place.catalogue.sources, sink), out);
    }
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(out), sink.take()};
}

}  // namespace

Outcome<Animal> read_animal(const Catalogue& c, const std::string& id) {
  Sink sink;
  auto animal = taken(read_living<Animal>({c, c.animals, animal_keys()}, id), sink);
  if (animal && animal->group) {
    animal->body = read_body({c.groups, c.sources}, animal->group->value, sink);
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(animal), sink.take()};
}

Outcome<Plant> read_plant(const Catalogue& c, const std::string& id) {
  return read_living<Plant>({c, c.plants, plant_keys()}, id);
}

Outcome<CrewSpecies> read_crew(const Catalogue& c, const std::string& id) {
  return read_living<CrewSpecies>({c, c.crew, crew_keys()}, id);
}

Animal::Animal() = default;
Animal::Animal(const Animal&) = default;
Animal::Animal(Animal&&) noexcept = default;
Animal& Animal::operator=(const Animal&) = default;
Animal& Animal::operator=(Animal&&) noexcept = default;
Animal::~Animal() = default;

Plant::Plant() = default;
Plant::Plant(const Plant&) = default;
Plant::Plant(Plant&&) noexcept = default;
Plant& Plant::operator=(const Plant&) = default;
Plant& Plant::operator=(Plant&&) noexcept = default;
Plant::~Plant() = default;

}  // namespace loamsheet
