#include "base/diagnostic.h"

#include <algorithm>
#include <tuple>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr int longest_shown = 96;  // code points of a line that are worth showing

std::string place(const Span& s) {
  if (s.line == 0) return s.file.empty() ? "" : s.file + ": ";
  return s.file + ':' + std::to_string(s.line) + ':' + std::to_string(s.column) + ": ";
}

// The line with the caret under it; a long line is cut around the place.
std::string excerpt(const Span& s, const std::string& line) {
  const int total = code_points(line);
  const int first = std::max(0, std::min(s.column - 1 - longest_shown / 2, total - longest_shown));
  const std::string shown = slice(line, first, longest_shown);
  const int left = std::clamp(s.column - 1 - first, 0, code_points(shown));
  const int room = std::max(1, code_points(shown) - left);
  const int marks = std::clamp(s.length, 1, room);
  return "  " + visible(shown) + "\n  " + std::string(static_cast<size_t>(left), ' ') + '^' +
         std::string(static_cast<size_t>(marks - 1), '~') + '\n';
}

auto order_of(const Diagnostic& d) {
  return std::tie(d.where.file, d.where.line, d.where.column);
}

}  // namespace

void Sink::add(std::vector<Diagnostic> more) {
  for (auto& d : more) messages_.push_back(std::move(d));
}

bool Sink::failed() const {
  return std::any_of(messages_.begin(), messages_.end(),
                     [](const Diagnostic& d) { return d.severity == Severity::error; });
}

std::string render(const Diagnostic& d, const LineLookup& lines) {
  std::string out = place(d.where) + (d.severity == Severity::error ? "error: " : "warning: ");
  out += d.message + '\n';
  const std::string line = d.where.line > 0 && lines ? lines(d.where.file, d.where.line) : "";
  if (!line.empty()) out += excerpt(d.where, line);
  if (!d.expected.empty()) out += "expected: " + d.expected + '\n';
  if (!d.hint.empty()) out += "hint: " + d.hint + '\n';
  return out;
}

std::string render(std::vector<Diagnostic> all, const LineLookup& lines) {
  std::stable_sort(all.begin(), all.end(), [](const Diagnostic& a, const Diagnostic& b) {
    return order_of(a) < order_of(b);
  });
  std::string out;
  for (const auto& d : all) out += render(d, lines);
  return out;
}

}  // namespace loamsheet
