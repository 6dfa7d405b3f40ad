// source: the text of a document and the places in it.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"

namespace loamsheet {

// Not to be shared between threads.
class SourceText {
 public:
  // `text` must outlive the source. A byte order mark is left out of all positions.
  SourceText(std::string file, std::string_view text);

  const std::string& file() const { return file_; }
  std::string_view text() const { return text_; }

  // The place of the bytes from `begin` to `end`; what lies past the end of the line is left out.
  Span span(size_t begin, size_t end) const;

  // The bytes of the line on which byte `at` lies, without its line end.
  std::string_view line_at(size_t at) const;
  size_t line_start(size_t at) const;

 private:
  size_t line_index(size_t at) const;
  int code_points_before(size_t at) const;
  void count_lines() const;

  std::string file_;
  std::string_view text_;
  // Counted when a place is first asked for, which is never where nothing is wrong.
  mutable std::vector<size_t> starts_;  // the first byte of every line
  mutable std::vector<int> counts_;     // code points before every 64th byte
};

// What is wrong with the bytes before they are read as YAML: too many, not UTF-8, control
// characters, directives.
std::vector<Diagnostic> check_bytes(const SourceText&);

}  // namespace loamsheet
