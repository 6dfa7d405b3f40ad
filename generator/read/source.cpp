#include "read/source.h"

#include <algorithm>

#include "base/text.h"
#include "read/complaints.h"

namespace loamsheet {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr size_t longest_document = 1024 * 1024;
constexpr size_t block_size = 64;

bool is_control(std::string_view text, size_t at) {
  const auto c = static_cast<unsigned char>(text[at]);
  if (c == '\r') return at + 1 >= text.size() || text[at + 1] != '\n';
  if (c == 0xC2 && at + 1 < text.size()) {
    const auto next = static_cast<unsigned char>(text[at + 1]);
    return next < 0xA0 && next != 0x85;
  }
  return (c < 0x20 && c != '\n' && c != '\t') || c == 0x7F;
}

// A line that starts with '%' before anything else was said.
std::optional<size_t> directive(std::string_view text) {
  size_t at = 0;
  while (at < text.size() && (text[at] == '#' || text[at] == '\n' || text[at] == '\r')) {
    at = std::min(text.find('\n', at), text.size() - 1) + 1;
  }
  return at < text.size() && text[at] == '%' ? std::optional(at) : std::nullopt;
}

Diagnostic problem(Span where, std::string_view message, std::string_view hint) {
  return complaint(std::move(where), std::string(message), "", std::string(hint));
}

}  // namespace

SourceText::SourceText(std::string file, std::string_view text)
    : file_(std::move(file)), text_(text) {
  if (text_.starts_with(byte_order_mark)) text_.remove_prefix(byte_order_mark.size());
}

void SourceText::count_lines() const {
  if (!starts_.empty()) return;
  starts_.push_back(0);
  for (size_t at = text_.find('\n'); at != std::string_view::npos; at = text_.find('\n', at + 1)) {
    starts_.push_back(at + 1);
  }
  counts_.push_back(0);
  for (size_t at = 0; at + block_size <= text_.size(); at += block_size) {
    counts_.push_back(counts_.back() + code_points(text_.substr(at, block_size)));
  }
}

size_t SourceText::line_index(size_t at) const {
  count_lines();
  return static_cast<size_t>(std::upper_bound(starts_.begin(), starts_.end(), at) -
                             starts_.begin()) -
         1;
}

size_t SourceText::line_start(size_t at) const {
  const size_t line = line_index(at);
  return starts_[line];
}

std::string_view SourceText::line_at(size_t at) const {
  const size_t line = line_index(at);
  const bool last = line + 1 == starts_.size();
  const size_t end = last ? text_.size() : starts_[line + 1] - 1;
  std::string_view text = text_.substr(starts_[line], end - starts_[line]);
  if (text.ends_with('\r')) text.remove_suffix(1);
  return text;
}

int SourceText::code_points_before(size_t at) const {
  const size_t block = at / block_size;
  return counts_[block] + code_points(text_.substr(block * block_size, at % block_size));
}

Span SourceText::span(size_t begin, size_t end) const {
  begin = std::min(begin, text_.size());
  const size_t line = line_index(begin);
  const std::string_view shown = line_at(begin);
  const size_t stop = std::clamp(end, begin, std::max(begin, starts_[line] + shown.size()));
  const int before = code_points_before(begin);
  return {file_, static_cast<int>(line) + 1, before - code_points_before(starts_[line]) + 1,
          std::max(1, code_points_before(stop) - before)};
}

std::vector<Diagnostic> check_bytes(const SourceText& source) {
  const std::string_view text = source.text();
  const Span whole{source.file(), 1, 1, 1};
  if (text.size() > longest_document) {
    return {problem(whole, "the file is larger than 1 MiB", "a spec is a few pages of text")};
  }
  if (const auto bad = invalid_utf8(text)) {
    return {problem(source.span(*bad, *bad + 1), "the file is not UTF-8 text",
                    "save it as UTF-8 in the editor")};
  }
  std::vector<Diagnostic> found;
  for (size_t at = 0; at < text.size() && found.size() < 10; ++at) {
    if (!is_control(text, at)) continue;
    found.push_back(problem(source.span(at, at + 1), "a control character stands here",
                            "delete it; only text and line ends belong in the file"));
  }
  if (const auto at = directive(text)) {
    found.push_back(problem(source.span(*at, *at + source.line_at(*at).size()),
                            "directives are not read", "delete this line"));
  }
  return found;
}

}  // namespace loamsheet
