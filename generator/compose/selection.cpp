#include <map>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

std::string price(const Wording& w, const std::optional<Money>& amount) {
  return amount ? whole_decimal(*amount, 2) : w.say("sheet.nothing");
}

std::string why(const Wording& w, const PickedPlant& plant) {
  std::vector<std::string> said;
  for (const Reason& reason : plant.why) {
    said.push_back(w.say("planting.picked." + reason.name, reason.args));
  }
  return join(said, " ");
}

Table picked_table(const Wording& w, const Selection& selection) {
  Table table;
  table.columns = {{w.say("plants.number"), true, 0},
                   {w.say("plants.plant"), false, 2},
                   {w.say("plants.role"), false, 1},
                   {w.say("plants.price"), true, 1},
                   {w.say("plants.picked-why"), false, 4}};
  for (const PickedPlant& plant : selection.picked) {
    table.rows.push_back({bold(std::to_string(plant.number)), plain(plant.common_name),
                          plain(w.say("plants.role-" + plant.role)), plain(price(w, plant.price)),
                          plain(why(w, plant))});
  }
  return table;
}

// Plants that were passed over for one reason share a line.
std::vector<Words> passed_lines(const Wording& w, const Selection& selection) {
  std::map<std::string, std::vector<std::string>> names;
  for (const PassedOver& plant : selection.passed_over) {
    Args args = plant.because.args;
    std::erase_if(args, [](const auto& slot) { return slot.first == "fit"; });
    const std::string rule = plant.because.name;
    names[w.say("plants.passed-" + rule, args)].push_back(plant.common_name);
  }
  std::vector<Words> lines;
  for (const auto& [because, plants] : names) {
    lines.push_back({{because + ' ', Face::bold}, {listed(w, plants) + '.', Face::regular}});
  }
  return lines;
}

std::string summary(const Wording& w, const Selection& selection) {
  const Args args{{"count", static_cast<int>(selection.picked.size())},
                  {"wanted", selection.wanted},
                  {"cost", price(w, selection.cost)},
                  {"budget", price(w, selection.budget)}};
  if (!selection.cost) return w.say("plants.picked-unpriced", args);
  return w.say(selection.budget ? "plants.picked-within" : "plants.picked-cost", args);
}

std::string empty_roles(const Wording& w, const Selection& selection) {
  std::vector<std::string> names;
  for (const std::string& role : selection.empty_roles) {
    names.push_back(w.say("plants.role-" + role));
  }
  return w.say("plants.empty-roles", {{"roles", listed(w, names)}});
}

}  // namespace

void add_selections(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  for (const Selection& selection : in.plan.selections) {
    blocks.push_back(Heading{2, w.say("plants.picked-heading")});
    blocks.push_back(Paragraph{plain(summary(w, selection)), false});
    if (!selection.picked.empty()) blocks.push_back(picked_table(w, selection));
    if (!selection.empty_roles.empty()) {
      blocks.push_back(Paragraph{plain(empty_roles(w, selection)), true});
    }
    blocks.push_back(Heading{2, w.say("plants.passed-heading")});
    blocks.push_back(BulletList{passed_lines(w, selection)});
  }
}

}  // namespace loamsheet
