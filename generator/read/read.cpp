#include "read/read.h"

#include "read/conform.h"
#include "read/keys.h"
#include "read/language.h"
#include "read/profiles.h"
#include "read/raw.h"

namespace loamsheet {
namespace {

template <class T>
Outcome<T> outcome(T value, Complaints& complaints) {
  if (complaints.failed()) return {std::nullopt, complaints.take()};
  return {std::move(value), {}};
}

std::string folder_of(const std::string& path) {
  const size_t slash = path.find_last_of('/');
  if (slash == std::string::npos) return "";
  return slash == 0 ? "/" : path.substr(0, slash);
}

// The document by itself, or nothing when it cannot be read as YAML.
std::optional<Node> conformed(const SourceText& source, const RawDocument& raw,
                              const Against& against, Complaints& out) {
  out.add(raw.problems);
  if (raw.root.form == Raw::Form::nothing) return std::nullopt;
  Node root = conform(source, raw.root, against, out);
  root.where.file = source.file();
  return root;
}

Outcome<Node> whole(const SourceText& source, const RawDocument& raw, std::span<const Key> table) {
  Complaints complaints;
  auto root = conformed(source, raw, {table, Document::plain}, complaints);
  if (root && !table.empty()) complete(*root, table, complaints);
  return outcome(root ? std::move(*root) : Node{}, complaints);
}

// The spec laid over its profiles. What is missing is asked for only when all of them were read.
void join_profiles(World& world, Spec& spec, const std::string& shop_folder, Complaints& out) {
  const Node* use = spec.root.find("use");
  bool whole = true;
  if (use) {
    Complaints found;
    Profiles profiles = read_profiles(world, *use, {folder_of(spec.file), shop_folder}, found);
    whole = !found.failed() && profiles.roots.size() == use->items.size();
    out.add(found.take());
    Node base;
    base.form = Node::Form::map;
    for (Node& root : profiles.roots) base = merged(std::move(base), std::move(root));
    spec.root = merged(std::move(base), std::move(spec.root));
    spec.root.origin.clear();
    spec.profiles = std::move(profiles.uses);
  }
  if (whole) complete(spec.root, spec_keys(), out);
  check_language(world, spec.root, out);
}

}  // namespace

Outcome<Spec> read_spec(World& world, const std::string& path, const std::string& shop_folder) {
  auto text = world.read(path);
  if (!text) {
    Diagnostic d = complaint({path, 0, 0, 0}, "the file cannot be read", "",
                             "check its name and whether it may be read");
    d.fault = Fault::file;
    return failure<Spec>(std::move(d));
  }
  Spec spec;
  spec.file = path;
  spec.text = std::move(*text);
  Complaints complaints;
  const SourceText source(path, spec.text);
  auto root = conformed(source, parse_yaml(source), {spec_keys(), Document::spec}, complaints);
  if (root) {
    spec.root = std::move(*root);
    join_profiles(world, spec, shop_folder, complaints);
  }
  return outcome(std::move(spec), complaints);
}

Outcome<Node> read_document(const YamlFile& file, std::span<const Key> table) {
  return whole(file.source(), {file.tree().opened(), file.problems()}, table);
}

Outcome<Node> read_document(std::string_view text, const std::string& file,
                            std::span<const Key> table) {
  const SourceText source(file, text);
  return whole(source, parse_yaml(source), table);
}

Outcome<Node> read_part(const YamlFile& file, const std::string& section, const PackedEntry& entry,
                        std::span<const Key> table) {
  Raw one, all;
  one.form = all.form = Raw::Form::map;
  one.where = all.where = entry.name();
  one.entries.push_back(
      {std::string(entry.key), entry.name(), entry.begin, entry.end, entry.value.opened()});
  all.entries.push_back({section, entry.name(), entry.begin, entry.end, std::move(one)});
  return whole(file.source(), {std::move(all), {}}, table);
}

}  // namespace loamsheet
