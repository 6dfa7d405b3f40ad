#include "catalogue/entry.h"

#include "catalogue/file.h"
#include "read/read.h"

namespace loamsheet {

std::optional<Node> read_entry(const Shelf& shelf, const std::string& id,
                               std::span<const Key> table, Sink& sink) {
  if (!shelf.has(id)) {
    sink.add({.where = whole_file(shelf.file), .message = "there is no '" + id + "'"});
    return std::nullopt;
  }
  const Entry& entry = shelf.at(id);
  auto tree = taken(read_part(*entry.file, shelf.section, entry.at, table), sink);
  if (!tree || tree->entries.empty()) return std::nullopt;
  Node& section = tree->entries.front().second;
  return section.entries.empty() ? std::nullopt
                                 : std::optional(std::move(section.entries.front().second));
}

}  // namespace loamsheet
