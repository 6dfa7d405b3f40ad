#include "read/quantity.h"

#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "read/number.h"
#include "read/scalar_end.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

// A single amount as it was read, and how it was written.
struct Single {
  Reading reading;
  double value = 0;
  std::string number, unit;  // the two halves, normalised
};

Reading wrong(std::string message, std::string hint = "", std::string fix = "") {
  return {{}, std::move(message), std::move(hint), std::move(fix)};
}

std::string quote(std::string_view word) {
  return "'" + shortened(word) + "'";
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  for (size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
  return text;
}

// "mL per day" and "mL / day" are "mL/day".
std::string unit_spelling(std::string_view typed) {
  std::string unit = ' ' + std::string(typed);
  unit = replaced(replaced(unit, " per ", "/"), " /", "/");
  return trimmed(replaced(unit, "/ ", "/"));
}

// The unit that the example of a key shows, for a number typed without one.
std::string usual_unit(const Key& key) {
  const std::string example = normalised(key.example);
  const Number n = parse_number(example);
  const std::string rest = trimmed(example.substr(std::min(n.length, example.size())));
  if (n.fault == Number::Fault::none && find_unit(key.kind, unit_spelling(rest))) return rest;
  const auto names = unit_names(key.kind);
  return names.empty() ? "" : names.front();
}

std::string with_unit(std::string_view number, std::string_view unit) {
  return std::string(number) + (unit == "°" ? "" : " ") + std::string(unit);
}

bool within(const Limits& limits, double value) {
  const double slack = 1e-9 * std::fabs(limits.high - limits.low);
  const bool open = limits.low == 0 && limits.high == 0;
  return open || (value >= limits.low - slack && value <= limits.high + slack);
}

// The usual unit, or else the first with which the number is allowed: a height of 600 is in mm.
std::string likely_unit(const Key& key, double number) {
  const std::string usual = usual_unit(key);
  auto names = unit_names(key.kind);
  names.insert(names.begin(), usual);
  for (const auto& name : names) {
    const Unit* unit = find_unit(key.kind, unit_spelling(name));
    if (unit && within(key.limits, kept(*unit, number))) return name;
  }
  return usual;
}

Reading missing_unit(const Key& key, std::string_view number) {
  const std::string words = quote(number) + " has no unit";
  if (key.kind == Kind::dose) return wrong(words, "write it like '15 g per 4 L'");
  if (key.kind == Kind::share && number.find('.') != std::string_view::npos) {
    return wrong(words, "write it in per cent, such as '50 %' for a half");
  }
  const std::string fix = with_unit(number, likely_unit(key, parse_number(number).value));
  return wrong(words, "write '" + fix + "' if that is what is meant", fix);
}

Reading vague_volume(const Vague& vague, std::string_view number) {
  const auto choices = split(vague.instead, '|');
  const std::string words = "'" + std::string(vague.name) + "' could mean several measures";
  if (choices.size() == 1) {
    const std::string fix = with_unit(number, choices[0]);
    return wrong(words, "write '" + fix + "'", fix);
  }
  return wrong(words, "write '" + with_unit(number, choices[0]) +
                          "' (1.101 L each, as potting "
                          "mix is sold) or '" +
                          with_unit(number, choices[1]) + "' (0.946 L each)");
}

// "CM", "cn" and "Lm" are meant, "qt" is not "ft".
bool looks_like(std::string_view typed, std::string_view name) {
  if (typed.empty() || typed.size() > 12) return false;
  const auto small = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c | 0x20) : c; };
  const bool same = std::equal(typed.begin(), typed.end(), name.begin(), name.end(),
                               [&](char a, char b) { return small(a) == small(b); });
  return same || (name.size() > 1 && typed[0] == name[0] && edit_distance(name, typed) <= 1);
}

