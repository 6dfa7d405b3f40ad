#include "read/pattern.h"

#include "base/text.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

constexpr std::string_view number =
    "(-|−)?([0-9]+(\\.[0-9]+)?|\\.[0-9]+|([0-9]+ )?[0-9]+/[0-9]+|[0-9]* "
    "?(½|¼|¾|⅓|⅔|⅕|⅖|⅗|⅘|⅙|⅚|⅛|⅜|⅝|⅞))";

std::string letter(char c) {
  switch (c) {
    case '/':
      return " *(/|per) *";
    case '2':
      return "(2|²)";
    case '3':
      return "(3|³)";
    case '"':
      return "(\"|″|”)";
    case '\'':
      return "('|′|’)";
    default:
      return {c};
  }
}

std::string unit_pattern(Kind kind) {
  std::vector<std::string> units;
  for (const auto& name : unit_names(kind)) {
    std::string unit;
    for (char c : name) unit += letter(c);
    units.push_back(unit);
  }
  return '(' + join(units, "|") + ')';
}

std::string amount_pattern(const Key& key) {
  const std::string n(number), unit = " *" + unit_pattern(key.kind);
  const std::string first = key.has(flag::range_ok) ? "(" + n + "(" + unit + ")? *(–|-) *)?" : "";
  const std::string fraction = key.kind == Kind::share ? "|([0-9]+ )?[0-9]+/[0-9]+|½|¼|¾|⅓|⅔" : "";
  const std::string amount = first + n + unit;
  return fraction.empty() ? amount : '(' + amount + fraction + ')';
}

std::string dose_pattern() {
  const std::string n(number);
  return n + " *" + unit_pattern(Kind::mass) + " *(/|per) *(" + n + ")? *" +
         unit_pattern(Kind::volume);
}

std::string bare_pattern(const Key& key) {
  switch (key.kind) {
    case Kind::id:
      return "[a-z0-9]+(-[a-z0-9]+)*";
    case Kind::date:
      return "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    case Kind::reference:
      return "[A-Za-z0-9][A-Za-z0-9._-]{0," + fixed(key.limits.high - 1, 0) + '}';
    case Kind::currency:
      return "[A-Z]{3}";
    case Kind::dose:
      return dose_pattern();
    default:
      return has_unit(key.kind) ? amount_pattern(key) : std::string(number);
  }
}

}  // namespace

std::string pattern_of(const Key& key) {
  const std::string unknown = key.has(flag::unknown_ok) ? "|\\?" : "";
  return "^(" + bare_pattern(key) + unknown + ")$";
}

}  // namespace loamsheet
