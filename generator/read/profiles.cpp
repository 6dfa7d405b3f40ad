#include "read/profiles.h"

#include <algorithm>
#include <map>

#include "base/text.h"
#include "read/compiled.h"
#include "read/conform.h"
#include "read/keys.h"

namespace loamsheet {
namespace {

constexpr std::string_view ending = ".yaml";

// The name, among the program's own data, of a profile that comes with it.
std::string own_name(const std::string& name) {
  return "specs/profiles/" + name + std::string(ending);
}

std::string folder_of(const std::string& path) {
  const size_t slash = path.find_last_of('/');
  return slash == std::string::npos ? "." : path.substr(0, slash);
}

std::string beside(const std::string& folder) {
  return folder.empty() ? "profiles" : folder + "/profiles";
}

std::vector<std::string> folders(World& world, const ProfilePlaces& places) {
  std::vector<std::string> out{beside(places.spec_folder)};
  if (!places.shop_folder.empty()) out.push_back(places.shop_folder);
  out.push_back(folder_of(world.data(own_name("any"))));
  return out;
}

std::vector<std::string> known_names(World& world, const ProfilePlaces& places) {
  std::vector<std::string> names;
  for (const auto& folder : folders(world, places)) {
    for (const auto& file : world.list(folder)) {
      if (file.ends_with(ending)) names.push_back(file.substr(0, file.size() - ending.size()));
    }
  }
  std::sort(names.begin(), names.end());
  names.erase(std::unique(names.begin(), names.end()), names.end());
  return names;
}

void report_missing(World& world, const Node& use, const ProfilePlaces& places, Complaints& out) {
  const std::string name = *use.text("");
  const auto known = known_names(world, places);
  Diagnostic d = complaint(use.where, "no profile is called '" + name + "'");
  d.expected = "a file " + name + ".yaml in profiles/ beside the spec, " +
               (places.shop_folder.empty() ? "" : "in the folder given with --profiles, ") +
               "or one of loamsheet's own";
  if (const auto near = closest(name, known)) {
    d.hint = "did you mean '" + *near + "'?";
    d.edit = Edit{use.where, *near};
  } else if (!known.empty()) {
    d.hint = "there are " + join(known, ", ");
  }
  out.add(std::move(d));
}

// A profile of the program's own is shown by its name among the data, not by where that lies.
struct Found {
  std::string path;
  YamlFilePtr file;
};

std::optional<Found> find_profile(World& world, const std::string& name,
                                  const ProfilePlaces& places) {
  const std::string file = '/' + name + std::string(ending);
  std::vector<std::string> paths{beside(places.spec_folder) + file};
  if (!places.shop_folder.empty()) paths.push_back(places.shop_folder + file);
  for (const auto& path : paths) {
    auto text = world.read(path);
    if (text) return Found{path, std::make_shared<const YamlFile>(path, std::move(*text))};
  }
  const std::string own = world.data(own_name(name));
  auto text = world.read(own);
  if (!text) return std::nullopt;
  return Found{own, shipped_file(world.compiled(), own_name(name), std::move(*text))};
}

void set_origin(Node& node, const std::string& origin) {
  node.origin = origin;
  for (auto& [name, child] : node.entries) set_origin(child, origin);
  for (auto& child : node.items) set_origin(child, origin);
}

// The head of a profile is checked whole; its other groups may be completed by the spec.
void check_head(const Node& root, Complaints& out) {
  Node head;
  head.form = Node::Form::map;
  head.where = root.where;
  if (const Node* profile = root.find("profile")) head.entries.emplace_back("profile", *profile);
  std::vector<Key> rows;
  for (const Key& key : profile_keys()) {
    if (key.path.starts_with("profile")) rows.push_back(key);
  }
  complete(head, rows, out);
}

Node read_one(const YamlFile& file, Complaints& out) {
  Node root;
  root.form = Node::Form::map;
  out.add(file.problems());
  if (file.tree().form() == Raw::Form::nothing) return root;
  const Against against{profile_keys(), Document::profile};
  root = conform(file.source(), file.tree().opened(), against, out);
  root.where.file = file.name();
  check_head(root, out);
  return root;
}

void add_profile(const Found& found, const std::string& name, Profiles& all, Complaints& out) {
  Node root = read_one(*found.file, out);
  const std::string revision = root.text("profile.revision").value_or("");
  const std::string shown = root.text("profile.name").value_or(name);
  std::erase_if(root.entries, [](const auto& e) { return e.first == "profile"; });
  set_origin(root, shown + ", revision " + revision);
  all.uses.push_back({shown, revision, found.path});
  all.roots.push_back(std::move(root));
}

}  // namespace

Profiles read_profiles(World& world, const Node& use, const ProfilePlaces& places,
                       Complaints& out) {
  Profiles all;
  std::map<std::string, int> lines;
  for (const Node& item : use.items) {
    const auto name = item.text("");
    if (!name) continue;
    const auto [first, fresh] = lines.emplace(*name, item.where.line);
    if (!fresh) {
      out.add(complaint(item.where, "the profile '" + *name + "' is used twice", "",
                        "keep one of the two"));
    } else if (const auto found = find_profile(world, *name, places)) {
      add_profile(*found, *name, all, out);
    } else {
      report_missing(world, item, places, out);
    }
  }
  return all;
}

}  // namespace loamsheet
