#include "base/text.h"

#include <algorithm>
#include <array>
#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numeric>

namespace loamsheet {
namespace {

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

std::string written(double v, std::chars_format format, int precision) {
  std::array<char, 400> buf{};
  auto r = std::to_chars(buf.data(), buf.data() + buf.size(), v, format, precision);
  return {buf.data(), r.ptr};
}

bool is_zero(std::string_view digits) {
  return digits.find_first_not_of("-0.") == std::string_view::npos;
}

std::string without_trailing_zeros(std::string s) {
  if (s.find('.') == std::string::npos) return s;
  s.erase(s.find_last_not_of('0') + 1);
  if (s.back() == '.') s.pop_back();
  return s;
}

// Length of the UTF-8 sequence of several bytes that starts with `lead`, its smallest code point; 0
// if none does.
struct Sequence {
  int length;
  char32_t bits, smallest;
};

Sequence sequence_of(unsigned char lead) {
  if (lead >= 0xC2 && lead < 0xE0) return {2, static_cast<char32_t>(lead & 0x1F), 0x80};
  if (lead >= 0xE0 && lead < 0xF0) return {3, static_cast<char32_t>(lead & 0x0F), 0x800};
  if (lead >= 0xF0 && lead < 0xF5) return {4, static_cast<char32_t>(lead & 0x07), 0x10000};
  return {0, 0, 0};
}

std::pair<char32_t, int> sequence(std::string_view bytes) {
  const Sequence s = sequence_of(static_cast<unsigned char>(bytes[0]));
  if (s.length == 0 || static_cast<size_t>(s.length) > bytes.size()) return {0, 0};
  char32_t c = s.bits;
  for (int i = 1; i < s.length; ++i) {
    if (!continues(bytes[static_cast<size_t>(i)])) return {0, 0};
    c = (c << 6) | (static_cast<unsigned char>(bytes[static_cast<size_t>(i)]) & 0x3F);
  }
  const bool bad = c < s.smallest || c > 0x10FFFF || (c >= 0xD800 && c < 0xE000);
  return bad ? std::pair<char32_t, int>{0, 0} : std::pair<char32_t, int>{c, s.length};
}

// The code point at the front of `bytes` and its length; length 0 when it is not UTF-8.
std::pair<char32_t, int> front(std::string_view bytes) {
  const auto lead = static_cast<unsigned char>(bytes[0]);
  return lead < 0x80 ? std::pair<char32_t, int>{lead, 1} : sequence(bytes);
}

// The bytes of the code point at the front; an invalid byte stands for itself.
size_t front_length(std::string_view bytes) {
  return static_cast<size_t>(std::max(1, front(bytes).second));
}

}  // namespace

std::string fixed(double v, int decimals) {
  std::string s = written(v, std::chars_format::fixed, decimals);
  return s[0] == '-' && is_zero(s) ? s.substr(1) : s;
}

double rounded(double v, int digits) {
  if (v == 0 || !std::isfinite(v)) return v;
  const std::string s = written(v, std::chars_format::scientific, digits - 1);
  double out = 0;
  std::from_chars(s.data(), s.data() + s.size(), out);
  return out;
}

std::string significant(double v, int digits) {
  const double r = rounded(v, digits);
  if (!std::isfinite(r)) return written(r, std::chars_format::general, digits);
  if (r == 0) return "0";
  const int magnitude = static_cast<int>(std::floor(std::log10(std::fabs(r))));
  if (magnitude < -6 || magnitude > 15) {
    return written(r, std::chars_format::scientific, digits - 1);
  }
  return without_trailing_zeros(fixed(r, std::max(0, digits - 1 - magnitude)));
}

int code_points(std::string_view utf8) {
  int count = 0;
  for (; !utf8.empty(); utf8.remove_prefix(front_length(utf8))) ++count;
  return count;
}

std::string slice(std::string_view utf8, int first, int count) {
  std::string out;
  for (int at = 0; !utf8.empty() && at < first + count; ++at) {
    const size_t length = front_length(utf8);
    if (at >= first) out += utf8.substr(0, length);
    utf8.remove_prefix(length);
  }
  return out;
}

std::string visible(std::string_view utf8) {
  std::string out(utf8);
  std::replace_if(
      out.begin(), out.end(),
      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, ' ');
  return out;
}

std::optional<size_t> invalid_utf8(std::string_view bytes) {
  for (size_t at = 0; at < bytes.size();) {
    const int length = front(bytes.substr(at)).second;
    if (length == 0) return at;
    at += static_cast<size_t>(length);
  }
  return std::nullopt;
}

std::string utf8(char32_t c) {
  std::string out;
  if (c < 0x80) return {static_cast<char>(c)};
  if (c < 0x800) {
    out += static_cast<char>(0xC0 | (c >> 6));
  } else if (c < 0x10000) {
    out += static_cast<char>(0xE0 | (c >> 12));
    out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
  } else {
    out += static_cast<char>(0xF0 | (c >> 18));
    out += static_cast<char>(0x80 | ((c >> 12) & 0x3F));
    out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
  }
  return out + static_cast<char>(0x80 | (c & 0x3F));
}

std::u32string decoded(std::string_view text) {
  std::u32string out;
  out.reserve(text.size());
  while (!text.empty()) {
    const auto [c, length] = front(text);
    out += length == 0 ? U'\uFFFD' : c;
    text.remove_prefix(static_cast<size_t>(std::max(1, length)));
  }
  return out;
}

int edit_distance(std::string_view left, std::string_view right) {
  const std::u32string a = decoded(left), b = decoded(right);
  const size_t columns = b.size() + 1;
  std::vector<int> before(columns), last(columns), now(columns);
  std::iota(last.begin(), last.end(), 0);
  for (size_t i = 1; i <= a.size(); ++i) {
    now[0] = static_cast<int>(i);
    for (size_t j = 1; j <= b.size(); ++j) {
      const int change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, change});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) now[j] = std::min(now[j], before[j - 2] + 1);
    }
    std::swap(before, last);
    std::swap(last, now);
  }
  return last[b.size()];
}

namespace {

// The ASCII letters of a word, as bits. A letter of one word that the other has not is a step
// between them at least; letters that share a bit are only counted less often.
uint64_t ascii_letters(std::string_view word) {
  uint64_t bits = 0;
  for (const char c : word) {
    if (static_cast<unsigned char>(c) < 0x80) bits |= uint64_t{1} << (c % 64);
  }
  return bits;
}

}  // namespace

std::optional<std::string> closest(std::string_view typed, std::span<const std::string> known) {
  const std::string* best = nullptr;
  const int length = code_points(typed);
  const uint64_t letters = ascii_letters(typed);
  int limit = std::min({3, 1 + length / 4, length - 1});  // never a word with nothing in common
  for (const auto& k : known) {
    // Each letter more or less is a step.
    if (std::abs(code_points(k) - length) > limit) continue;
    if (std::popcount(letters & ~ascii_letters(k)) > limit) continue;
    const int d = edit_distance(typed, k);
    if (d < limit || (d == limit && !best)) {
      best = &k;
      limit = d;
    }
  }
  return best ? std::optional(*best) : std::nullopt;
}

std::vector<std::string> split(std::string_view text, char at) {
  std::vector<std::string> out(1);
  for (char c : text) {
    if (c == at) {
      out.emplace_back();
    } else {
      out.back() += c;
    }
  }
  return out;
}

std::string join(std::span<const std::string> parts, std::string_view between) {
  std::string out;
  for (size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) out += between;
    out += parts[i];
  }
  return out;
}

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return "";
  return std::string(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
}

}  // namespace loamsheet
