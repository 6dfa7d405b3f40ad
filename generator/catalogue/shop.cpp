// A shop's own additions to the catalogue.
#include "catalogue/catalogue.h"
#include "catalogue/keys.h"
#include "catalogue/living.h"
#include "read/read.h"

namespace loamsheet {
namespace {

// The keys of every section that a shop's file may hold, none of which must be there.
std::vector<Key> shop_keys() {
  std::vector<Key> all;
  for (const auto rows :
       {source_keys(), material_keys(), mix_keys(), animal_keys(), plant_keys(), crew_keys()}) {
    for (Key key : rows) {
      if (key.path.find('.') == std::string_view::npos) key.flags &= ~flag::required;
      all.push_back(key);
    }
  }
  return all;
}

class Adding {
 public:
  Adding(Catalogue& catalogue, Sink& sink) : catalogue_(catalogue), sink_(sink) {}

  void add(const YamlFilePtr& file, const Node& root) {
    for (Shelf* shelf : {&catalogue_.sources, &catalogue_.materials, &catalogue_.mixes,
                         &catalogue_.animals, &catalogue_.plants, &catalogue_.crew}) {
      shelf->add(file);
    }
    each(root, "sources", read_source);
    each(root, "materials", read_material);
    each(root, "mixes", read_mix);
    each(root, "animals", read_animal);
    each(root, "plants", read_plant);
    each(root, "crew", read_crew);
  }

 private:
  // Reads every entry of a section, for what is wrong with it.
  template <class T>
  void each(const Node& root, const char* section,
            Outcome<T> (*read)(const Catalogue&, const std::string&)) {
    const Node* found = root.find(section);
    if (!found) return;
    for (const auto& [id, node] : found->entries) taken(read(catalogue_, id), sink_);
  }

  Catalogue& catalogue_;
  Sink& sink_;
};

}  // namespace

std::vector<Diagnostic> add_entries(Catalogue& catalogue, const std::string& name,
                                    const std::string& text) {
  Sink sink;
  const auto file = std::make_shared<const YamlFile>(name, text);
  // Nodes point to their rows, so the table outlives them.
  const std::vector<Key> table = shop_keys();
  const auto root = taken(read_document(*file, table), sink);
  if (root && !sink.failed()) Adding(catalogue, sink).add(file, *root);
  return sink.take();
}

}  // namespace loamsheet
