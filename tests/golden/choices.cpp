// What is picked for ten animals, out of the whole catalogue, and why: each choices/NAME.yaml gives
// expected/choices/NAME.txt. LOAMSHEET_REWRITE=1 writes them anew, but never where CI is set; read
// every one of them then.
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "base/text.h"
#include "examples.h"
#include "plan/choose/candidates.h"
#include "world/world.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

namespace fs = std::filesystem;
const fs::path folder = LOAMSHEET_SOURCE "/tests/golden";

std::string site_of(const PlacedPlant& plant) {
  constexpr const char* kinds[] = {"floor", "pocket", "mount"};
  const std::string on = plant.on.empty() ? "" : " (" + plant.on + ')';
  return kinds[static_cast<int>(plant.site)] + on + ' ' + fixed(plant.at.x / 10, 0) + " across, " +
         fixed(plant.at.y / 10, 0) + " back, " + fixed(plant.at.z / 10, 0) + " up";
}

// A reason by its name, and its numbers: the sentence for it is held elsewhere.
std::string because(const Planned& p, const Reason& why) {
  std::string out = "   " + why.name;
  for (const auto& [slot, value] : why.args) {
    out += ' ' + slot + ' ' + p.wording.amount(value) + ',';
  }
  return out.substr(0, out.find_last_not_of(',') + 1) + '\n';
}

std::string picked_lines(const Planned& p, const PickedPlant& picked) {
  const PlacedPlant& placed = p.plan.planting->plants[static_cast<size_t>(picked.number - 1)];
  std::string out = std::to_string(picked.number) + ". " + picked.common_name + " (" +
                    picked.species + "), " + picked.role + "\n";
  out += placed.placed ? "   " + site_of(placed) + ", fit " + fixed(placed.fit, 2) + '\n'
                       : "   no place\n";
  for (const Reason& why : placed.why) out += because(p, why);
  return out;
}

std::string passed_lines(const Selection& selection) {
  std::map<std::string, std::vector<std::string>> names;
  for (const PassedOver& plant : selection.passed_over) {
    std::string because = plant.because.name;
    for (const auto& [slot, value] : plant.because.args) {
      if (slot == "rule") because += ", " + std::get<std::string>(value);
    }
    names[because].push_back(plant.species);
  }
  std::string out = "\nPassed over\n";
  for (const auto& [because, plants] : names) {
    out += because + ": " + join(plants, ", ") + '\n';
  }
  return out;
}

std::string read_aloud(const Planned& p) {
  std::string out = p.build.identity.title + '\n';
  for (const Selection& selection : p.plan.selections) {
    for (const PickedPlant& picked : selection.picked) out += picked_lines(p, picked);
    out += "Roles that nothing fills: " + join(selection.empty_roles, ", ") + '\n';
    out += passed_lines(selection);
  }
  return out;
}

// While one role has two plants, no other that something suits is left empty.
void hold_roles(const Selection& selection) {
  std::map<std::string, int> filled;
  for (const PickedPlant& plant : selection.picked) ++filled[plant.role];
  if (filled.size() == selection.picked.size()) return;
  for (const PassedOver& plant : selection.passed_over) {
    INFO(plant.species);
    CHECK((plant.because.name != "beaten" || filled.contains(plant.role)));
  }
}

void hold_rules(const Planned& p) {
  for (const Selection& selection : p.plan.selections) {
    std::set<std::string> stopped;
    for (const PassedOver& plant : selection.passed_over) {
      if (plant.because.name == "stop") stopped.insert(plant.species);
    }
    for (const PickedPlant& plant : selection.picked) CHECK_FALSE(stopped.contains(plant.species));
    CHECK(static_cast<int>(selection.picked.size()) == selection.wanted);
    hold_roles(selection);
  }
  for (const Finding& finding : p.plan.findings) {
    const bool about_plant = finding.rule.starts_with("plant-") || finding.rule.starts_with("pin-");
    INFO(finding.rule);
    CHECK_FALSE((about_plant && finding.weight == Weight::stop));
  }
}

}  // namespace

TEST_CASE("ten animals in ten lines each get the plants that are kept on file") {
  const auto world = real_world();
  int read = 0;
  for (const auto& file : fs::directory_iterator(folder / "choices")) {
    const std::string name = file.path().stem().string();
    INFO(name);
    const auto planned = plan_spec(*world, file.path().string(), "");
    INFO(render(planned.messages, nullptr));
    REQUIRE(planned);
    hold_rules(*planned.value);
    hold(read_aloud(*planned.value), "choices/" + name + ".txt");
    ++read;
  }
  CHECK(read == 10);
}
