// The terraces of the substrate: in order from the front, within the floor, each held by a stone or
// a ledge of the spec.
#include <algorithm>

#include "base/text.h"
#include "check/checking.h"
#include "check/names.h"

namespace loamsheet {
namespace {

// "a ledge or a stone".
std::string holding_kinds() {
  std::vector<std::string> names;
  for (const FurnishingKind& kind : FurnishingKind::all()) {
    if (kind.holds_terrace) names.push_back("a " + std::string(kind.id));
  }
  return join(names, " or ");
}

void check_place(Checking& c, const Terrace& terrace, const Terrace* before) {
  const Box box = extent(c.build.enclosure.footprint);
  const Millimetres front{box.bottom}, back{box.top};
  if (before && terrace.from <= before->from) {
    c.error(terrace.where,
            "the terrace from " + length_text(terrace.from) + " does not lie behind the one from " +
                length_text(before->from),
            "terraces in order from the front");
  }
  if (terrace.from > front && terrace.from < back) return;
  c.error(terrace.where,
          "the terrace from " + length_text(terrace.from) + " begins outside of the floor",
          "more than " + length_text(front) + " and less than " + length_text(back));
}

// The back is where the last terrace ends.
void check_back(Checking& c, const SubstrateLayer& layer) {
  const Millimetres last = layer.terraces.back().height;
  if (layer.back == last) return;
  c.error(layer.back_at,
          "the substrate is " + length_text(layer.back) +
              " deep at the back, but its last terrace stands " + length_text(last) + " deep",
          length_text(last));
}

std::vector<std::string> able_to_hold(const Checking& c) {
  std::vector<std::string> ids;
  for (const Furnishing& thing : c.build.furnishings) {
    if (thing.kind->holds_terrace) ids.push_back(thing.id);
  }
  return ids;
}

void check_hold(Checking& c, const Node& leaf, const std::string& id) {
  const auto& things = c.build.furnishings;
  const auto found =
      std::find_if(things.begin(), things.end(), [&](const Furnishing& f) { return f.id == id; });
  if (found == things.end()) return unknown_name(c, word_of(leaf), "furnishing", able_to_hold(c));
  if (found->kind->holds_terrace) return;
  c.error(leaf.where,
          "'" + id + "' is a " + std::string(found->kind->id) + ", which holds no terrace",
          holding_kinds());
}

}  // namespace

void take_terraces(Checking& c, const Node& substrate, SubstrateLayer& layer) {
  const Node* list = substrate.find("terraces");
  if (!list) return;
  for (const Node& n : list->items) {
    Terrace terrace{{n.number("from").value_or(0)},
                    {n.number("height").value_or(0)},
                    n.text("held_by").value_or(""),
                    n.where};
    check_place(c, terrace, layer.terraces.empty() ? nullptr : &layer.terraces.back());
    layer.terraces.push_back(std::move(terrace));
  }
  if (!layer.terraces.empty()) check_back(c, layer);
}

void check_terraces(Checking& c) {
  const Node* list = c.root.find("layers.substrate.terraces");
  if (!list) return;
  for (const Node& n : list->items) {
    if (const Node* leaf = n.find("held_by")) check_hold(c, *leaf, n.text("held_by").value_or(""));
  }
}

}  // namespace loamsheet
