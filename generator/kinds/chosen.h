// chosen: which keys of the spec choose a kind, and which keys go with which.
#pragma once
#include <string_view>
#include <vector>

namespace loamsheet {

// A kind with the keys beside it that are its own: "length|gap". A key that no kind of a table
// names goes with all of them.
struct KindKeys {
  std::string_view id, keys;
};

struct ChosenKey {
  std::string_view path;  // "lamps[].kind"
  std::vector<KindKeys> kinds;
};
std::vector<ChosenKey> chosen_keys();

}  // namespace loamsheet
