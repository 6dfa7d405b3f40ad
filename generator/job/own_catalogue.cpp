#include "job/own_catalogue.h"

#include "job/stock.h"

namespace loamsheet {
namespace {

void add_file(World& world, const Spec& spec, const Node& leaf, Catalogue& catalogue, Sink& sink) {
  const auto* name = std::get_if<std::string>(&leaf.leaf);
  if (!name) return;
  const std::string path = path_beside(spec, *name);
  const auto text = world.read(path);
  if (text) return sink.add(add_entries(catalogue, path, *text));
  sink.add({.where = leaf.where,
            .message = "the catalogue file '" + path + "' cannot be read",
            .expected = "a YAML file beside the spec",
            .fault = Fault::file});
}

}  // namespace

Outcome<Catalogue> with_own_files(World& world, const Spec& spec, Catalogue catalogue) {
  Sink sink;
  if (const Node* files = spec.root.find("catalogue")) {
    for (const Node& leaf : files->items) add_file(world, spec, leaf, catalogue, sink);
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(catalogue), sink.take()};
}

std::vector<std::string> catalogue_files(const Spec& spec) {
  std::vector<std::string> names;
  const Node* files = spec.root.find("catalogue");
  if (!files) return names;
  for (const Node& leaf : files->items) {
    if (const auto* name = std::get_if<std::string>(&leaf.leaf)) names.push_back(*name);
  }
  return names;
}

}  // namespace loamsheet
