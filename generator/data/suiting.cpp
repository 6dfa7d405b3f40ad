#include "data/suiting.h"

#include "base/text.h"
#include "check/check.h"
#include "compose/findings.h"
#include "plan/fit/fit.h"

namespace loamsheet {
namespace {

std::string verdict(Suits suits) {
  if (suits == Suits::no) return "no";
  return suits == Suits::yes ? "yes" : "with caution";
}

std::string words_of(const Suitability& found, const Build& build, const Wording& words,
                     bool in_full) {
  std::vector<std::string> reasons;
  for (const SpokenFinding& reason : speak(found.reasons, build, words)) {
    if (in_full) {
      reasons.push_back(reason.severity + ": " + reason.text);
    } else if (reason.severity != "note") {
      reasons.push_back(reason.rule);
    }
  }
  const std::string said = words.say("lookup.suits-" + verdict(found.suits).substr(0, 4));
  return reasons.empty() ? said : said + ": " + join(reasons, in_full ? " " : ", ");
}

}  // namespace

Outcome<Build> build_around(const Catalogue& catalogue, const std::string& animal) {
  auto facts = read_animal(catalogue, animal);
  if (!facts) return {std::nullopt, std::move(facts.messages)};
  Build build;
  build.kept.emplace_back();
  build.kept.front().facts = std::move(*facts.value);
  const auto& kind = build.kept.front().facts.build_kind;
  if (kind) build.kind = kind_named(kind->value);
  build.hazards = catalogue.hazards;
  build.sources = read_sources(catalogue);
  return {std::move(build), {}};
}

Stated suits(const Build& build, const Plant& plant, const Wording& words, bool in_full) {
  const Suitability found = suitability(build, plant, {});
  return {"suits", verdict(found.suits), words_of(found, build, words, in_full), {}};
}

}  // namespace loamsheet