Reading unknown_unit(Kind kind, std::string_view number, std::string_view unit) {
  if (kind == Kind::volume) {
    if (const Vague* v = vague_unit(unit)) return vague_volume(*v, number);
  }
  if (vague_unit(unit)) return wrong(quote(unit) + " is a measure of volume");
  const auto known = unit_names(kind);
  const std::string words = quote(unit) + " is not a unit of " +
                            std::string(kind_words(kind).substr(kind_words(kind).find(' ') + 1));
  for (const auto& name : known) {
    if (looks_like(unit, name)) {
      const std::string fix = with_unit(number, name);
      return wrong(words, "did you mean '" + fix + "'?", fix);
    }
  }
  return wrong(words, "units that are read here: " + join(known, ", "));
}

Single failed(Reading r) {
  return {std::move(r), 0, "", ""};
}

Single number_fault(const Number& n, std::string_view text) {
  const std::string rest(text.substr(std::min(n.length, text.size())));
  const std::string typed = shortened(text);
  if (n.mended.empty()) {
    const bool marks = n.fault == Number::Fault::thousands;
    return failed(
        wrong(fault_words(n, typed),
              marks ? "write the digits without marks, and a point before decimals" : ""));
  }
  const std::string fix = n.mended + rest;
  return failed(wrong(fault_words(n, typed), "write '" + fix + "'", fix));
}

// A dose is a mass in a volume of water: "15 g per 4 L".
Single read_dose(const Key& key, std::string_view text);

// One amount; `unit_after` is the unit of the range's other end, for "21–24 °C".
Single read_single(const Key& key, std::string_view text, std::string_view unit_after) {
  const Number n = parse_number(text);
  if (n.fault != Number::Fault::none) return number_fault(n, text);
  if (key.kind == Kind::dose) return read_dose(key, text);
  const std::string number(text.substr(0, n.length));
  std::string unit = unit_spelling(text.substr(n.length));
  if (unit.empty()) unit = unit_after;
  if (!has_unit(key.kind)) {
    if (unit.empty()) return {{}, n.value, number, ""};
    return failed(wrong(quote(text) + " has a unit", "write '" + number + "'", number));
  }
  const bool bare_fraction = key.kind == Kind::share && number.find('/') != std::string::npos;
  if (unit.empty() && bare_fraction) return {{}, rounded(n.value, 15), number, ""};
  if (unit.empty()) return failed(missing_unit(key, number));
  const Unit* u = find_unit(key.kind, unit);
  if (!u) return failed(unknown_unit(key.kind, number, unit));
  if (u->kind != key.kind) {
    return failed(wrong(quote(text) + " is " + std::string(kind_words(u->kind)) + ", not " +
                        std::string(kind_words(key.kind))));
  }
  return {{}, kept(*u, n.value), number, unit};
}

Single read_dose(const Key& key, std::string_view text) {
  const std::string spelled = unit_spelling(text);
  const size_t number_end = parse_number(text).length;
  const size_t per = spelled.find('/', number_end);
  if (per == std::string::npos) return failed(missing_unit(key, text));
  Key mass = key, volume = key;
  mass.kind = Kind::mass;
  volume.kind = Kind::volume;
  std::string below = spelled.substr(per + 1);
  if (parse_number(below).fault == Number::Fault::not_a_number) below = "1 " + below;
  const Single top = read_single(mass, spelled.substr(0, per), "");
  if (!top.reading.ok()) return failed(wrong(top.reading.message, top.reading.hint));
  const Single bottom = read_single(volume, below, "");
  if (!bottom.reading.ok()) return failed(wrong(bottom.reading.message, bottom.reading.hint));
  if (bottom.value <= 0) return failed(wrong(quote(text) + " is a dose in no water"));
  return {{}, rounded(top.value * 1000 / bottom.value, 15), std::string(text), ""};
}

Reading held(const Key& key, std::string_view typed, double value) {
  if (within(key.limits, value)) return {};
  if (value < key.limits.low) {
    return wrong(quote(typed) + " is less than the least that is allowed, " +
                 quantity_text(key.kind, key.limits.low));
  }
  return wrong(quote(typed) + " is more than the most that is allowed, " +
               quantity_text(key.kind, key.limits.high));
}

// Where the dash of a range stands: between two amounts, never the sign of one.
struct Dash {
  size_t at = std::string::npos, length = 0;
};

