#include "data/data.h"
#include "data/findings_json.h"
#include "data/json_sink.h"

namespace loamsheet {
namespace {

Json numbers(const PlannedBuild& p) {
  JsonSink to(p.wording);
  to.add("loamsheet", LOAMSHEET_VERSION);
  fields(p.build, p.plan, to);
  to.json()["findings"] = findings_array(p);
  return std::move(to.json());
}

void flatten(const Json& j, const std::string& path, std::string& out) {
  if (!j.is_structured() || j.empty()) {
    out += path + ' ' + (j.is_string() ? j.get<std::string>() : j.dump()) + '\n';
    return;
  }
  for (const auto& [key, value] : j.items()) {
    const std::string step = j.is_array() ? '[' + key + ']' : (path.empty() ? "" : ".") + key;
    flatten(value, path + step, out);
  }
}

}  // namespace

std::string numbers_json(const PlannedBuild& p) {
  return document(numbers(p));
}

std::string numbers_text(const PlannedBuild& p) {
  std::string out;
  flatten(numbers(p), "", out);
  return out;
}

}  // namespace loamsheet
