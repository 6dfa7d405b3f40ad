#include "compose/findings.h"

#include "compose/words.h"

namespace loamsheet {
namespace {

Arg worded(const std::string& slot, const FindingArg& value, const Wording& wording) {
  if (slot == "input") return key_name(wording, std::get<std::string>(value));
  return std::visit([](const auto& v) { return Arg(v); }, value);
}

Args worded(const Finding& finding, const Wording& wording) {
  Args args;
  for (const auto& [slot, value] : finding.args) {
    args.emplace_back(slot, worded(slot, value, wording));
  }
  return args;
}

}  // namespace

SpokenFinding speak(const Finding& finding, const Build& build, const Wording& wording) {
  const std::string name = "findings." + finding.rule;
  const Args args = worded(finding, wording);
  Span where = finding.where;
  if (where.file.empty()) where.file = build.spec_file;
  return {name_of(finding.weight),
          finding.rule,
          where,
          wording.say(name + ".text", args),
          wording.say(name + ".remedy", args),
          wording.say(name + ".source", args)};
}

std::vector<SpokenFinding> speak(const std::vector<Finding>& findings, const Build& build,
                                 const Wording& wording) {
  std::vector<SpokenFinding> spoken;
  for (const auto& finding : findings) spoken.push_back(speak(finding, build, wording));
  return spoken;
}

std::string name_of(Status status) {
  switch (status) {
    case Status::cleared:
      return "cleared";
    case Status::provisional:
      return "provisional";
    case Status::not_cleared:
      return "not cleared";
  }
  return "";
}

std::string name_of(Weight weight) {
  switch (weight) {
    case Weight::stop:
      return "stop";
    case Weight::caution:
      return "caution";
    case Weight::note:
      return "note";
  }
  return "";
}

}  // namespace loamsheet
