#include "catalogue/amounts.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <numeric>

#include "base/text.h"

namespace loamsheet {
namespace {

const std::string no_break = "\u00A0";

std::optional<double> number_in(std::string_view text) {
  double v = 0;
  const auto r = std::from_chars(text.data(), text.data() + text.size(), v);
  if (r.ec != std::errc() || r.ptr != text.data() + text.size()) return std::nullopt;
  return v;
}

// Takes "x1000", "+32", ".1", "=1" or "/8" into the step; false for a word of the unit.
bool take_token(std::string_view token, UnitStep& step) {
  const auto value = token.empty() ? std::nullopt : number_in(token.substr(1));
  if (!value) return false;
  switch (token[0]) {
    case 'x':
      step.factor = *value;
      return true;
    case '+':
      step.offset = *value;
      return true;
    case '.':
      step.decimals = static_cast<int>(*value);
      return true;
    case '=':
      step.decimals = static_cast<int>(*value), step.exact = true;
      return true;
    case '/':
      step.parts = static_cast<int>(*value);
      return true;
    default:
      return false;
  }
}

std::optional<UnitStep> parse_step(std::string_view text) {
  UnitStep step;
  constexpr std::string_view below = "below ";
  if (text.starts_with(below)) {
    const size_t colon = text.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    step.below = number_in(text.substr(below.size(), colon - below.size()));
    if (!step.below) return std::nullopt;
    text.remove_prefix(colon + 1);
  }
  for (const auto& token : split(trimmed(text), ' ')) {
    if (take_token(token, step)) continue;
    step.unit += (step.unit.empty() ? "" : no_break) + token;
  }
  return step;
}

std::string without_zeros(std::string text) {
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string with_parts(double v, int parts) {
  const long n = std::lround(std::fabs(v) * parts);
  const long whole = n / parts, rest = n % parts, common = std::gcd(rest, long{parts});
  std::string out = v < 0 && n > 0 ? "\u2212" : "";
  if (whole > 0 || rest == 0) out += std::to_string(whole);
  if (rest == 0) return out;
  if (whole > 0) out += no_break;
  return out + std::to_string(rest / common) + '/' + std::to_string(parts / common);
}

std::string digits(double kept, const UnitStep& step, const NumberForm& form) {
  const double v = kept * step.factor + step.offset;
  if (step.parts > 0) return with_parts(v, step.parts);
  std::string text = fixed(v, step.decimals);
  if (!step.exact) text = without_zeros(std::move(text));
  if (text.starts_with('-')) text.replace(0, 1, "\u2212");
  if (const auto dot = text.find('.'); dot != std::string::npos) text.replace(dot, 1, form.decimal);
  return text;
}

// The value as it will be read, so that 0.9996 L becomes 1 L and not 1000 mL.
double as_read(double kept, const UnitStep& step) {
  const double grain = step.parts > 0 ? 1.0 / step.parts : std::pow(10.0, -step.decimals);
  const double v = kept * step.factor + step.offset;
  return (std::round(v / grain) * grain - step.offset) / step.factor;
}

const UnitStep& step_for(double kept, const std::vector<UnitStep>& steps) {
  for (const UnitStep& step : steps) {
    if (!step.below || std::fabs(as_read(kept, step)) < *step.below * (1 - 1e-9)) return step;
  }
  return steps.back();
}

std::string filled(std::string form, const std::string& low, const std::string& high) {
  const auto put = [&form](std::string_view slot, const std::string& text) {
    if (const auto at = form.find(slot); at != std::string::npos) {
      form.replace(at, slot.size(), text);
    }
  };
  put("{low}", low);
  put("{high}", high);
  return form;
}

}  // namespace

std::optional<std::vector<UnitStep>> parse_steps(std::string_view line) {
  std::vector<UnitStep> steps;
  for (const auto& part : split(line, ';')) {
    auto step = parse_step(trimmed(part));
    if (!step) return std::nullopt;
    steps.push_back(std::move(*step));
  }
  return steps;
}

std::string write_amount(Range<double> r, const std::vector<UnitStep>& steps,
                         const NumberForm& form) {
  const UnitStep& step = step_for(std::max(std::fabs(r.low), std::fabs(r.high)), steps);
  const std::string low = digits(r.low, step, form), high = digits(r.high, step, form);
  const bool is_signed = low.starts_with("\u2212") || high.starts_with("\u2212");
  const std::string number =
      low == high ? low : filled(is_signed ? form.signed_range : form.range, low, high);
  return step.unit.empty() ? number : number + no_break + step.unit;
}

}  // namespace loamsheet
