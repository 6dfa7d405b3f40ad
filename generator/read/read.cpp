#include "read/read.h"

#include "read/conform.h"
#include "read/keys.h"
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
std::optional<Node> parsed(const SourceText& source, const Against& against, Complaints& out) {
  RawDocument raw = parse_yaml(source);
  const bool read = raw.root.form != Raw::Form::nothing;
  out.add(std::move(raw.problems));
  if (!read) return std::nullopt;
  Node root = conform(source, raw.root, against, out);
  root.where.file = source.file();
  return root;
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
  auto root = parsed(SourceText(path, spec.text), {spec_keys(), Document::spec}, complaints);
  if (root) {
    spec.root = std::move(*root);
    join_profiles(world, spec, shop_folder, complaints);
  }
  return outcome(std::move(spec), complaints);
}

Outcome<Node> read_document(std::string_view text, const std::string& file,
                            std::span<const Key> table, int first_line) {
  Complaints complaints;
  const SourceText source(file, text, first_line);
  auto root = parsed(source, {table, Document::plain}, complaints);
  if (root && !table.empty()) complete(*root, table, complaints);
  return outcome(root ? std::move(*root) : Node{}, complaints);
}

}  // namespace loamsheet
