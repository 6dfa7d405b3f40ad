#include "catalogue/rule_keys.h"

#include "base/text.h"
#include "catalogue/rules.h"

namespace loamsheet {
namespace {

using enum Kind;
using flag::required;

constexpr std::string_view groups =
    "lead-up|tank|drainage|substrate|hardscape|planting|finish|after";

constexpr std::string_view slots =
    "background-material|drainage-material|drainage-volume|drainage-depth|waterline|"
    "separator-material|separator-width|separator-depth|substrate-volume|substrate-front|"
    "substrate-back|litter-material|litter-volume|moss-material|moss-area|dam-length|dam-height|"
    "first-watering";

constexpr std::string_view amounts =
    "drainage|litter|substrate|first-watering|mist|lamp-hours|fill-every|springtails|isopods|"
    "waterline";

constexpr std::string_view counts = "build|plant|mount|mounted|lamp|lamp-hours|thermostat";

constexpr std::string_view uses =
    "background|drainage|separator|substrate|amendment|litter|moss|water|fixing|plants|crew|"
    "furnishing|equipment|watering|supply";

constexpr std::string_view lists =
    "every-day|every-week|every-month|normal|not-normal|tank-ready|animal-ready";

constexpr Limits day_limits{-90, 366};

// Which conditions there are for "if" and "unless" is known where they are worked out, in
// plan/care.
constexpr Key rows[] = {
    {.path = "work", .kind = table, .flags = required},
    {.path = "work.*", .kind = group},
    {.path = "work.*.group", .kind = choice, .flags = required, .choices = groups},
    {.path = "work.*.minutes", .kind = integer, .limits = {1, 600}, .flags = required},
    {.path = "work.*.pause", .kind = yes_no},
    {.path = "work.*.for", .kind = choice, .choices = "raised|floor"},
    {.path = "work.*.after", .kind = list, .limits = {1, 20}},
    {.path = "work.*.after[]", .kind = id},
    {.path = "work.*.slots", .kind = list, .limits = {1, 10}},
    {.path = "work.*.slots[]", .kind = choice, .choices = slots},
    {.path = "work.*.needs", .kind = list, .limits = {1, 20}},
    {.path = "work.*.needs[]", .kind = id},
    {.path = "work.*.if", .kind = list, .limits = {1, 10}},
    {.path = "work.*.if[]", .kind = id},
    {.path = "work.*.unless", .kind = list, .limits = {1, 10}},
    {.path = "work.*.unless[]", .kind = id},

    {.path = "care", .kind = table, .flags = required},
    {.path = "care.*", .kind = group},
    {.path = "care.*.from", .kind = choice, .choices = "planting|move|ready|replacement"},
    {.path = "care.*.on", .kind = integer, .limits = day_limits, .flags = required},
    {.path = "care.*.to", .kind = integer, .limits = day_limits},
    {.path = "care.*.every", .kind = integer, .limits = {1, 90}},
    {.path = "care.*.moves", .kind = yes_no},
    {.path = "care.*.milestone", .kind = yes_no},
    {.path = "care.*.while_empty", .kind = yes_no},
    {.path = "care.*.amount", .kind = choice, .choices = amounts},
    {.path = "care.*.after", .kind = list, .limits = {1, 20}},
    {.path = "care.*.after[]", .kind = id},
    {.path = "care.*.gap", .kind = integer, .limits = {0, 60}},
    {.path = "care.*.needs", .kind = list, .limits = {1, 20}},
    {.path = "care.*.needs[]", .kind = id},
    {.path = "care.*.if", .kind = list, .limits = {1, 10}},
    {.path = "care.*.if[]", .kind = id},
    {.path = "care.*.unless", .kind = list, .limits = {1, 10}},
    {.path = "care.*.unless[]", .kind = id},

    {.path = "readiness", .kind = table, .flags = required},
    {.path = "readiness.*", .kind = group},
    {.path = "readiness.*.days", .kind = integer, .limits = {30, 365}},
    {.path = "readiness.*.more", .kind = integer, .limits = {1, 365}},
    {.path = "readiness.*.after_acquired", .kind = integer, .limits = {1, 365}},
    {.path = "readiness.*.if", .kind = list, .limits = {1, 10}},
    {.path = "readiness.*.if[]", .kind = id},
    {.path = "readiness.*.unless", .kind = list, .limits = {1, 10}},
    {.path = "readiness.*.unless[]", .kind = id},

    {.path = "tools", .kind = list, .limits = {1, 100}},
    {.path = "tools[]", .kind = id},

    {.path = "supplies", .kind = table},
    {.path = "supplies.*", .kind = group},
    {.path = "supplies.*.amount", .kind = number, .limits = {0.001, 1000}, .flags = required},
    {.path = "supplies.*.unit", .kind = choice, .choices = "L|kg|m2|piece"},
    {.path = "supplies.*.per", .kind = choice, .flags = required, .choices = counts},

    {.path = "points", .kind = table},
    {.path = "points.*", .kind = group},
    {.path = "points.*.under", .kind = choice, .flags = required, .choices = lists},
    {.path = "points.*.if", .kind = list, .limits = {1, 10}},
    {.path = "points.*.if[]", .kind = id},
    {.path = "points.*.unless", .kind = list, .limits = {1, 10}},
    {.path = "points.*.unless[]", .kind = id},
};

}  // namespace

std::span<const Key> rule_keys() {
  return rows;
}

std::vector<std::string> task_groups() {
  return split(groups, '|');
}
std::vector<std::string> task_slots() {
  return split(slots, '|');
}
std::vector<std::string> task_amounts() {
  return split(amounts, '|');
}
std::vector<std::string> supply_counts() {
  return split(counts, '|');
}
std::vector<std::string> care_lists() {
  return split(lists, '|');
}
std::vector<std::string> pull_uses() {
  return split(uses, '|');
}

}  // namespace loamsheet