bool number_starts(std::string_view text) {
  const size_t at = text.find_first_not_of(' ');
  if (at == std::string_view::npos) return false;
  const char c = text[at];
  return (c >= '0' && c <= '9') || c == '-' || c == '.';
}

Dash find_dash(std::string_view text) {
  if (const size_t at = text.find("–", 1); at != std::string_view::npos) {
    return {at, std::string_view("–").size()};
  }
  for (size_t at = 1; at < text.size(); ++at) {
    if (text[at] == '-' && number_starts(text.substr(at + 1)) && text[at - 1] != '/')
      return {at, 1};
  }
  return {};
}

std::string typed_half(const Single& s, std::string_view unit) {
  return unit.empty() ? s.number : with_unit(s.number, unit);
}

// Both ends are known to read; the text puts them together as the user would type them.
Reading range_of(const Key& key, const Single& low, const Single& high) {
  for (const Single* end : {&low, &high}) {
    Reading r = held(key, typed_half(*end, end->unit), end->value);
    if (!r.ok()) return r;
  }
  if (low.value > high.value) {
    const std::string fix = low.unit == high.unit
                                ? with_unit(high.number + "–" + low.number, low.unit)
                                : typed_half(high, high.unit) + " – " + typed_half(low, low.unit);
    return wrong("the range runs from high to low", "write '" + trimmed(fix) + "'", trimmed(fix));
  }
  return {Range<double>{low.value, high.value}, "", "", ""};
}

// The unit at the end of an amount's text, as it was typed.
std::string unit_of(std::string_view text) {
  const Number n = parse_number(text);
  return n.fault == Number::Fault::none ? unit_spelling(text.substr(n.length)) : "";
}

Reading read_ends(const Key& key, std::string_view low, std::string_view high) {
  if (!key.has(flag::range_ok)) {
    return wrong("one value is wanted here, not a range", "keep one of the two ends");
  }
  const Single second = read_single(key, high, "");
  const Single first = read_single(key, low, unit_of(high));
  for (const Single* end : {&second, &first}) {
    if (end->reading.ok()) continue;
    Reading r = end->reading;
    const bool is_first = end == &first;
    if (!r.fix.empty()) {
      r.fix = is_first ? r.fix + " – " + std::string(high) : std::string(low) + "–" + r.fix;
      r.hint = "write '" + r.fix + "'";
    }
    return r;
  }
  return range_of(key, first, second);
}

Reading read_once(const Key& key, const std::string& text) {
  const Dash dash = find_dash(text);
  if (dash.at != std::string::npos) {
    return read_ends(key, trimmed(text.substr(0, dash.at)),
                     trimmed(text.substr(dash.at + dash.length)));
  }
  const Single one = read_single(key, text, "");
  if (!one.reading.ok()) return one.reading;
  const size_t digits = text.starts_with('-') ? 1 : 0;
  if (key.kind == Kind::integer && text.find_first_not_of("0123456789", digits) != text.npos) {
    return wrong(quote(text) + " is not a whole number");
  }
  Reading r = held(key, text, one.value);
  if (r.ok()) r.value = one.value;
  return r;
}

// A fix that does not read yet is mended again ("12,5" -> "12.5" -> "12.5 cm"), or is no fix.
Reading proved(const Key& key, Reading r) {
  constexpr int rounds = 3;
  for (int i = 0; i < rounds && !r.fix.empty(); ++i) {
    const Reading next = read_once(key, normalised(r.fix));
    const bool write = r.hint.starts_with("write '");
    if (next.ok()) return r;
    r.fix = next.fix;
    if (write) r.hint = r.fix.empty() ? "" : "write '" + r.fix + "'";
  }
  r.fix.clear();
  return r;
}

}  // namespace

Reading read_quantity(const Key& key, std::string_view typed) {
  return proved(key, read_once(key, normalised(typed)));
}

Reading read_range(const Key& key, std::string_view low, std::string_view high) {
  return proved(key, read_ends(key, normalised(low), normalised(high)));
}

}  // namespace loamsheet
