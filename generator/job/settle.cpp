#include "job/settle.h"

#include "base/text.h"
#include "check/offer.h"
#include "plan/care/care.h"
#include "plan/choose/choose.h"
#include "plan/fit/fit.h"

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

namespace {

class Settling {
 public:
  Settling(Build build, const Catalogue& catalogue)
      : build_(std::move(build)), catalogue_(catalogue) {}

  Outcome<Settled> settled() {
    if (!build_.to_choose.empty()) offer();
    if (sink_.failed()) return {std::nullopt, sink_.take()};
    auto selections = choose_plants(build_);
    put_replacements(build_);
    Plan plan = make_plan(build_, std::move(selections));
    if (wants_stand_ins(plan.findings)) find_stand_ins(plan);
    if (sink_.failed()) return {std::nullopt, sink_.take()};
    return {Settled{std::move(build_), std::move(plan)}, sink_.take()};
  }

 private:
  // Every plant, or those of some habits.
  void offer(const std::set<std::string>& habits = {}) {
    offered_all_ = habits.empty();
    auto offered = taken(with_offer(std::move(build_), catalogue_, habits), sink_);
    if (offered) build_ = std::move(*offered);
  }

  // Of the same habits first: most often that is enough, and the rest is not read.
  void find_stand_ins(Plan& plan) {
    if (!offered_all_) offer(habits_that_fail(build_, plan.findings));
    if (sink_.failed() || add_stand_ins(build_, plan.findings) || offered_all_) return;
    offer();
    if (!sink_.failed()) add_stand_ins(build_, plan.findings);
  }

  Build build_;
  const Catalogue& catalogue_;
  bool offered_all_ = false;
  Sink sink_;
};

}  // namespace

Outcome<Settled> settle(Build build, const Catalogue& catalogue) {
  return Settling(std::move(build), catalogue).settled();
}

}  // namespace loamsheet
