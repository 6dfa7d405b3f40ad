#include "catalogue/choosing.h"

#include "catalogue/file.h"

namespace loamsheet {
namespace {

using enum Kind;
using flag::required;

constexpr const char* file = "templates/choosing.yaml";

constexpr Key rows[] = {
    {.path = "worth", .kind = group, .flags = required},
    {.path = "worth.place", .kind = group, .flags = required},
    {.path = "worth.place.is", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "worth.place.why", .kind = text, .flags = required},
    {.path = "worth.climate", .kind = group, .flags = required},
    {.path = "worth.climate.is", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "worth.climate.why", .kind = text, .flags = required},
    {.path = "worth.same_leaf", .kind = group, .flags = required},
    {.path = "worth.same_leaf.is", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "worth.same_leaf.why", .kind = text, .flags = required},
    {.path = "worth.caution", .kind = group, .flags = required},
    {.path = "worth.caution.is", .kind = number, .limits = {0, 10}, .flags = required},
    {.path = "worth.caution.why", .kind = text, .flags = required},
    {.path = "worth.least_fit", .kind = group, .flags = required},
    {.path = "worth.least_fit.is", .kind = number, .limits = {0, 1}, .flags = required},
    {.path = "worth.least_fit.why", .kind = text, .flags = required},
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

RoleRule role(const Node& row) {
  RoleRule rule;
  if (const Node* habits = row.find("habits")) {
    for (const Node& habit : habits->items)
      rule.habits.push_back(std::get<std::string>(habit.leaf));
  }
  rule.filled = row.number("filled").value_or(0);
  rule.crowded = row.number("crowded").value_or(0);
  rule.share = row.number("share").value_or(0);
  return rule;
}

}  // namespace

ChoosingRules read_choosing(World& world, Sink& sink) {
  ChoosingRules rules;
  const auto root = data_tree(world, file, rows, sink);
  if (!root) return rules;
  const auto worth = [&](const char* name, double& into) {
    into = root->number(std::string("worth.") + name + ".is").value_or(into);
  };
  worth("place", rules.place), worth("climate", rules.climate);
  worth("same_leaf", rules.same_leaf), worth("caution", rules.caution);
  worth("least_fit", rules.least_fit);
  if (const Node* roles = root->find("roles")) {
    for (const auto& [name, row] : roles->entries) rules.roles[name] = role(row);
  }
  return rules;
}

}  // namespace loamsheet
