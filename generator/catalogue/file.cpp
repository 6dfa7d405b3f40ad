#include "catalogue/file.h"

namespace loamsheet {

Span whole_file(const std::string& path) {
  Span span;
  span.file = path;
  return span;
}

std::optional<DataFile> data_file(World& world, const std::string& name, Sink& sink) {
  auto text = world.read(world.data(name));
  if (text) return DataFile{name, std::move(*text)};
  sink.add({.where = whole_file(name),
            .message = "cannot be read",
            .hint = "the installation is not complete; it should hold " + name,
            .fault = Fault::file});
  return std::nullopt;
}

std::optional<Node> data_tree(World& world, const std::string& name, std::span<const Key> table,
                              Sink& sink) {
  const auto file = data_file(world, name, sink);
  if (!file) return std::nullopt;
  return taken(read_document(file->text, file->path, table), sink);
}

}  // namespace loamsheet
