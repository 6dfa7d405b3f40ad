#include "catalogue/catalogue.h"

#include "base/text.h"
#include "catalogue/entry.h"
#include "catalogue/fact_line.h"
#include "catalogue/file.h"
#include "catalogue/keys.h"

namespace loamsheet {
namespace {

class CatalogueReader {
 public:
  explicit CatalogueReader(World& world) : world_(world) {}

  Outcome<Catalogue> read() {
    read_shelf_to("sources", out_.sources);
    read_shelf_to("materials", out_.materials);
    read_light();
    read_currencies();
    read_shelf_to("mixes", out_.mixes);
    read_shelf_to("animals", out_.animals);
    read_shelf_to("plants", out_.plants);
    read_shelf_to("crew", out_.crew);
    read_shelf_to("groups", out_.groups);
    out_.hazards = read_hazards(world_, out_.sources, sink_);
    if (auto soft = taken(read_soft_weights(world_), sink_)) out_.soft = *soft;
    const auto rules = rules_file(world_, sink_);
    out_.choosing = choosing_file(world_, sink_);
    if (sink_.failed()) return {std::nullopt, sink_.take()};
    out_.rules = std::async(std::launch::async, [rules] { return rules_in(*rules); });
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

  void read_light() {
    const auto tree = data_tree(world_, "specs/catalogue/light.yaml", light_keys(), sink_);
    for (const auto& [section, list] : tree ? tree->entries : Entries{}) {
      for (const auto& [id, n] : list.entries) read_light_row(section, id, n);
    }
  }

  void read_light_row(const std::string& section, const std::string& id, const Node& n) {
    const Node* from = n.find("from");
    if (!from) return;
    const Origin origin = origin_of(*from, out_.sources, sink_);
    const auto ppfd = n.range("ppfd");
    const auto per_lux = n.number("per_lux");
    if (section == "light" && ppfd) out_.light[id] = {{*ppfd, origin}};
    if (section == "spectra" && per_lux) out_.spectra[id] = {*per_lux, origin};
  }

  void read_currencies() {
    for (const auto& [name, n] : entries("currencies", currency_keys())) {
      if (const Node* from = n.find("from")) origin_of(*from, out_.sources, sink_);
      const int decimals = static_cast<int>(n.number("decimals").value_or(0));
      for (const auto& code : split(n.text("codes").value_or(""), ' ')) {
        if (!code.empty()) out_.currencies[code] = decimals;
      }
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

Outcome<Source> read_source(const Catalogue& catalogue, const std::string& id) {
  Sink sink;
  const auto node = read_entry(catalogue.sources, id, source_keys(), sink);
  if (!node) return {std::nullopt, sink.take()};
  return {Source{id, node->text("title").value_or(""), node->text("link").value_or(""),
                 node->text("jurisdiction").value_or("")},
          sink.take()};
}

std::map<std::string, Source> read_sources(const Catalogue& catalogue) {
  std::map<std::string, Source> all;
  for (const std::string& id : catalogue.sources.ids()) {
    if (auto source = read_source(catalogue, id)) all[id] = std::move(*source.value);
  }
  return all;
}

}  // namespace loamsheet
