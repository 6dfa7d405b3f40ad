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
  const std::string document = shelf.section + ":\n" + shelf.at(id).text;
  const int first_line = shelf.at(id).line - 1;
  auto tree = taken(read_document(document, shelf.at(id).file, table, first_line), sink);
  const Node* node = tree ? tree->find(shelf.section + '.' + id) : nullptr;
  return node ? std::optional<Node>(*node) : std::nullopt;
}

}  // namespace loamsheet
