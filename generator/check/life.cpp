#include <algorithm>
#include <map>

#include "catalogue/living.h"
#include "check/checking.h"
#include "check/names.h"
#include "check/position.h"

namespace loamsheet {
namespace {

template <class Use>
void each_item(const Node& root, std::string_view list, Use use) {
  const Node* found = root.find(list);
  if (!found) return;
  for (const Node& item : found->items) use(item);
}

void check_animals(Checking& c) {
  each_item(c.root, "animals", [&](const Node& n) {
    const Node* species = n.find("species");
    const std::string id = species ? resolve(c, *species, "animal", c.catalogue.animals) : "";
    if (id.empty()) return;
    c.build.animals.push_back(
        {id, static_cast<int>(n.number("count").value_or(1)), species->where});
  });
}

BuildKind kind_named(const std::string& name) {
  static const std::map<std::string, BuildKind> kinds{{"humid", BuildKind::humid},
                                                      {"temperate", BuildKind::temperate},
                                                      {"arid", BuildKind::arid},
                                                      {"burrowing", BuildKind::burrowing},
                                                      {"semi-aquatic", BuildKind::semi_aquatic}};
  const auto found = kinds.find(name);
  return found == kinds.end() ? BuildKind::humid : found->second;
}

// The first animal says which rules the build follows.
void check_kind(Checking& c) {
  std::string kind = "humid", from = "default";
  if (!c.build.animals.empty()) {
    const auto animal = taken(read_animal(c.catalogue, c.build.animals.front().id), c.sink);
    if (animal && animal->build_kind) {
      kind = animal->build_kind->value;
      from = "catalogue";
    }
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

void check_plants(Checking& c) {
  each_item(c.root, "plants", [&](const Node& n) {
    if (const Node* species = n.find("species")) resolve(c, *species, "plant", c.catalogue.plants);
    check_support(c, n);
    check_position(c, n, "at", "the plant");
  });
}

void check_crew(Checking& c) {
  each_item(c.root, "crew", [&](const Node& n) {
    if (const Node* species = n.find("species")) {
      resolve(c, *species, "crew species", c.catalogue.crew);
    }
  });
}

void check_amendments(Checking& c) {
  each_item(c.root, "amendments", [&](const Node& n) {
    const Node* material = n.find("material");
    const auto id = n.text("material");
    if (material && id && !c.materials.contains(*id)) {
      unknown_name(c, word_of(*material), "material", ids_of(c.materials));
    }
  });
}

void check_replacements(Checking& c) {
  each_item(c.root, "replaced", [&](const Node& n) {
    if (const Node* by = n.find("by")) resolve(c, *by, "plant", c.catalogue.plants);
  });
}

}  // namespace

void check_life(Checking& c) {
  check_animals(c);
  check_kind(c);
  check_plants(c);
  check_crew(c);
  check_amendments(c);
  check_replacements(c);
}

}  // namespace loamsheet
