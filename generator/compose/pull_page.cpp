#include "base/text.h"
#include "compose/goods_words.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

std::string needed(const ComposeInput& in, const PullItem& item) {
  return quantity(in.wording, item, item.need);
}

std::string name_of(const ComposeInput& in, const PullItem& item) {
  const std::string name = capitalised(item_name(in, item)), sizes = sizes_of(in, item);
  if (sizes.empty()) return name;
  return in.wording.say("pull.sized", {{"name", name}, {"sizes", sizes}});
}

std::string packs_of(const ComposeInput& in, const PullItem& item) {
  const Wording& w = in.wording;
  std::vector<std::string> packs;
  for (const Pack& pack : item.packs) {
    const std::string size = quantity(w, pack.sold, pack.sold_unit);
    packs.push_back(w.say("pull.pack", {{"count", pack.count}, {"size", size}}));
  }
  if (packs.empty()) return w.say("pull.not-listed");
  std::string text = join(packs, w.say("build.between"));
  if (item.missing > 0) {
    text = w.say("pull.short", {{"packs", text}, {"missing", quantity(w, item, item.missing)}});
  }
  return text;
}

std::string shelf_of(const ComposeInput& in, const PullItem& item) {
  for (const Pack& pack : item.packs) {
    if (!pack.shelf.empty()) return pack.shelf;
  }
  return in.wording.say("sheet.nothing");
}

std::string left_over(const ComposeInput& in, const PullItem& item) {
  if (item.packs.empty() || item.left_over <= 0) return in.wording.say("sheet.nothing");
  return quantity(in.wording, item, item.left_over);
}

bool packed(const ComposeInput& in) {
  for (const PullItem& item : in.plan.pull_list) {
    if (!item.packs.empty()) return true;
  }
  return false;
}

Table pull_table(const ComposeInput& in, bool with_packs) {
  const Wording& w = in.wording;
  Table table;
  table.tick_column = true;
  table.columns = {{w.say("pull.item"), false, 3},
                   {w.say("pull.for"), false, 2},
                   {w.say("pull.need"), true, 1.5}};
  if (with_packs) {
    table.columns.push_back({w.say("pull.take"), false, 3});
    table.columns.push_back({w.say("pull.shelf"), false, 1});
    table.columns.push_back({w.say("pull.left"), true, 1.5});
  }
  for (const PullItem& item : in.plan.pull_list) {
    std::vector<Words> row{plain(name_of(in, item)), plain(w.say("pull.for-" + item.use)),
                           plain(needed(in, item))};
    if (with_packs) {
      row.push_back(plain(packs_of(in, item)));
      row.push_back(plain(shelf_of(in, item)));
      row.push_back(plain(left_over(in, item)));
    }
    table.rows.push_back(std::move(row));
  }
  return table;
}

std::string tools(const ComposeInput& in) {
  std::vector<std::string> names;
  for (const std::string& tool : in.plan.tools)
    names.push_back(in.wording.say("pull.tool." + tool));
  return listed(in.wording, names);
}

}  // namespace

Part pull_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"pull", w.say("sheet.part-pull"), false, {}};
  const bool with_packs = packed(in);
  part.blocks.push_back(Heading{1, w.say("pull.heading")});
  part.blocks.push_back(
      Paragraph{plain(w.say(with_packs ? "pull.note-packs" : "pull.note")), true});
  part.blocks.push_back(pull_table(in, with_packs));
  if (in.plan.tools.empty()) return part;
  part.blocks.push_back(Heading{2, w.say("pull.tools-heading")});
  part.blocks.push_back(Paragraph{plain(w.say("pull.tools", {{"tools", tools(in)}}))});
  return part;
}

}  // namespace loamsheet
