#include <algorithm>

#include "base/text.h"
#include "compose/parts.h"

namespace loamsheet {
namespace {

// "enclosure.openings[1].mesh" of the opening "slot", spoken around the item's own name; what its
// values are stands for every item that has the same.
struct Group {
  std::string before, after;       // "enclosure openings" and "mesh"
  std::vector<std::string> items;  // "slot"
  std::vector<std::string> values;
};

std::string spoken(std::string key) {
  std::replace_if(
      key.begin(), key.end(), [](char c) { return c == '.' || c == '_'; }, ' ');
  return trimmed(key);
}

Group group_of(const std::string& parent, const std::string& item) {
  const size_t open = parent.rfind('['), close = parent.rfind(']');
  if (item.empty() || open == std::string::npos) return {spoken(parent), "", {}, {}};
  return {spoken(parent.substr(0, open)), spoken(parent.substr(close + 1)), {item}, {}};
}

bool same_place(const Group& a, const Group& b) {
  return a.before == b.before && a.after == b.after && a.items == b.items;
}

bool same_values(const Group& a, const Group& b) {
  return a.before == b.before && a.after == b.after && !a.items.empty() && a.values == b.values;
}

// The values of one origin, those of one place together.
std::vector<Group> by_place(const ComposeInput& in, const std::string& from) {
  std::vector<Group> groups;
  for (const Assumed& a : in.build.assumed) {
    if (a.from != from) continue;
    const size_t dot = a.key.rfind('.');
    const Group own = group_of(dot == std::string::npos ? "" : a.key.substr(0, dot), a.item);
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const Group& g) { return same_place(g, own); });
    if (group == groups.end()) group = groups.insert(groups.end(), own);
    group->values.push_back(in.wording.say(
        "cautions.assumed-one", {{"key", spoken(a.key.substr(dot + 1))}, {"value", a.value}}));
  }
  return groups;
}

// Items of one list that share their values, told once.
std::vector<Group> merged(const std::vector<Group>& groups) {
  std::vector<Group> all;
  for (const Group& group : groups) {
    const auto like =
        std::find_if(all.begin(), all.end(), [&](const Group& g) { return same_values(g, group); });
    if (like == all.end()) {
      all.push_back(group);
    } else {
      like->items.insert(like->items.end(), group.items.begin(), group.items.end());
    }
  }
  return all;
}

std::string said(const Wording& w, const Group& group) {
  const std::string values = join(group.values, w.say("cautions.assumed-and"));
  std::vector<std::string> place;
  for (const std::string& part :
       {group.before, join(group.items, w.say("cautions.assumed-and")), group.after}) {
    if (!part.empty()) place.push_back(part);
  }
  if (place.empty()) return values;
  return w.say("cautions.assumed-group", {{"group", join(place, " ")}, {"values", values}});
}

std::vector<std::string> origins(const std::vector<Assumed>& assumed) {
  std::vector<std::string> all;
  for (const Assumed& a : assumed) {
    if (std::find(all.begin(), all.end(), a.from) == all.end()) all.push_back(a.from);
  }
  return all;
}

}  // namespace

void add_assumed(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  BulletList list;
  for (const std::string& from : origins(in.build.assumed)) {
    std::vector<std::string> places;
    for (const Group& group : merged(by_place(in, from))) places.push_back(said(w, group));
    list.items.push_back({{w.say("cautions.assumed-from", {{"from", from}}), Face::bold},
                          {join(places, w.say("cautions.assumed-between")) + '.', Face::regular}});
  }
  if (list.items.empty()) return;
  blocks.push_back(Heading{2, w.say("cautions.assumed")});
  blocks.push_back(std::move(list));
}

}  // namespace loamsheet
