#include "read/unit.h"

#include <array>
#include <cmath>

#include "base/text.h"

namespace loamsheet {
namespace {

// Bases, all exact: inch 25.4 mm, pound 0.45359237 kg, US gallon 231 in3, US bushel 2150.42 in3
// (NIST Handbook 44, Appendix C; NIST SP 811, Appendix B). The first row of a kind is its usual
// unit.
constexpr double inch3 = 16387.064;              // mm3
constexpr double us_gallon = 3.785411784;        // L
constexpr double us_dry_quart = 1.101220942715;  // L, 2150.42 / 32 in3
constexpr double us_bushel = 35.23907016688;     // L
constexpr double pound = 0.45359237;             // kg
constexpr double foot3 = 28.316846592;           // L

constexpr std::array units{
    Unit{"cm", Kind::length, 10},
    Unit{"mm", Kind::length},
    Unit{"m", Kind::length, 1000},
    Unit{"in", Kind::length, 25.4},
    Unit{"\"", Kind::length, 25.4},
    Unit{"inch", Kind::length, 25.4},
    Unit{"inches", Kind::length, 25.4},
    Unit{"ft", Kind::length, 304.8},
    Unit{"'", Kind::length, 304.8},
    Unit{"cm2", Kind::area, 1, 1e4},
    Unit{"mm2", Kind::area, 1, 1e6},
    Unit{"m2", Kind::area},
    Unit{"in2", Kind::area, 645.16, 1e6},
    Unit{"sq in", Kind::area, 645.16, 1e6},
    Unit{"ft2", Kind::area, 0.09290304},
    Unit{"sq ft", Kind::area, 0.09290304},
    Unit{"L", Kind::volume},
    Unit{"l", Kind::volume},
    Unit{"mL", Kind::volume, 1, 1e3},
    Unit{"ml", Kind::volume, 1, 1e3},
    Unit{"cm3", Kind::volume, 1, 1e3},
    Unit{"m3", Kind::volume, 1e3},
    Unit{"US fl oz", Kind::volume, us_gallon, 128},
    Unit{"US cup", Kind::volume, us_gallon, 16},
    Unit{"liq qt", Kind::volume, us_gallon, 4},
    Unit{"dry qt", Kind::volume, us_dry_quart},
    Unit{"US gal", Kind::volume, us_gallon},
    Unit{"US bushel", Kind::volume, us_bushel},
    Unit{"in3", Kind::volume, inch3, 1e6},
    Unit{"cu in", Kind::volume, inch3, 1e6},
    Unit{"ft3", Kind::volume, foot3},
    Unit{"cu ft", Kind::volume, foot3},
    Unit{"kg", Kind::mass},
    Unit{"g", Kind::mass, 1, 1e3},
    Unit{"oz", Kind::mass, pound, 16},
    Unit{"lb", Kind::mass, pound},
    Unit{"lbs", Kind::mass, pound},
    Unit{"°C", Kind::temperature},
    Unit{"C", Kind::temperature},
    Unit{"°F", Kind::temperature, 5, 9, 32},
    Unit{"F", Kind::temperature, 5, 9, 32},
    Unit{"%", Kind::share, 1, 100},
    Unit{"°", Kind::angle},
    Unit{"deg", Kind::angle},
    Unit{"W", Kind::power},
    Unit{"kW", Kind::power, 1e3},
    Unit{"lm", Kind::flux},
    Unit{"h", Kind::hours},
    Unit{"min", Kind::hours, 1, 60},
    Unit{"d", Kind::days},
    Unit{"day", Kind::days},
    Unit{"days", Kind::days},
    Unit{"week", Kind::days, 7},
    Unit{"weeks", Kind::days, 7},
    Unit{"mL/min", Kind::flow},
    Unit{"ml/min", Kind::flow},
    Unit{"L/min", Kind::flow, 1e3},
    Unit{"L/h", Kind::flow, 1e3, 60},
    Unit{"US fl oz/min", Kind::flow, us_gallon * 1e3, 128},
    Unit{"US gal/h", Kind::flow, us_gallon * 1e3, 60},
    Unit{"mL/day", Kind::daily},
    Unit{"ml/day", Kind::daily},
    Unit{"mL/d", Kind::daily},
    Unit{"L/day", Kind::daily, 1e3},
    Unit{"L/d", Kind::daily, 1e3},
    Unit{"US fl oz/day", Kind::daily, us_gallon * 1e3, 128},
    Unit{"kg/m3", Kind::density},
    Unit{"g/L", Kind::density},
    Unit{"g/cm3", Kind::density, 1e3},
    Unit{"lb/ft3", Kind::density, pound * 1e3, foot3},
    Unit{"g/m2", Kind::areal, 1, 1e3},
    Unit{"kg/m2", Kind::areal},
    Unit{"/kWh", Kind::per_energy},
    Unit{"/h", Kind::hourly},
    Unit{"/hour", Kind::hourly},
};

constexpr std::array vague{
    Vague{"qt", "dry qt|liq qt"},     Vague{"gal", "US gal"},    Vague{"fl oz", "US fl oz"},
    Vague{"cup", "US cup"},           Vague{"cups", "US cup"},   Vague{"quart", "dry qt|liq qt"},
    Vague{"quarts", "dry qt|liq qt"}, Vague{"gallon", "US gal"}, Vague{"gallons", "US gal"},
    Vague{"bushel", "US bushel"},
};

std::string_view handy_unit(Kind kind, double v) {
  const double size = std::fabs(v);
  switch (kind) {
    case Kind::length:
      return size < 10 ? "mm" : size < 1000 ? "cm" : "m";
    case Kind::area:
      return size < 1e-4 ? "mm2" : size < 0.1 ? "cm2" : "m2";
    case Kind::volume:
      return size < 0.1 ? "mL" : "L";
    case Kind::mass:
      return size < 0.1 ? "g" : "kg";
    case Kind::days:
      return "d";
    case Kind::flow:
      return "mL/min";
    case Kind::daily:
      return "mL/day";
    case Kind::hours:
      return size < 1 && size > 0 ? "min" : "h";
    default:
      break;
  }
  for (const auto& u : units) {
    if (u.kind == kind) return u.name;
  }
  return "";
}

}  // namespace

double kept(const Unit& u, double typed) {
  return rounded((typed - u.shift) * u.top / u.bottom, 15);
}

const Unit* find_unit(Kind kind, std::string_view name) {
  const Unit* other = nullptr;
  for (const auto& u : units) {
    if (u.name != name) continue;
    if (u.kind == kind) return &u;
    if (!other) other = &u;
  }
  return other;
}

const Vague* vague_unit(std::string_view name) {
  for (const auto& v : vague) {
    if (v.name == name) return &v;
  }
  return nullptr;
}

std::vector<std::string> unit_names(Kind kind) {
  std::vector<std::string> out;
  for (const auto& u : units) {
    if (u.kind == kind) out.emplace_back(u.name);
  }
  return out;
}

std::string_view kind_words(Kind kind) {
  switch (kind) {
    case Kind::length:
      return "a length";
    case Kind::area:
      return "an area";
    case Kind::volume:
      return "a volume";
    case Kind::mass:
      return "a mass";
    case Kind::temperature:
      return "a temperature";
    case Kind::share:
      return "a share in per cent";
    case Kind::angle:
      return "an angle";
    case Kind::power:
      return "a power";
    case Kind::flux:
      return "a luminous flux";
    case Kind::hours:
      return "a time in hours";
    case Kind::days:
      return "a time in days";
    case Kind::flow:
      return "a flow";
    case Kind::daily:
      return "an amount per day";
    case Kind::density:
      return "a density";
    case Kind::dose:
      return "a dose";
    case Kind::per_energy:
      return "a price per kWh";
    case Kind::hourly:
      return "a rate per hour";
    default:
      return "a number";
  }
}

std::string quantity_text(Kind kind, double v) {
  if (kind == Kind::dose) return significant(v, 15) + " g per L";
  const std::string_view name = handy_unit(kind, v);
  if (name.empty()) return significant(v, 15);
  const Unit& u = *find_unit(kind, name);
  const std::string number = significant(rounded(v * u.bottom / u.top + u.shift, 15), 15);
  return number + (name == "°" || name[0] == '/' ? "" : " ") + std::string(name);
}

}  // namespace loamsheet
