// csv: tables after RFC 4180, every field with its place.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"

namespace loamsheet {

struct CsvField {
  std::string text;  // without its quotes
  Span where;
};
using CsvRow = std::vector<CsvField>;

// The rows of a file, without blank lines. Lines end with LF or CRLF; a field in double quotes may
// hold commas, line breaks and quotes that are doubled. Reports quotes that stand wrongly.
std::vector<CsvRow> read_csv(std::string_view text, const std::string& file, Sink&);

}  // namespace loamsheet
