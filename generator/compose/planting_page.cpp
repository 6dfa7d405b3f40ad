#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

std::string where(const ComposeInput& in, const PlacedPlant& p) {
  const Wording& w = in.wording;
  const Args at{{"x", Millimetres{p.at.x}},
                {"y", Millimetres{p.at.y}},
                {"z", Millimetres{p.at.z}},
                {"on", p.on == "background" ? w.say("plants.background") : p.on}};
  switch (p.site) {
    case SiteKind::floor:
      return w.say("plants.on-floor", at);
    case SiteKind::pocket:
      return w.say("plants.in-pocket", at);
    case SiteKind::mount:
      return w.say("plants.on-mount", at);
  }
  return "";
}

std::string reasons(const ComposeInput& in, const PlacedPlant& p) {
  std::vector<std::string> said;
  for (const Reason& r : p.why) {
    said.push_back(in.wording.say("planting.why." + r.name, r.args));
  }
  return join(said, " ");
}

std::vector<Words> row(const ComposeInput& in, const PlacedPlant& p) {
  const Wording& w = in.wording;
  const Words name{{p.common_name + ' ', Face::bold}, {p.botanical, Face::italic}};
  if (!p.placed) {
    return {bold(std::to_string(p.number)), name, plain(w.say("plants.nowhere")),
            plain(w.say("sheet.nothing")), plain(reasons(in, p))};
  }
  return {bold(std::to_string(p.number)), name, plain(where(in, p)),
          plain(w.say("plants.light", {{"ppfd", fixed(p.light.ppfd, 0)},
                                       {"dli", fixed(p.light.dli, 1)},
                                       {"humidity", p.humidity}})),
          plain(reasons(in, p))};
}

Table planting_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  Table table;
  table.columns = {{w.say("plants.number"), true, 0},
                   {w.say("plants.plant"), false, 2},
                   {w.say("plants.where"), false, 2},
                   {w.say("plants.gets"), false, 1.6},
                   {w.say("plants.why"), false, 4}};
  for (const PlacedPlant& p : in.plan.planting->plants) table.rows.push_back(row(in, p));
  return table;
}

}  // namespace

Part planting_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"planting", w.say("sheet.part-planting"), false, {}};
  part.blocks.push_back(Heading{1, w.say("plants.heading")});
  add_figure(in, "plan", part.blocks);
  part.blocks.push_back(Paragraph{plain(w.say("plants.note")), true});
  part.blocks.push_back(planting_table(in));
  add_selections(in, part.blocks);
  return part;
}

}  // namespace loamsheet
