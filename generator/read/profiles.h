// profiles: the files that a spec uses, found, read and laid under it.
#pragma once
#include <string>
#include <vector>

#include "base/world.h"
#include "read/complaints.h"
#include "read/node.h"
#include "read/read.h"

namespace loamsheet {

struct ProfilePlaces {
  std::string spec_folder;  // the spec's folder; profiles are in its "profiles/"
  std::string shop_folder;  // may be empty
};

struct Profiles {
  std::vector<ProfileUse> uses;
  std::vector<Node> roots;  // in the order of `use`, without their heads
};

// Reads every profile that the list names.
Profiles read_profiles(World&, const Node& use, const ProfilePlaces&, Complaints&);

// `over` laid over `base`: maps key by key, lists as a whole unless their items have names. A group
// whose choice of kind or shape differs is taken from `over` as a whole.
Node merged(Node base, Node over);

}  // namespace loamsheet
