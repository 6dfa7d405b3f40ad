// What happened to a build since its first revision: plants that died, dates that moved, and the
// cautions that somebody takes on.
#include <algorithm>

#include "check/checking.h"
#include "check/names.h"
#include "check/offer.h"
#include "check/slip.h"

namespace loamsheet {
namespace {

// Of the plan before any was replaced: those named and those to be chosen.
int plants_planned(const Build& build) {
  int count = static_cast<int>(build.plants.size());
  for (const ToChoose& wanted : build.to_choose) count += wanted.count;
  return count;
}

void no_such_plant(Checking& c, const Node& plant, int number) {
  const int known = plants_planned(c.build);
  c.error(plant.where, "there is no plant " + std::to_string(number) + " to replace",
          known == 0 ? "a plant of the list 'plants'"
                     : "a number of the planting plan, from 1 to " + std::to_string(known));
}

void before_planting(Checking& c, const Span& where, const Replacement& replaced) {
  c.error(where,
          "plant " + std::to_string(replaced.plant) + " is replaced (" + iso(replaced.on) +
              ") before anything is planted (" + iso(c.build.identity.plant_on) + ")",
          "a date on or after build.plant_on");
}

void check_replacement(Checking& c, const Node& n) {
  const Node *plant = n.find("plant"), *by = n.find("by"), *on = n.find("on");
  if (!plant || !by || !on) return;
  Replacement replaced;
  replaced.plant = static_cast<int>(n.number("plant").value_or(0));
  replaced.on = n.date("on").value_or(Date{});
  replaced.where = n.where;
  if (replaced.plant > plants_planned(c.build)) no_such_plant(c, *plant, replaced.plant);
  if (replaced.on < c.build.identity.plant_on) before_planting(c, on->where, replaced);
  const std::string id = resolve(c, *by, "plant", c.catalogue.plants);
  if (id.empty()) return;
  auto kind = taken(read_plant_kind(c.catalogue, id), c.sink);
  if (!kind) return;
  replaced.by = std::move(*kind);
  c.build.replaced.push_back(std::move(replaced));
}

void check_replacements(Checking& c) {
  const Node* list = c.root.find("replaced");
  if (!list) return;
  for (const Node& item : list->items) check_replacement(c, item);
  auto& replaced = c.build.replaced;
  std::stable_sort(replaced.begin(), replaced.end(),
                   [](const Replacement& a, const Replacement& b) { return a.on < b.on; });
  if (!replaced.empty()) c.build.identity.done_until = replaced.back().on;
}

void check_acceptances(Checking& c) {
  const Node* list = c.root.find("accept");
  if (!list) return;
  for (const Node& item : list->items) {
    c.build.accepted.push_back({item.text("rule").value_or(""), item.text("by").value_or(""),
                                item.text("reason").value_or(""), place_of(item, "rule")});
  }
}

}  // namespace

void check_record(Checking& c) {
  check_replacements(c);
  check_acceptances(c);
  move_dates(c.build.identity, c.build.identity.slip);
}

}  // namespace loamsheet
