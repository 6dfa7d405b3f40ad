#include "compose/findings.h"

#include "compose/words.h"

namespace loamsheet {
namespace {

// Unknown inputs, hazards and materials go by their names on paper; a change that mends, of a lamp
// or of the air, is a sentence of its own with the same numbers.
Args args_of(const Finding& finding, const Wording& wording) {
  Args args = finding.args;
  for (auto& [slot, value] : args) {
    if (slot == "input") value = key_name(wording, std::get<std::string>(value));
    if (slot == "hazard") value = wording.say("hazards." + std::get<std::string>(value));
    if (slot == "material") value = material_name(wording, std::get<std::string>(value));
  }
  for (auto& [slot, value] : args) {
    if (slot == "change") value = wording.say("mends." + std::get<std::string>(value), args);
    if (slot == "mend") value = wording.say("mend." + std::get<std::string>(value), args);
  }
  return args;
}

std::string remedy(const Finding& finding, const Wording& wording, const Args& args) {
  const std::string said = wording.say("findings." + finding.rule + ".remedy", args);
  if (finding.stand_ins.empty()) return said;
  std::vector<std::string> names;
  for (const StandIn& plant : finding.stand_ins) {
    names.push_back(wording.say(plant.in_stock ? "cautions.stand-in-stocked" : "cautions.stand-in",
                                {{"plant", plant.name}}));
  }
  return said + ' ' + wording.say("cautions.stand-ins", {{"plants", listed(wording, names)}});
}

}  // namespace

SpokenFinding speak(const Finding& finding, const Build& build, const Wording& wording) {
  const std::string name = "findings." + finding.rule;
  const Args args = args_of(finding, wording);
  Span where = finding.where;
  if (where.file.empty()) where.file = build.spec_file;
  return {name_of(finding.weight),
          finding.rule,
          where,
          wording.say(name + ".text", args),
          remedy(finding, wording, args),
          wording.say(name + ".source", args),
          finding.taken_on,
          finding.stand_ins};
}

std::vector<SpokenFinding> speak(const std::vector<Finding>& findings, const Build& build,
                                 const Wording& wording) {
  std::vector<SpokenFinding> spoken;
  for (const auto& finding : findings) spoken.push_back(speak(finding, build, wording));
  return spoken;
}

}  // namespace loamsheet
