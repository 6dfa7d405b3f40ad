#include "plan/care/order.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/named.h"
#include "plan/care/care.h"
#include "plan/care/slots.h"

namespace loamsheet {
namespace {

// A step before it has its number; `after` holds positions in the list of drafts.
struct Draft {
  Step step;
  int group = 0;
  std::vector<size_t> after;
};

class Drafter {
 public:
  Drafter(const Build& build, const Planted& plan)
      : build_(build), plan_(plan), plants_(plant_sequence(build, plan)) {
    for (const WorkRule& rule : build.rules.work) rules_[rule.id] = &rule;
  }

  std::vector<Draft> drafts() {
    for (const WorkRule& rule : build_.rules.work) draft(rule);
    for (const WorkRule& rule : build_.rules.work) {
      for (size_t at : of_rule_[rule.id]) join(rule, at);
    }
    return std::move(drafts_);
  }

 private:
  void draft(const WorkRule& rule) {
    if (!applies(rule.when, build_)) return;
    if (rule.each.empty()) {
      return add(rule, rule.id, "order." + rule.id, slot_args(rule.slots, build_, plan_));
    }
    for (const PlantStep& plant : plants_) {
      const bool raised = plant.site != SiteKind::floor;
      if (raised == (rule.each == "raised")) add_plant(rule, plant);
    }
  }

  static Args args_of(const PlantStep& plant) {
    Args args{{"number", plant.number}, {"plant", plant.name}};
    if (!plant.on.empty()) args.emplace_back("on", plant.on);
    if (!plant.placed) return args;
    args.emplace_back("x", Millimetres{plant.at.x});
    args.emplace_back("y", Millimetres{plant.at.y});
    args.emplace_back("z", Millimetres{plant.at.z});
    return args;
  }

  // The sentence says how such a plant is set; without a place it cannot say where.
  void add_plant(const WorkRule& rule, const PlantStep& plant) {
    static constexpr For<SiteKind, const char*> sites[] = {
        {SiteKind::floor, "floor"}, {SiteKind::pocket, "pocket"}, {SiteKind::mount, "mount"}};
    const std::string site = what_of(sites, plant.site);
    add(rule, "plant-" + std::to_string(plant.number),
        "order.plant-" + site + (plant.placed ? "" : "-anywhere"), args_of(plant));
  }

  void add(const WorkRule& rule, std::string task, std::string sentence, Args args) {
    const auto groups = task_groups();
    const auto group = std::find(groups.begin(), groups.end(), rule.group) - groups.begin();
    Draft draft;
    draft.group = static_cast<int>(group);
    draft.step.task = std::move(task), draft.step.sentence = std::move(sentence);
    draft.step.args = std::move(args);
    draft.step.group = rule.group, draft.step.minutes = rule.minutes, draft.step.pause = rule.pause;
    of_rule_[rule.id].push_back(drafts_.size());
    drafts_.push_back(std::move(draft));
  }

  // The steps that a rule waits for. One that this build does without hands its own on.
  void collect(const WorkRule& rule, std::set<size_t>& into, std::set<std::string>& seen) {
    for (const std::string& name : rule.after) {
      const auto known = rules_.find(name);
      if (known == rules_.end() || !seen.insert(name).second) continue;
      const auto& steps = of_rule_[name];
      if (steps.empty())
        collect(*known->second, into, seen);
      else
        into.insert(steps.back());  // the steps of one rule follow one another
    }
  }

  void join(const WorkRule& rule, size_t at) {
    std::set<size_t> after;
    std::set<std::string> seen;
    const auto& own = of_rule_[rule.id];
    if (at == own.front()) {
      collect(rule, after, seen);
    } else {
      after.insert(at - 1);
    }
    drafts_[at].after.assign(after.begin(), after.end());
  }

  const Build& build_;
  const Planted& plan_;
  std::vector<PlantStep> plants_;
  std::map<std::string, const WorkRule*> rules_;
  std::map<std::string, std::vector<size_t>> of_rule_;
  std::vector<Draft> drafts_;
};

// Kahn's algorithm: of the steps that wait for nothing more, the first by group and place.
std::vector<size_t> sorted(const std::vector<Draft>& drafts) {
  std::vector<size_t> waits(drafts.size()), out;
  std::vector<std::vector<size_t>> next(drafts.size());
  std::set<std::tuple<int, size_t>> free;
  for (size_t i = 0; i < drafts.size(); ++i) {
    waits[i] = drafts[i].after.size();
    for (size_t before : drafts[i].after) next[before].push_back(i);
    if (waits[i] == 0) free.emplace(drafts[i].group, i);
  }
  while (!free.empty()) {
    const size_t at = std::get<1>(free.extract(free.begin()).value());
    out.push_back(at);
    for (size_t later : next[at]) {
      if (--waits[later] == 0) free.emplace(drafts[later].group, later);
    }
  }
  return out;
}

}  // namespace

std::vector<Step> plan_order(const Build& build, const Planted& plan) {
  std::vector<Draft> drafts = Drafter(build, plan).drafts();
  std::vector<int> numbers(drafts.size());
  std::vector<Step> steps;
  for (size_t at : sorted(drafts)) {
    Step& step = drafts[at].step;
    step.number = numbers[at] = static_cast<int>(steps.size()) + 1;
    for (size_t before : drafts[at].after) step.after.push_back(numbers[before]);
    std::sort(step.after.begin(), step.after.end());
    steps.push_back(std::move(step));
  }
  return steps;
}

}  // namespace loamsheet
