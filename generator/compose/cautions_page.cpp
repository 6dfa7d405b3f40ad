#include <algorithm>
#include <set>

#include "compose/findings.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

constexpr const char* not_used_rule = "not-used-yet";

std::string place(const ComposeInput& in, const Span& where) {
  if (where.line == 0) return "";
  const auto slash = where.file.find_last_of('/');
  const std::string file = slash == std::string::npos ? where.file : where.file.substr(slash + 1);
  return in.wording.say("cautions.place", {{"file", file}, {"line", where.line}});
}

std::vector<Words> finding_row(const ComposeInput& in, const SpokenFinding& f) {
  Words what = plain(f.text + ' ');
  what.push_back({f.remedy, Face::regular});
  const std::string where = place(in, f.where);
  if (!where.empty()) what.push_back({" (" + where + ')', Face::italic});
  return {bold(in.wording.say("cautions." + f.severity)), what, plain(f.source)};
}

void add_findings(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  blocks.push_back(Heading{2, w.say("cautions.found")});
  Table table;
  table.columns = {{w.say("cautions.weight"), false, 1},
                   {w.say("cautions.what"), false, 6},
                   {w.say("cautions.source"), false, 2}};
  for (const auto& f : speak(in.plan.findings, in.build, w)) {
    if (f.rule != not_used_rule) table.rows.push_back(finding_row(in, f));
  }
  if (table.rows.empty()) {
    blocks.push_back(Paragraph{plain(w.say("cautions.nothing-found")), false});
  } else {
    blocks.push_back(std::move(table));
  }
}

void add_not_used(const ComposeInput& in, std::vector<Block>& blocks) {
  std::vector<std::string> keys;
  for (const auto& key : in.build.not_used) keys.push_back(key.key);
  if (keys.empty()) return;
  const Wording& w = in.wording;
  blocks.push_back(Heading{2, w.say("cautions.not-used-heading")});
  blocks.push_back(
      Paragraph{plain(w.say("cautions.not-used", {{"keys", listed(w, keys)}})), false});
}

void add_assumed(const ComposeInput& in, std::vector<Block>& blocks) {
  if (in.build.assumed.empty()) return;
  const Wording& w = in.wording;
  Table table;
  table.columns = {{w.say("cautions.key"), false, 3},
                   {w.say("cautions.value"), false, 3},
                   {w.say("cautions.from"), false, 2}};
  for (const auto& a : in.build.assumed) {
    table.rows.push_back({plain(a.key), plain(a.value), plain(a.from)});
  }
  blocks.push_back(Heading{2, w.say("cautions.assumed")});
  blocks.push_back(std::move(table));
}

void add_safety(const ComposeInput& in, std::vector<Block>& blocks) {
  BulletList list;
  for (const char* topic :
       {"electricity", "heat", "glass", "dust", "germs", "sealant", "sap", "release", "vet"}) {
    list.items.push_back(plain(in.wording.say(std::string("safety.") + topic)));
  }
  blocks.push_back(Heading{2, in.wording.say("cautions.safety-heading")});
  blocks.push_back(std::move(list));
}

// The materials that the plan's figures rest on.
std::vector<std::string> materials_used(const ComposeInput& in) {
  const Layers& layers = in.build.layers;
  std::vector<std::string> used{in.build.enclosure.walls.material};
  if (layers.drainage.kind == DrainageKind::granules) used.push_back(layers.drainage.bulk.material);
  for (const auto& part : layers.substrate.parts) used.push_back(part.bulk.material);
  if (layers.litter) used.push_back(layers.litter->bulk.material);
  return used;
}

template <class T>
void note_origin(const std::optional<Fact<T>>& fact, std::set<std::string>& ids) {
  if (fact) ids.insert(fact->origin.name);
}

std::set<std::string> origins(const ComposeInput& in) {
  std::set<std::string> ids;
  for (const auto& id : materials_used(in)) {
    const auto found = in.catalogue.materials.find(id);
    if (found == in.catalogue.materials.end()) continue;
    const Material& m = found->second;
    note_origin(m.dry_density, ids);
    note_origin(m.voids, ids);
    note_origin(m.field_capacity, ids);
    note_origin(m.moisture_dry, ids);
    note_origin(m.moisture_damp, ids);
    note_origin(m.settling, ids);
  }
  return ids;
}

void add_works(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  BulletList list;
  for (const auto& id : origins(in)) {
    const auto source = in.catalogue.sources.find(id);
    if (source == in.catalogue.sources.end()) {
      list.items.push_back(plain(
          w.say("cautions.origin-" + std::string(id == "from memory" ? "memory" : "practice"))));
    } else {
      list.items.push_back(plain(w.say(
          "cautions.work", {{"title", source->second.title}, {"link", source->second.link}})));
    }
  }
  blocks.push_back(Heading{2, w.say("cautions.works-heading")});
  blocks.push_back(std::move(list));
}

}  // namespace

Part cautions_page(const ComposeInput& in) {
  Part part{"cautions", in.wording.say("sheet.part-cautions"), false, {}};
  part.blocks.push_back(Heading{1, in.wording.say("cautions.heading")});
  add_findings(in, part.blocks);
  add_safety(in, part.blocks);
  add_assumed(in, part.blocks);
  add_not_used(in, part.blocks);
  add_works(in, part.blocks);
  return part;
}

}  // namespace loamsheet
