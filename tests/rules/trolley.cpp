// Who fills a trolley by the pull list, and lays out the tools beside it, lacks nothing that the
// order and the calendar tell people to use.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <regex>
#include <set>

#include "catalogue/wording.h"
#include "job/job.h"
#include "plan/shop/supplies.h"
#include "tree.h"
#include "world/world.h"

namespace {

using namespace loamsheet;

// What a sentence speaks of, and what its task needs then: one of these.
struct Spoken {
  std::regex words;
  std::set<std::string> things;
};
const std::vector<Spoken> spoken_of{
    {std::regex("\\btape\\b"), {"marking-tape", "props"}},
    {std::regex("siphon|draw .* off|Empty it|then empty|[Dd]rain the"), {"siphon-hose"}},
    {std::regex("luggage scale"), {"luggage-scale"}},
    {std::regex("Weigh out"), {"kitchen-scale"}},
    {std::regex("gloves"), {"gloves"}},
    {std::regex("alcohol"), {"rubbing-alcohol"}},
    {std::regex("\\bcoir\\b"), {"coir"}},
    {std::regex("[Ww]ipe the"), {"paper-towels"}},
    {std::regex("timer"), {"timer", "pump-timer"}},
    {std::regex("thermostat"), {"thermostat"}},
    {std::regex("bait|[Ff]eed the crew"), {"crew-food"}},
    {std::regex("rigid board"), {"rigid-board"}},
    {std::regex("UV index"), {"uv-meter"}},
    {std::regex("[Pp]hotograph"), {"camera"}},
    {std::regex("first readings|[Rr]ead temperature|heat test"), {"thermometer-hygrometer"}},
    {std::regex("ammonia"), {"water-test-kit"}},
    {std::regex("by hand once|by hand morning"), {"hand-mister"}},
    {std::regex("damp moss"), {"sphagnum"}},
    {std::regex("\\btied\\b"), {"tying-line"}},
    {std::regex("[Ss]crub"), {"scrubbing-brush"}},
    {std::regex("[Rr]inse .* granules|[Rr]inse .*drainage"), {"sieve"}},
    {std::regex("[Bb]oil, bake or freeze"), {"cooking-pot"}},
    {std::regex("quarantine|apart for four weeks"), {"quarantine-tub"}},
    {std::regex("level both ways|level the tank"), {"spirit-level"}},
    {std::regex("\\{first-watering\\}|[Ww]ater in|[Ww]ater each"), {"watering-can"}},
    {std::regex("[Cc]ut off"), {"scissors"}},
    {std::regex("[Ss]ealant or foam free"), {"fixing"}},
};

Wording english() {
  auto world = real_world();
  return read_wording(*world, "en", UnitSystem::metric).value.value();
}

std::map<std::string, std::set<std::string>> needs_by_task(const TaskRules& rules) {
  std::map<std::string, std::set<std::string>> needs;
  for (const WorkRule& r : rules.work) needs[r.id].insert(r.needs.begin(), r.needs.end());
  for (const CareRule& r : rules.care) needs[r.id].insert(r.needs.begin(), r.needs.end());
  return needs;
}

// The task of a sentence: order.plant-mount is one of the step plant-raised.
std::string task_of(const std::string& sentence) {
  for (const char* stem : {"order.", "calendar.task."}) {
    if (sentence.rfind(stem, 0) != 0) continue;
    const std::string id = sentence.substr(std::string(stem).size());
    const bool raised = id.rfind("plant-mount", 0) == 0 || id.rfind("plant-pocket", 0) == 0;
    return raised ? "plant-raised" : id.rfind("plant-floor", 0) == 0 ? "plant-floor" : id;
  }
  return "";
}

bool met(const Planned& p, const std::string& need) {
  const Plan& plan = p.plan;
  if (std::find(plan.tools.begin(), plan.tools.end(), need) != plan.tools.end()) return true;
  for (const PullItem& item : plan.pull_list) {
    if (item.use == need || item.item == need) return true;
  }
  for (const Supply& supply : p.build.rules.supplies) {
    if (supply.id == need) return supply_needed(supply, p.build, plan) == 0;
  }
  return false;
}

}  // namespace

TEST_CASE("what a sentence tells people to use, its task needs") {
  auto world = real_world();
  const auto needs = needs_by_task(read_rules(*world).value.value());
  size_t spoken = 0;
  const Wording wording = english();
  for (const auto& [name, sentence] : wording.sentences()) {
    const std::string task = task_of(name);
    if (task.empty() || !needs.count(task)) continue;
    for (const auto& [words, things] : spoken_of) {
      if (!std::regex_search(sentence, words)) continue;
      ++spoken;
      INFO(name << ": " << sentence << " wants " << *things.begin());
      CHECK(std::any_of(things.begin(), things.end(), [&](const std::string& thing) {
        return needs.at(task).count(thing) == 1;
      }));
    }
  }
  CHECK(spoken >= spoken_of.size());
}

TEST_CASE("what the tasks of the examples need is on the pull list or among the tools") {
  auto world = real_world();
  for (const auto& spec : tree::files("specs", {".yaml"})) {
    if (spec.parent_path() != tree::root / "specs") continue;
    const auto outcome = plan_spec(*world, spec.string(), "");
    REQUIRE(outcome);
    const Planned& planned = *outcome.value;
    const auto needs = task_needs(planned.build, planned.plan);
    CHECK(needs.size() > 20);
    for (const std::string& need : needs) {
      INFO(spec << " needs " << need);
      CHECK(met(planned, need));
    }
  }
}

TEST_CASE("every tool has its name on the pull page") {
  auto world = real_world();
  const TaskRules rules = read_rules(*world).value.value();
  const Wording wording = english();
  for (const std::string& tool : rules.tools) CHECK(wording.knows("pull.tool." + tool));
  for (const Supply& supply : rules.supplies) CHECK(wording.knows("material." + supply.id));
}
