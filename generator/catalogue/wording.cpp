#include "catalogue/wording.h"

#include "base/text.h"
#include "catalogue/amounts.h"
#include "catalogue/language.h"

namespace loamsheet {
namespace {

template <class T>
struct KindOf;
template <>
struct KindOf<int> {
  static constexpr std::string_view name = "count";
};
template <>
struct KindOf<double> {
  static constexpr std::string_view name = "number";
};
template <>
struct KindOf<Millimetres> {
  static constexpr std::string_view name = "length";
};
template <>
struct KindOf<SquareMetres> {
  static constexpr std::string_view name = "area";
};
template <>
struct KindOf<Litres> {
  static constexpr std::string_view name = "volume";
};
template <>
struct KindOf<Kilograms> {
  static constexpr std::string_view name = "mass";
};
template <>
struct KindOf<Celsius> {
  static constexpr std::string_view name = "temperature";
};
template <>
struct KindOf<Fraction> {
  static constexpr std::string_view name = "share";
};
template <>
struct KindOf<Days> {
  static constexpr std::string_view name = "days";
};

struct Measured {
  std::string_view kind;
  Range<double> range;
};

struct Measure {
  Measured operator()(int n) const { return {KindOf<int>::name, {double(n), double(n)}}; }
  Measured operator()(double v) const { return {KindOf<double>::name, {v, v}}; }
  template <class U>
  Measured operator()(Amount<U> a) const {
    return {KindOf<Amount<U>>::name, {a.v, a.v}};
  }
  template <class U>
  Measured operator()(const Range<Amount<U>>& r) const {
    return {KindOf<Amount<U>>::name, {r.low.v, r.high.v}};
  }
  Measured operator()(const std::string&) const { return {}; }
  Measured operator()(Date) const { return {}; }
};

std::string of_system(UnitSystem units) {
  return units == UnitSystem::us ? "units.us." : "units.metric.";
}

// What a sentence about a date may say.
std::optional<std::string> part_of_date(Date date, std::string_view part, const Wording& words) {
  const std::chrono::year_month_day d{date.day};
  const auto month = std::to_string(static_cast<unsigned>(d.month()));
  if (part == "day") return std::to_string(static_cast<unsigned>(d.day()));
  if (part == "year") return std::to_string(static_cast<int>(d.year()));
  if (part == "iso") return iso(date);
  if (part == "month") return words.say("units.month-" + month);
  if (part == "short-month") return words.say("units.short-month-" + month);
  if (part == "weekday") return words.say("units.weekday-" + std::to_string(weekday(date) + 1));
  return std::nullopt;
}

// The text with each {slot} put through `fill`.
template <class Fill>
std::string fill_slots(std::string_view text, Fill fill) {
  std::string out;
  while (true) {
    const size_t open = text.find('{'), close = text.find('}', open);
    if (open == std::string_view::npos || close == std::string_view::npos) return out += text;
    out += text.substr(0, open);
    out += fill(text.substr(open + 1, close - open - 1));
    text.remove_prefix(close + 1);
  }
}

}  // namespace

Wording::Wording(std::map<std::string, std::string> sentences, UnitSystem units,
                 std::string language)
    : sentences_(std::move(sentences)), units_(units), language_(std::move(language)) {
  read_steps(of_system(units));
  read_steps("units.");
  const auto line = [&](const char* name) { return sentences_.find(name); };
  const auto decimal = line("units.decimal"), range = line("units.range"),
             is_signed = line("units.range-signed"), none = sentences_.end();
  if (decimal != none && range != none && is_signed != none) {
    numbers_ = NumberForm{decimal->second, range->second, is_signed->second};
  }
}

// A form that an earlier prefix has keeps its steps.
void Wording::read_steps(const std::string& prefix) {
  for (auto line = sentences_.lower_bound(prefix);
       line != sentences_.end() && line->first.starts_with(prefix); ++line) {
    if (auto steps = parse_steps(line->second)) {
      steps_.try_emplace(line->first.substr(prefix.size()), std::move(*steps));
    }
  }
}

bool Wording::knows(std::string_view name) const {
  return sentences_.find(std::string(name)) != sentences_.end();
}

std::string Wording::say(std::string_view name, const Args& args) const {
  const auto found = sentences_.find(std::string(name));
  if (found == sentences_.end()) throw no_line(name);
  return fill_slots(found->second, [&](std::string_view text) {
    if (auto words = slot(text, args)) return std::move(*words);
    throw unfilled(name, text);
  });
}

// The sentence belongs in the file of its name's beginning.
Lacking Wording::lack(std::string_view name, std::string message) const {
  const std::string file =
      "templates/" + language_ + '/' + std::string(name.substr(0, name.find('.'))) + ".yaml";
  return lacking(file, std::move(message));
}

Lacking Wording::no_line(std::string_view name) const {
  return lack(name, "has no '" + std::string(name) + "'");
}

Lacking Wording::unfilled(std::string_view name, std::string_view slot) const {
  return lack(name, "'" + std::string(name) + "' has a slot {" + std::string(slot) +
                        "} that nothing fills");
}

std::optional<std::string> Wording::slot(std::string_view text, const Args& args) const {
  const size_t colon = text.find(':');
  const std::string_view name = text.substr(0, colon);
  const std::string form(colon == std::string_view::npos ? "" : text.substr(colon + 1));
  for (const auto& [key, arg] : args) {
    if (key != name) continue;
    std::string out = written(arg, form);
    if (out.empty() && !form.empty()) break;
    return out;
  }
  return std::nullopt;
}

std::string Wording::amount(const Arg& arg, std::string_view form) const {
  return written(arg, std::string(form));
}

std::string Wording::written(Date date, const std::string& form) const {
  const std::string name = "date" + (form.empty() ? "" : '-' + form);
  for (const std::string& prefix : {of_system(units_), std::string("units.")}) {
    const auto line = sentences_.find(prefix + name);
    if (line == sentences_.end()) continue;
    return fill_slots(line->second, [&](std::string_view part) {
      if (auto words = part_of_date(date, part, *this)) return std::move(*words);
      throw unfilled(line->first, part);
    });
  }
  throw no_line("units." + name);
}

std::string Wording::written(const Arg& arg, const std::string& form) const {
  if (const auto* text = std::get_if<std::string>(&arg)) return *text;
  if (const auto* date = std::get_if<Date>(&arg)) return written(*date, form);
  const Measured measured = std::visit(Measure{}, arg);
  const std::string name = std::string(measured.kind) + (form.empty() ? "" : '-' + form);
  const auto steps = steps_.find(name);
  if (steps == steps_.end()) throw no_line("units." + name);
  if (!numbers_) throw no_line("units.decimal");
  return write_amount(measured.range, steps->second, *numbers_);
}

Outcome<Wording> read_wording(World& world, const std::string& language, UnitSystem units) {
  Sink sink;
  const auto files = read_language(world, language, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  std::map<std::string, std::string> sentences;
  for (const FlatFile& file : files) {
    for (const FlatLine& line : file.lines) sentences.emplace(line.name, line.value);
  }
  return {Wording(std::move(sentences), units, language), sink.take()};
}

}  // namespace loamsheet
