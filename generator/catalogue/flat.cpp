#include "catalogue/flat.h"

#include <algorithm>

#include "catalogue/file.h"

namespace loamsheet {
namespace {

// Whatever is wrong with such a file is wrong with the installation.
Diagnostic of_file(Diagnostic d) {
  d.fault = Fault::file;
  return d;
}

Diagnostic no_line(Span where) {
  return of_file({.where = std::move(where),
                  .message = "this line is not a name and its value",
                  .expected = "one line such as: layers.heading: \"Layers\""});
}

}  // namespace

const FlatLine* FlatFile::find(std::string_view name) const {
  const auto found = std::find_if(lines.begin(), lines.end(),
                                  [&](const FlatLine& line) { return line.name == name; });
  return found == lines.end() ? nullptr : &*found;
}

FlatFile flat_file(YamlFilePtr file, Sink& sink) {
  for (const Diagnostic& d : file->problems()) sink.add(of_file(d));
  const Packed tree = file->tree();
  const bool readable = tree.form() == Raw::Form::map || tree.form() == Raw::Form::nothing;
  if (!readable) sink.add(no_line(tree.where()));
  FlatFile flat{std::move(file), {}};
  for (const PackedEntry& entry : tree.entries()) {
    const auto value = entry.value.text();
    if (!value) sink.add(no_line(entry.name()));
    if (!value) continue;
    flat.lines.push_back({entry.key, *value, entry.file, entry.line, entry.column, entry.length});
  }
  return flat;
}

std::optional<FlatFile> read_flat(World& world, const std::string& name, Sink& sink) {
  auto file = data_file(world, name, sink);
  if (!file) return std::nullopt;
  return flat_file(std::move(file), sink);
}

}  // namespace loamsheet
