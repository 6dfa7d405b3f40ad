#include "read/keys.h"

#include <algorithm>
#include <array>
#include <deque>

#include "base/text.h"
#include "kinds/chosen.h"

namespace loamsheet {
namespace {

constexpr std::array head{
    Key{.path = "profile",
        .kind = Kind::group,
        .flags = flag::required | flag::profile_ok,
        .help = "What this profile is.",
        .example = "{revision: 1, help: A tank.}"},
    Key{.path = "profile.name",
        .kind = Kind::id,
        .flags = flag::profile_ok,
        .help = "Its name; that of its file if absent.",
        .example = "humid-sloped"},
    Key{.path = "profile.revision",
        .kind = Kind::reference,
        .limits = {1, 8},
        .flags = flag::required | flag::profile_ok,
        .help = "Its revision, printed beside every value that comes from it.",
        .example = "2"},
    Key{.path = "profile.help",
        .kind = Kind::text,
        .limits = {1, 300},
        .flags = flag::profile_ok,
        .help = "What it is for.",
        .example = "A tank."},
};

void append(std::vector<Key>& all, std::span<const Key> rows) {
  all.insert(all.end(), rows.begin(), rows.end());
}

// Texts that rows of the table point to.
std::string_view kept(std::string text) {
  static std::deque<std::string> texts;
  return texts.emplace_back(std::move(text));
}

// The ids of the kinds that a key goes with: "bar|uv-bar".
std::string going_with(const ChosenKey& chosen, std::string_view key) {
  std::vector<std::string> ids;
  for (const KindKeys& kind : chosen.kinds) {
    const auto own = split(kind.keys, '|');
    if (std::find(own.begin(), own.end(), key) != own.end()) ids.emplace_back(kind.id);
  }
  return join(ids, "|");
}

// What a key chooses among, and the keys beside it that go with some of those kinds alone, as
// kinds/ has them.
void take_kinds(const ChosenKey& chosen, std::span<Key> rows) {
  const size_t dot = chosen.path.rfind('.');
  const std::string_view group = chosen.path.substr(0, dot + 1), name = chosen.path.substr(dot + 1);
  std::vector<std::string> ids;
  for (const KindKeys& kind : chosen.kinds) ids.emplace_back(kind.id);
  for (Key& row : rows) {
    if (row.path == chosen.path) row.choices = kept(join(ids, "|"));
    if (!row.path.starts_with(group)) continue;
    const std::string with = going_with(chosen, row.path.substr(group.size()));
    if (!with.empty()) row.when = kept(std::string(name) + '=' + with);
  }
}

std::vector<Key> joined() {
  std::vector<Key> all(head.begin(), head.end());
  for (auto section : {build_keys(), enclosure_keys(), climate_keys(), layer_keys(),
                       furnishing_keys(), life_keys(), record_keys()}) {
    append(all, section);
  }
  for (const ChosenKey& chosen : chosen_keys()) take_kinds(chosen, all);
  return all;
}

}  // namespace

std::span<const Key> profile_keys() {
  static const std::vector<Key> all = joined();
  return all;
}

std::span<const Key> spec_keys() {
  return profile_keys().subspan(head.size());
}

}  // namespace loamsheet
