#include "catalogue/shelf.h"

#include <algorithm>

#include "catalogue/file.h"

namespace loamsheet {
namespace {

Entry entry_of(const YamlFilePtr& file, const PackedEntry& at) {
  Entry entry{file, at, "", {}};
  for (const PackedEntry& field : at.value.entries()) {
    if (field.key == "name") entry.common_name = field.value.text().value_or("");
    if (field.key != "synonyms") continue;
    for (const Packed& name : field.value.items()) {
      entry.synonyms.emplace_back(name.text().value_or(""));
    }
  }
  return entry;
}

// A file of one section says so, and that section holds entries or nothing.
void check_layout(const YamlFile& file, const std::string& section, Sink& sink) {
  for (const PackedEntry& found : file.tree().entries()) {
    const auto form = found.value.form();
    const bool entries = form == Raw::Form::map || form == Raw::Form::nothing;
    if (found.key == section && entries) continue;
    sink.add({.where = found.name(),
              .message = "this is not the section that the file should hold",
              .expected = section + ": and below it entries by their ids"});
  }
}

}  // namespace

std::string_view Entry::text() const {
  return file->source().text().substr(at.begin, at.value.end() - at.begin);
}

std::vector<std::string> Shelf::ids() const {
  std::vector<std::string> out;
  for (const auto& [id, entry] : entries) out.push_back(id);
  return out;
}

std::optional<std::string> Shelf::renamed(const std::string& former) const {
  for (const auto& [id, entry] : entries) {
    if (std::find(entry.synonyms.begin(), entry.synonyms.end(), former) != entry.synonyms.end()) {
      return id;
    }
  }
  return std::nullopt;
}

void Shelf::add(const YamlFilePtr& from) {
  for (const PackedEntry& found : from->tree().entries()) {
    if (found.key != section) continue;
    for (const PackedEntry& at : found.value.entries()) {
      entries.insert_or_assign(std::string(at.key), entry_of(from, at));
    }
  }
}

Outcome<Shelf> read_shelf(World& world, const std::string& section) {
  Sink sink;
  const auto file = data_file(world, "specs/catalogue/" + section + ".yaml", sink);
  if (!file) return {std::nullopt, sink.take()};
  sink.add(file->problems());
  if (!sink.failed()) check_layout(*file, section, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  Shelf shelf{file->name(), section, {}};
  shelf.add(file);
  return {std::move(shelf), sink.take()};
}

}  // namespace loamsheet
