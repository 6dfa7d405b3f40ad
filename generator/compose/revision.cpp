#include "compose/findings.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {

std::vector<Words> change_lines(const ComposeInput& in) {
  const Wording& w = in.wording;
  std::vector<Words> lines;
  for (const PlantUse& use : in.build.plants) {
    if (!use.before) continue;
    lines.push_back(plain(w.say("changes.replaced", {{"number", use.number},
                                                     {"before", use.before->facts.name},
                                                     {"plant", use.facts.name},
                                                     {"date", *use.replaced_on}})));
  }
  if (const Identity& id = in.build.identity; id.slip != 0) {
    const Args args{{"days", Days{double(id.slip)}}};
    lines.push_back(plain(w.say(id.done_until ? "changes.slipped-rest" : "changes.slipped", args)));
  }
  return lines;
}

std::vector<Words> taken_on_lines(const ComposeInput& in) {
  std::vector<Words> lines;
  for (const SpokenFinding& f : speak(in.plan.findings, in.build, in.wording)) {
    if (!f.taken_on) continue;
    lines.push_back(plain(f.text + ' ' +
                          in.wording.say("cautions.taken-on", {{"by", f.taken_on->by},
                                                               {"reason", f.taken_on->reason}})));
  }
  return lines;
}

}  // namespace loamsheet
