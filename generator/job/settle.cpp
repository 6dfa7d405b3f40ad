#include "job/settle.h"

#include "base/text.h"
#include "check/offer.h"
#include "plan/choose.h"
#include "plan/replace.h"
#include "plan/stand_ins.h"

namespace loamsheet {
namespace {

// The rules that may find something: those that have words.
std::vector<std::string> rule_names(const Wording& wording) {
  constexpr std::string_view before = "findings.", after = ".text";
  std::vector<std::string> names;
  for (const auto& [key, sentence] : wording.sentences()) {
    if (!key.starts_with(before) || !key.ends_with(after)) continue;
    names.push_back(key.substr(before.size(), key.size() - before.size() - after.size()));
  }
  return names;
}

Diagnostic unknown_rule(const Acceptance& accepted, const Wording& wording) {
  Diagnostic d{.where = accepted.where,
               .message = "unknown rule '" + accepted.rule + "'",
               .expected = "the name of a rule as its finding shows it"};
  if (const auto near = closest(accepted.rule, rule_names(wording))) {
    d.hint = "did you mean '" + *near + "'?";
    d.edit = Edit{accepted.where, *near};
  }
  return d;
}

}  // namespace

void check_accepted_rules(const Build& build, const Wording& wording, Sink& sink) {
  for (const Acceptance& accepted : build.accepted) {
    if (wording.knows("findings." + accepted.rule + ".text")) continue;
    sink.add(unknown_rule(accepted, wording));
  }
}

Outcome<Settled> settle(Build build, const Catalogue& catalogue) {
  Sink sink;
  const auto offer = [&] {
    if (auto offered = taken(with_offer(std::move(build), catalogue), sink))
      build = std::move(*offered);
  };
  if (!build.to_choose.empty()) offer();
  if (sink.failed()) return {std::nullopt, sink.take()};
  auto selections = choose_plants(build);
  put_replacements(build);
  Plan plan = make_plan(build, std::move(selections));
  if (wants_stand_ins(plan) && build.offered.empty()) offer();
  if (sink.failed()) return {std::nullopt, sink.take()};
  add_stand_ins(build, plan);
  return {Settled{std::move(build), std::move(plan)}, sink.take()};
}

}  // namespace loamsheet
