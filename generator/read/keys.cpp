#include "read/keys.h"

#include <array>

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

std::vector<Key> joined() {
  std::vector<Key> all(head.begin(), head.end());
  for (auto section : {build_keys(), enclosure_keys(), climate_keys(), layer_keys(),
                       furnishing_keys(), life_keys(), record_keys()}) {
    append(all, section);
  }
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
