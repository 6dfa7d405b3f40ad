#include "read/leaf.h"

#include <algorithm>
#include <charconv>

#include "base/text.h"
#include "read/scalar_end.h"

namespace loamsheet {
namespace {

constexpr int longest_text = 200;

Reading wrong(std::string message, std::string hint = "", std::string fix = "") {
  return {{}, std::move(message), std::move(hint), std::move(fix)};
}

Reading right(Leaf value) {
  return {std::move(value), "", "", ""};
}

std::string quote(std::string_view word) {
  return "'" + shortened(word) + "'";
}

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
char small(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string in_small(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), small);
  return out;
}

Reading read_text(const Key& key, const std::string& text) {
  if (trimmed(text).empty()) return wrong("the text is empty");
  const int most = key.limits.high > 0 ? static_cast<int>(key.limits.high) : longest_text;
  if (std::ssize(text) > most && code_points(text) > most) {
    return wrong("the text is longer than " + std::to_string(most) + " characters");
  }
  if (text.find('\n') != std::string::npos) return wrong("the text has several lines");
  return right(text);
}

Reading read_id(const std::string& text) {
  if (is_id(text)) return right(text);
  const std::string id = as_id(text);
  if (id.empty()) return wrong(quote(text) + " is not a name in small letters with hyphens");
  return wrong(quote(text) + " is not a name in small letters with hyphens", "write '" + id + "'",
               id);
}

Reading read_choice(const Key& key, const std::string& text) {
  const auto choices = split(key.choices, '|');
  if (std::find(choices.begin(), choices.end(), text) != choices.end()) return right(text);
  const std::string message = quote(text) + " is not one of the choices";
  for (const auto& c : choices) {
    const bool same = in_small(c) == in_small(text) || c == as_id(text);
    if (same) return wrong(message, "did you mean '" + c + "'?", c);
  }
  const auto near = closest(shortened(text), choices);
  if (!near) return wrong(message);
  return wrong(message, "did you mean '" + *near + "'?", *near);
}

Reading read_yes_no(const std::string& text) {
  const std::string word = in_small(text);
  if (text == "yes" || word == "true") return right(true);
  if (text == "no" || word == "false") return right(false);
  const bool yes = word == "yes" || word == "y" || word == "on";
  const bool no = word == "no" || word == "n" || word == "off" || word == "none";
  const std::string fix = yes ? "yes" : no ? "no" : "";
  return wrong(quote(text) + " is neither yes nor no", fix.empty() ? "" : "write '" + fix + "'",
               fix);
}

std::string padded(const std::string& digits) {
  return std::string(digits.size() < 2 ? 1 : 0, '0') + digits;
}

// "2026/3/7" and "2026.3.7" can only be meant one way; "7.3.2026" cannot be told from "3/7/2026".
std::string as_date(std::string text) {
  for (char& c : text) c = c == '/' || c == '.' ? '-' : c;
  const auto parts = split(text, '-');
  if (parts.size() != 3) return "";
  return parts[0] + '-' + padded(parts[1]) + '-' + padded(parts[2]);
}

Reading read_date(const std::string& text) {
  if (const auto date = parse_date(text)) return right(*date);
  const std::string fix = as_date(text);
  if (parse_date(fix)) {
    return wrong(quote(text) + " is not written as year-month-day", "write '" + fix + "'", fix);
  }
  const bool form = text.size() == 10 && text[4] == '-' && text[7] == '-';
  return wrong(quote(text) + (form ? " is not a day of the calendar" : " is not a date"));
}

Reading read_reference(const Key& key, const std::string& text) {
  const bool letters = std::all_of(text.begin(), text.end(), [](char c) {
    return is_letter(c) || is_digit(c) || c == '.' || c == '_' || c == '-';
  });
  const bool start = !text.empty() && (is_letter(text[0]) || is_digit(text[0]));
  if (!letters) {
    return wrong(quote(text) + " holds characters that a file name should not have");
  }
  if (!start) return wrong(quote(text) + " does not start with a letter or digit");
  if (text.size() > static_cast<size_t>(key.limits.high))
    return wrong(quote(text) + " is too long");
  return right(text);
}

Reading read_currency(const std::string& text) {
  std::string capitals = text;
  for (char& c : capitals) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  const bool code = text.size() == 3 && std::all_of(text.begin(), text.end(), is_letter);
  if (code && capitals == text) return right(text);
  if (code) return wrong(quote(text) + " is not in capitals", "write '" + capitals + "'", capitals);
  return wrong(quote(text) + " is not the code of a currency");
}

}  // namespace

bool is_id(std::string_view text) {
  if (text.empty() || text.front() == '-' || text.back() == '-') return false;
  if (text.find("--") != std::string_view::npos) return false;
  return std::all_of(text.begin(), text.end(),
                     [](char c) { return (c >= 'a' && c <= 'z') || is_digit(c) || c == '-'; });
}

std::string as_id(std::string_view text) {
  std::string id = in_small(text);
  std::replace_if(
      id.begin(), id.end(), [](char c) { return c == ' ' || c == '_'; }, '-');
  return is_id(id) ? id : "";
}

Reading read_leaf(const Key& key, const std::string& text, bool quoted) {
  if (text == "?" && key.has(flag::unknown_ok)) return right(Unknown{});
  if (text == "?" && !quoted) {
    return wrong("'?' is not taken for this value", "no plan can be made without it");
  }
  switch (key.kind) {
    case Kind::text:
      return read_text(key, text);
    case Kind::id:
      return read_id(text);
    case Kind::choice:
      return read_choice(key, text);
    case Kind::yes_no:
      return read_yes_no(text);
    case Kind::date:
      return read_date(text);
    case Kind::reference:
      return read_reference(key, text);
    case Kind::currency:
      return read_currency(text);
    default:
      return read_quantity(key, text);
  }
}

}  // namespace loamsheet
