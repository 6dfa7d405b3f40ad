#include <algorithm>
#include <map>

#include "catalogue/living.h"
#include "check/check.h"
#include "check/checking.h"
#include "check/defaults.h"
#include "check/exact.h"
#include "check/names.h"
#include "check/offer.h"
#include "check/position.h"

namespace loamsheet {
namespace {

template <class Use>
void each_item(const Node& root, std::string_view list, Use use) {
  const Node* found = root.find(list);
  if (!found) return;
  for (const Node& item : found->items) use(item);
}

KeptAnimal kept_animal(const Node& n, Animal facts) {
  KeptAnimal kept;
  kept.facts = std::move(facts);
  kept.count = static_cast<int>(n.number("count").value_or(1));
  kept.juvenile = n.text("stage") == "juvenile";
  if (const auto kg = n.number("mass")) kept.mass = Kilograms{*kg};
  kept.acquired = n.date("acquired");
  kept.where = n.where;
  return kept;
}

void check_animals(Checking& c) {
  each_item(c.root, "animals", [&](const Node& n) {
    const Node* species = n.find("species");
    const std::string id = species ? resolve(c, *species, "animal", c.catalogue.animals) : "";
    if (id.empty()) return;
    auto facts = taken(read_animal(c.catalogue, id), c.sink);
    if (facts) c.build.kept.push_back(kept_animal(n, std::move(*facts)));
  });
}

// The first animal says which rules the build follows.
void check_kind(Checking& c) {
  std::string kind = "humid", from = from_default;
  if (!c.build.kept.empty() && c.build.kept.front().facts.build_kind) {
    kind = c.build.kept.front().facts.build_kind->value;
    from = "catalogue";
  }
  c.build.kind = kind_named(kind);
  c.build.assumed.push_back({"kind of build", kind, from});
}

void check_support(Checking& c, const Node& plant) {
  const Node* on = plant.find("on");
  if (!on) return;
  std::vector<std::string> known;
  each_item(c.root, "furnishings",
            [&](const Node& n) { known.push_back(n.text("id").value_or("")); });
  if (c.build.enclosure.background) known.push_back("background");
  const auto typed = plant.text("on").value_or("");
  if (std::find(known.begin(), known.end(), typed) != known.end()) return;
  if (known.empty()) {
    c.error(on->where, "there is nothing called '" + typed + "' for a plant to grow on",
            "the id of a furnishing, or background");
  } else {
    unknown_name(c, word_of(*on), "furnishing", known);
  }
}

// Each species is read once, however many entries name it.
using Read = std::map<std::string, std::optional<PlantKind>>;

const std::optional<PlantKind>& plant_facts(Checking& c, Read& read, const std::string& id) {
  const auto found = read.find(id);
  if (found != read.end()) return found->second;
  return read.emplace(id, taken(read_plant_kind(c.catalogue, id), c.sink)).first->second;
}

void use_plants(Checking& c, const Node& n, const PlantKind& kind) {
  PlantUse use;
  use.facts = kind.facts;
  use.ppfd = kind.ppfd;
  if (const Node* at = n.find("at")) {
    use.pinned = Point{at->number("[0]").value_or(0), at->number("[1]").value_or(0)};
    if (const auto z = at->number("[2]")) use.pinned_height = Millimetres{*z};
  }
  use.on = n.text("on").value_or("");
  use.where = n.where;
  for (int i = static_cast<int>(n.number("count").value_or(1)); i > 0; --i) {
    use.number = static_cast<int>(c.build.plants.size()) + 1;
    c.build.plants.push_back(use);
  }
}

// More than this no enclosure holds, and finding their places would not end in a reasonable time.
constexpr int most_plants = 500;

bool too_many(Checking& c, double count, const Span& where) {
  if (count <= most_plants) return false;
  c.error(where, "there are more than 500 plants up to here", "at most 500 in all");
  return true;
}

// They find their places when the plan picks them.
void leave_to_choose(Checking& c, const Node& n, double& count) {
  const Node& choose = *n.find("choose");
  ToChoose wanted;
  wanted.count = static_cast<int>(choose.number("count").value_or(1));
  if (const Node* budget = choose.find("budget")) wanted.budget = exact_money(c, *budget);
  wanted.after = c.build.plants.size();
  wanted.where = choose.where;
  count += wanted.count;
  if (!too_many(c, count, choose.where)) c.build.to_choose.push_back(wanted);
}

void check_plants(Checking& c) {
  Read read;
  double count = 0;
  each_item(c.root, "plants", [&](const Node& n) {
    if (n.has("choose")) return leave_to_choose(c, n, count);
    check_support(c, n);
    check_position(c, n, "at", "the plant");
    const Node* species = n.find("species");
    const std::string id = species ? resolve(c, *species, "plant", c.catalogue.plants) : "";
    if (id.empty()) return;
    count += n.number("count").value_or(1);
    if (too_many(c, count, species->where)) return;
    if (const auto& facts = plant_facts(c, read, id)) use_plants(c, n, *facts);
  });
}

void check_crew(Checking& c) {
  each_item(c.root, "crew", [&](const Node& n) {
    const Node* species = n.find("species");
    const std::string id = species ? resolve(c, *species, "crew species", c.catalogue.crew) : "";
    if (id.empty()) return;
    auto facts = taken(read_crew(c.catalogue, id), c.sink);
    if (!facts) return;
    const double cultures = n.number("cultures").value_or(1);
    c.build.crew.push_back({std::move(*facts), cultures, n.where});
  });
}

Amendment amendment(const Node& n, const Material& material) {
  Amendment a;
  a.material = material.id;
  a.by_area = n.has("area_rate");
  a.rate = a.by_area ? n.number("area_rate").value_or(0) * 1000  // kg/m2 to g/m2
                     : n.number("label_rate").value_or(0);
  a.strength = {n.number("strength").value_or(1)};
  if (const auto& density = material.dry_density) {
    a.density = (density->value.low + density->value.high) / 2;
  }
  if (material.nitrogen) a.nitrogen = material.nitrogen->value;
  a.where = n.where;
  return a;
}

void check_amendments(Checking& c) {
  each_item(c.root, "amendments", [&](const Node& n) {
    const Node* material = n.find("material");
    const auto id = n.text("material");
    if (material && id && !c.materials.has(*id)) {
      unknown_name(c, word_of(*material), "material", c.materials.ids());
    }
    const Material* known = id ? c.materials.find(*id) : nullptr;
    if (known) c.build.amendments.push_back(amendment(n, *known));
  });
}

}  // namespace

BuildKind kind_named(const std::string& name) {
  static const std::map<std::string, BuildKind> kinds{{"humid", BuildKind::humid},
                                                      {"temperate", BuildKind::temperate},
                                                      {"arid", BuildKind::arid},
                                                      {"burrowing", BuildKind::burrowing},
                                                      {"semi-aquatic", BuildKind::semi_aquatic}};
  const auto found = kinds.find(name);
  return found == kinds.end() ? BuildKind::humid : found->second;
}

void check_life(Checking& c) {
  check_animals(c);
  check_kind(c);
  check_plants(c);
  check_crew(c);
  check_amendments(c);
}

}  // namespace loamsheet
