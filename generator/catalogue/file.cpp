#include "catalogue/file.h"

#include "read/compiled.h"

namespace loamsheet {

Span whole_file(const std::string& path) {
  Span span;
  span.file = path;
  return span;
}

std::optional<std::string> data_bytes(World& world, const std::string& name, Sink& sink) {
  auto bytes = world.read(world.data(name));
  if (bytes) return bytes;
  sink.add({.where = whole_file(name),
            .message = "cannot be read",
            .hint = "the installation is not complete; it should hold " + name,
            .fault = Fault::file});
  return std::nullopt;
}

YamlFilePtr data_file(World& world, const std::string& name, Sink& sink) {
  auto text = data_bytes(world, name, sink);
  return text ? shipped_file(world.compiled(), name, std::move(*text)) : nullptr;
}

std::optional<Node> data_tree(World& world, const std::string& name, std::span<const Key> table,
                              Sink& sink) {
  const auto file = data_file(world, name, sink);
  if (!file) return std::nullopt;
  return taken(read_document(*file, table), sink);
}

}  // namespace loamsheet
