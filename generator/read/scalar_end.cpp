#include "read/scalar_end.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr std::string_view blanks = " \t\r\n";
constexpr int longest_word = 40;

size_t quoted_end(std::string_view text, size_t begin) {
  const char quote = text[begin];
  for (size_t at = begin + 1; at < text.size(); ++at) {
    if (quote == '"' && text[at] == '\\') {
      ++at;
    } else if (text[at] == quote) {
      const bool doubled = quote == '\'' && at + 1 < text.size() && text[at + 1] == quote;
      if (!doubled) return at + 1;
      ++at;
    }
  }
  return text.size();
}

// A plain scalar holds no escapes: only its blanks may differ from what was read.
size_t plain_end(std::string_view text, size_t begin, std::string_view value) {
  size_t end = begin, at = 0;
  while ((at = value.find_first_not_of(blanks, at)) != std::string_view::npos) {
    const size_t stop = std::min(value.find_first_of(blanks, at), value.size());
    end = std::min(text.find_first_not_of(blanks, end), text.size());
    end = std::min(end + (stop - at), text.size());
    at = stop;
  }
  return end;
}

bool value_may_start_after(std::string_view before) {
  const size_t last = before.find_last_not_of(" \t");
  if (last == std::string_view::npos) return false;
  const char c = before[last];
  const bool gap = last + 1 < before.size();
  return c == '[' || c == ',' || ((c == ':' || c == '-') && gap);
}

bool value_may_end_before(std::string_view after) {
  const size_t next = after.find_first_not_of(" \t");
  if (next == std::string_view::npos) return true;
  const char c = after[next];
  return c == '\n' || c == '\r' || c == ',' || c == ']' || c == '}' || (c == '#' && next > 0);
}

}  // namespace

ScalarExtent scalar_extent(std::string_view text, size_t begin, std::string_view value) {
  if (begin >= text.size()) return {text.size(), false};
  const char first = text[begin];
  if (first == '"' || first == '\'') return {quoted_end(text, begin), true};
  if (first == '|' || first == '>') return {begin + 1, true};
  return {plain_end(text, begin, value), false};
}

size_t brace_end(std::string_view text, size_t from) {
  for (size_t at = from; at < text.size(); ++at) {
    if (text[at] == ']' || text[at] == '}') return at + 1;
    if (text[at] == '#') at = std::min(text.find('\n', at), text.size() - 1);
  }
  return text.size();
}

size_t word_end(std::string_view text, size_t at) {
  return std::min(text.find_first_of(" \t\r\n,]}", at), text.size());
}

std::string mark_unknowns(std::string_view text) {
  std::string out(text);
  for (size_t at = text.find('?'); at != std::string_view::npos; at = text.find('?', at + 1)) {
    const bool lone =
        value_may_start_after(text.substr(0, at)) && value_may_end_before(text.substr(at + 1));
    if (lone) out[at] = unknown_mark;
  }
  return out;
}

std::string shortened(std::string_view word) {
  const std::string shown = visible(slice(word, 0, longest_word));
  return code_points(word) > longest_word ? shown + "…" : shown;
}

}  // namespace loamsheet
