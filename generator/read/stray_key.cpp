#include <algorithm>

#include "base/text.h"
#include "read/conform.h"
#include "read/scalar_end.h"

namespace loamsheet {
namespace {

constexpr size_t longest_name = 40;  // a longer word is no misspelt key
constexpr size_t most_places = 3;    // a key known in more places says little

std::vector<std::string> names_under(std::span<const Key> table, std::string_view group) {
  std::vector<std::string> names;
  for (const Key* key : keys_under(table, group)) {
    names.emplace_back(key->path.substr(group.empty() ? 0 : group.size() + 1));
  }
  return names;
}

// The groups in which a name is known: "'enclosure.walls'", "an item of 'lamps'".
std::vector<std::string> homes_of(std::span<const Key> table, std::string_view name) {
  std::vector<std::string> homes;
  for (const Key& key : table) {
    const size_t dot = key.path.find_last_of('.');
    const std::string_view group = dot == std::string_view::npos ? "" : key.path.substr(0, dot);
    if (key.path.substr(dot + 1) != name) continue;
    if (group.empty()) {
      homes.emplace_back("the top of the file");
    } else if (group.ends_with("[]")) {
      homes.push_back("an item of '" + std::string(group.substr(0, group.size() - 2)) + "'");
    } else {
      homes.push_back("'" + std::string(group) + "'");
    }
  }
  return homes;
}

bool stands_in(const Raw& map, std::string_view name) {
  return std::any_of(map.entries.begin(), map.entries.end(),
                     [&](const RawEntry& e) { return e.key == name; });
}

std::string known_words(const std::vector<std::string>& names) {
  return names.empty() ? "" : "one of the keys " + join(names, ", ");
}

}  // namespace

Stray stray_key(std::span<const Key> table, const StrayKey& stray) {
  const std::string& typed = stray.entry.key;
  const auto names = names_under(table, stray.group);
  const std::string in = stray.group.empty() ? "" : " in '" + std::string(stray.group) + "'";
  Stray out;
  out.problem = complaint(stray.entry.name, "unknown key '" + shortened(typed) + "'" + in,
                          known_words(names));
  if (typed.size() > longest_name) return out;
  const size_t colon = typed.find(':');
  if (colon != std::string::npos && stray.entry.value.form == Raw::Form::nothing) {
    const std::string fix = typed.substr(0, colon) + ": " + typed.substr(colon + 1);
    out.problem.hint = "a blank is missing after the colon: write '" + fix + "'";
    out.problem.edit = Edit{stray.entry.name, fix};
    return out;
  }
  const auto homes = homes_of(table, typed);
  const auto near = closest(typed, names);
  const bool free = near && !stands_in(stray.among, *near);
  if (!homes.empty() && homes.size() <= most_places &&
      !(free && edit_distance(typed, *near) == 1)) {
    out.problem.hint = "it belongs in " + join(homes, " or ");
  } else if (free) {
    out.meant = *near;
    out.problem.hint = "did you mean '" + *near + "'?";
    out.problem.edit = Edit{stray.entry.name, *near};
  }
  return out;
}

}  // namespace loamsheet
