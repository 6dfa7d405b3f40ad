#include <algorithm>
#include <set>

#include "base/path.h"
#include "base/text.h"
#include "compose/findings.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

std::string place(const ComposeInput& in, const Span& where) {
  if (where.line == 0) return "";
  return in.wording.say("cautions.place", {{"file", base_name(where.file)}, {"line", where.line}});
}

std::string taken_on(const ComposeInput& in, const TakenOn& who) {
  return in.wording.say("cautions.taken-on", {{"by", who.by}, {"reason", who.reason}});
}

std::vector<Words> finding_row(const ComposeInput& in, const SpokenFinding& f) {
  Words what = plain(f.text + ' ');
  what.push_back({f.remedy, Face::regular});
  const std::string where = place(in, f.where);
  if (!where.empty()) what.push_back({" (" + where + ')', Face::italic});
  if (f.taken_on) what.push_back({' ' + taken_on(in, *f.taken_on), Face::bold});
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
    table.rows.push_back(finding_row(in, f));
  }
  if (table.rows.empty()) {
    blocks.push_back(Paragraph{plain(w.say("cautions.nothing-found")), false});
  } else {
    blocks.push_back(std::move(table));
  }
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

template <class T>
void note_origin(const std::optional<Fact<T>>& fact, std::set<std::string>& ids) {
  if (fact) ids.insert(fact->origin.name);
}

std::set<std::string> origins(const ComposeInput& in) {
  std::set<std::string> ids;
  for (const Material& m : in.build.materials) {
    note_origin(m.dry_density, ids);
    note_origin(m.voids, ids);
    note_origin(m.field_capacity, ids);
    note_origin(m.moisture_dry, ids);
    note_origin(m.moisture_damp, ids);
    note_origin(m.settling, ids);
    note_origin(m.areal_kg_m2, ids);
  }
  return ids;
}

std::string work(const Wording& w, const Source& source) {
  return source.link.empty()
             ? w.say("cautions.work", {{"title", source.title}})
             : w.say("cautions.work-link", {{"title", source.title}, {"link", source.link}});
}

void add_works(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  std::vector<std::string> works, unpublished;
  for (const auto& origin : origins(in)) {
    if (const auto source = read_source(in.catalogue, origin).value) {
      works.push_back(work(w, *source));
    } else {
      unpublished.push_back(
          w.say(origin == "from memory" ? "cautions.origin-memory" : "cautions.origin-practice"));
    }
  }
  works.insert(works.end(), unpublished.begin(), unpublished.end());
  blocks.push_back(Heading{2, w.say("cautions.works-heading")});
  blocks.push_back(Paragraph{plain(join(works, w.say("cautions.work-between"))), true});
}

// Constants that the spec itself states, with where they are from.
void add_own_materials(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  std::vector<std::string> said;
  for (const OwnMaterial& own : in.build.own_materials) {
    said.push_back(w.say("cautions.own-material",
                         {{"material", material_name(w, own.id)}, {"from", own.from}}));
  }
  if (said.empty()) return;
  blocks.push_back(Paragraph{plain(join(said, w.say("cautions.work-between"))), true});
}

}  // namespace

Part cautions_page(const ComposeInput& in) {
  Part part{"cautions", in.wording.say("sheet.part-cautions"), false, {}};
  part.blocks.push_back(Heading{1, in.wording.say("cautions.heading")});
  add_findings(in, part.blocks);
  add_safety(in, part.blocks);
  add_assumed(in, part.blocks);
  add_works(in, part.blocks);
  add_own_materials(in, part.blocks);
  return part;
}

}  // namespace loamsheet
