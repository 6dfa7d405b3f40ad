#include "data/data.h"
#include "data/json.h"

namespace loamsheet {
namespace {

// A field as RFC 4180 wants it: quoted when it holds a comma, a quote or a line break.
std::string field(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + '"';
}

}  // namespace

std::string pull_list_csv(const PlannedBuild& p) {
  std::string out = "item,need,unit\r\n";
  for (const auto& i : p.plan.pull_list) {
    out += field(i.item) + ',' + significant(i.need, digits_written) + ',' + field(i.unit) + "\r\n";
  }
  return out;
}

}  // namespace loamsheet
