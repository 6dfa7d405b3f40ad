#include "catalogue/catalogue.h"

#include "catalogue/fact_line.h"
#include "catalogue/file.h"
#include "catalogue/keys.h"
#include "catalogue/materials.h"

namespace loamsheet {
namespace {

class CatalogueReader {
 public:
  explicit CatalogueReader(World& world) : world_(world) {}

  Outcome<Catalogue> read() {
    read_sources();
    read_light();
    read_materials();
    if (!sink_.failed()) read_mixes();
    read_shelf_to("animals", out_.animals);
    read_shelf_to("plants", out_.plants);
    read_shelf_to("crew", out_.crew);
    if (sink_.failed()) return {std::nullopt, sink_.take()};
    return {std::move(out_), sink_.take()};
  }

 private:
  using Entries = std::vector<std::pair<std::string, Node>>;

  // The entries of a file of one section.
  Entries entries(const std::string& section, std::span<const Key> table) {
    auto tree = data_tree(world_, "specs/catalogue/" + section + ".yaml", table, sink_);
    for (auto& [name, node] : tree ? tree->entries : Entries{}) {
      if (name == section) return std::move(node.entries);
    }
    return {};
  }

  void read_sources() {
    for (const auto& [id, n] : entries("sources", source_keys())) {
      out_.sources[id] = {id, n.text("title").value_or(""), n.text("link").value_or("")};
    }
  }

  void read_light() {
    for (const auto& [id, n] : entries("light", light_keys())) {
      const Node* from = n.find("from");
      const auto ppfd = n.range("ppfd");
      if (from && ppfd) out_.light[id] = {{*ppfd, origin_of(*from, out_.sources, sink_)}};
    }
  }

  void read_materials() {
    for (const auto& [id, n] : entries("materials", material_keys())) {
      out_.materials[id] = material_of(id, n, out_.sources, sink_);
      sink_.add(contradictions(out_.materials[id]));
    }
  }

  void read_mixes() {
    for (const auto& [id, n] : entries("mixes", mix_keys())) {
      out_.mixes[id] = mix_of(id, n, out_, sink_);
    }
  }

  void read_shelf_to(const std::string& section, Shelf& to) {
    if (auto shelf = taken(read_shelf(world_, section), sink_)) to = std::move(*shelf);
  }

  World& world_;
  Catalogue out_;
  Sink sink_;
};

}  // namespace

Outcome<Catalogue> read_catalogue(World& world) {
  return CatalogueReader(world).read();
}

}  // namespace loamsheet
