#include "catalogue/choosing.h"

#include <algorithm>

namespace loamsheet {
namespace {

using enum Kind;
using flag::required;

constexpr Key rows[] = {
    {.path = "worth", .kind = table, .flags = required},
    {.path = "worth.*", .kind = group},
    {.path = "worth.*.is", .kind = number, .limits = {0, 10}, .flags = required},
    {.path = "worth.*.why", .kind = text, .flags = required},
    {.path = "climate", .kind = table, .flags = required},
    {.path = "climate.*", .kind = group},
    {.path = "climate.*.is", .kind = number, .limits = {0, 40}, .flags = required},
    {.path = "climate.*.why", .kind = text, .flags = required},
    {.path = "ground", .kind = table, .flags = required},
    {.path = "ground.*", .kind = group},
    {.path = "ground.*.dry", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "ground.*.moderate", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "ground.*.moist", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "ground.*.wet", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "ground.*.why", .kind = text, .flags = required},
    {.path = "roles", .kind = table, .flags = required},
    {.path = "roles.*", .kind = group},
    {.path = "roles.*.habits", .kind = list, .flags = required},
    {.path = "roles.*.habits[]",
     .kind = choice,
     .choices = "climber|trailer|creeper|moss|epiphyte|low|tall|focal"},
    {.path = "roles.*.filled", .kind = number, .limits = {0, 10}, .flags = required},
    {.path = "roles.*.crowded", .kind = number, .limits = {0, 10}, .flags = required},
    {.path = "roles.*.share", .kind = share, .limits = {0, 1}, .flags = required},
    {.path = "roles.*.why", .kind = text, .flags = required},
};

// Numbers by their names; a name that is not among them is an error, and so is one left out.
using Numbers = std::vector<std::pair<std::string, double*>>;

void take(const Node& root, const std::string& section, const Numbers& numbers, Sink& sink) {
  const Node* rows = root.find(section);
  if (!rows) return;
  for (const auto& [name, row] : rows->entries) {
    const bool known = std::any_of(numbers.begin(), numbers.end(),
                                   [&](const auto& number) { return number.first == name; });
    if (!known) sink.add({.where = row.name, .message = "unknown weight '" + name + "'"});
  }
  for (const auto& [name, into] : numbers) {
    const auto is = rows->number(name + ".is");
    if (is) *into = *is;
    if (!is) sink.add({.where = rows->where, .message = "no weight '" + name + "'"});
  }
}

std::map<std::string, double> ground(const Node& row) {
  std::map<std::string, double> by_moisture;
  for (const char* moisture : {"dry", "moderate", "moist", "wet"}) {
    by_moisture[moisture] = row.number(moisture).value_or(0);
  }
  return by_moisture;
}

RoleRule role(const Node& row) {
  RoleRule rule;
  if (const Node* habits = row.find("habits")) {
    for (const Node& habit : habits->items) {
      rule.habits.push_back(std::get<std::string>(habit.leaf));
    }
  }
  rule.filled = row.number("filled").value_or(0);
  rule.crowded = row.number("crowded").value_or(0);
  rule.share = row.number("share").value_or(0);
  return rule;
}

}  // namespace

YamlFilePtr choosing_file(World& world, Sink& sink) {
  return data_file(world, "templates/choosing.yaml", sink);
}

Outcome<ChoosingRules> choosing_in(const YamlFile& file) {
  Sink sink;
  const auto root = taken(read_document(file, rows), sink);
  if (!root) return {std::nullopt, sink.take()};
  ChoosingRules rules;
  take(*root, "worth",
       {{"place", &rules.place},
        {"home", &rules.home},
        {"sturdy", &rules.sturdy},
        {"same-leaf", &rules.same_leaf},
        {"caution", &rules.caution},
        {"least-fit", &rules.least_fit}},
       sink);
  ClimateRules& climate = rules.climate;
  take(*root, "climate",
       {{"warmth-to-spare", &climate.warmth_to_spare},
        {"no-winter", &climate.no_winter},
        {"never-winter", &climate.never_winter},
        {"over-least", &climate.over_least},
        {"strange-air", &climate.strange_air}},
       sink);
  if (const Node* grounds = root->find("ground")) {
    for (const auto& [name, row] : grounds->entries) climate.ground[name] = ground(row);
  }
  if (const Node* roles = root->find("roles")) {
    for (const auto& [name, row] : roles->entries) rules.roles[name] = role(row);
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(rules), sink.take()};
}

}  // namespace loamsheet
