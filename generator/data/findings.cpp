#include "compose/findings.h"

#include "base/path.h"
#include "data/data.h"
#include "data/findings_json.h"

namespace loamsheet {
namespace {

std::string place(const Span& where) {
  if (where.line == 0) return where.file;
  return where.file + ':' + std::to_string(where.line) + ':' + std::to_string(where.column);
}

Json stand_ins(const std::vector<StandIn>& plants) {
  Json list = Json::array();
  for (const StandIn& plant : plants) {
    list.push_back(
        {{"species", plant.species}, {"name", plant.name}, {"in_stock", plant.in_stock}});
  }
  return list;
}

}  // namespace

Json findings_array(const PlannedBuild& p) {
  Json list = Json::array();
  for (const auto& f : speak(p.plan.findings, p.build, p.wording)) {
    list.push_back({{"severity", f.severity},
                    {"rule", f.rule},
                    {"file", base_name(f.where.file)},
                    {"line", f.where.line},
                    {"column", f.where.column},
                    {"text", f.text},
                    {"remedy", f.remedy},
                    {"source", f.source}});
    if (f.taken_on) {
      list.back()["accepted"] = {{"by", f.taken_on->by}, {"reason", f.taken_on->reason}};
    }
    if (!f.stand_ins.empty()) list.back()["stand_ins"] = stand_ins(f.stand_ins);
  }
  return list;
}

std::string findings_json(const std::vector<PlannedBuild>& all) {
  Json specs = Json::array(), findings = Json::array();
  for (const auto& p : all) {
    for (auto& f : findings_array(p)) {
      f["spec"] = specs.size();
      findings.push_back(std::move(f));
    }
    specs.push_back({{"file", base_name(p.build.spec_file)}, {"status", name_of(p.plan.status)}});
  }
  return document({{"loamsheet", LOAMSHEET_VERSION}, {"specs", specs}, {"findings", findings}});
}

std::string findings_text(const PlannedBuild& p) {
  std::string out;
  for (const auto& f : speak(p.plan.findings, p.build, p.wording)) {
    out += place(f.where) + ": " + f.severity + ": " + f.text + " [" + f.rule + "]\n";
    if (!f.remedy.empty()) out += "  remedy: " + f.remedy + '\n';
    if (f.taken_on) out += "  accepted: " + f.taken_on->by + ", " + f.taken_on->reason + '\n';
    if (!f.source.empty()) out += "  source: " + f.source + '\n';
  }
  return out + p.build.spec_file + ": " + name_of(p.plan.status) + '\n';
}

}  // namespace loamsheet
