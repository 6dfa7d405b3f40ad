#include "catalogue/file.h"

namespace loamsheet {

Span whole_file(const std::string& path) {
  Span span;
  span.file = path;
  return span;
}

std::optional<DataFile> data_file(World& world, const std::string& name, Sink& sink) {
  const std::string path = world.data(name);
  auto text = world.read(path);
  if (text) return DataFile{path, std::move(*text)};
  sink.add({.where = whole_file(path),
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
