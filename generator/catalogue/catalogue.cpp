#include "catalogue/catalogue.h"

#include "catalogue/fact_line.h"
#include "catalogue/file.h"
#include "catalogue/keys.h"
#include "catalogue/materials.h"

namespace loamsheet {
namespace {

const std::string folder = "specs/catalogue/";

// Reads a file of one section and hands each of its entries on.
template <class Use>
void each_entry(World& world, const std::string& section, std::span<const Key> table,
                const std::pair<Sink&, Use>& to) {
  const auto tree = data_tree(world, folder + section + ".yaml", table, to.first);
  const Node* entries = tree ? tree->find(section) : nullptr;
  if (!entries) return;
  for (const auto& [id, entry] : entries->entries) to.second(id, entry);
}

template <class Use>
std::pair<Sink&, Use> into(Sink& sink, Use use) {
  return {sink, use};
}

void read_sources(World& world, Catalogue& out, Sink& sink) {
  each_entry(world, "sources", source_keys(), into(sink, [&](const std::string& id, const Node& n) {
               out.sources[id] = {id, n.text("title").value_or(""), n.text("link").value_or("")};
             }));
}

void read_light(World& world, Catalogue& out, Sink& sink) {
  each_entry(world, "light", light_keys(), into(sink, [&](const std::string& id, const Node& n) {
               const Node* from = n.find("from");
               const auto ppfd = n.range("ppfd");
               if (from && ppfd) out.light[id] = {{*ppfd, origin_of(*from, out.sources, sink)}};
             }));
}

void read_materials(World& world, Catalogue& out, Sink& sink) {
  each_entry(world, "materials", material_keys(),
             into(sink, [&](const std::string& id, const Node& n) {
               out.materials[id] = material_of(id, n, out.sources, sink);
               sink.add(contradictions(out.materials[id]));
             }));
}

void read_mixes(World& world, Catalogue& out, Sink& sink) {
  each_entry(world, "mixes", mix_keys(), into(sink, [&](const std::string& id, const Node& n) {
               out.mixes[id] = mix_of(id, n, out, sink);
             }));
}

void take_shelf(World& world, const std::string& section, Shelf& out, Sink& sink) {
  if (auto shelf = taken(read_shelf(world, section), sink)) out = std::move(*shelf);
}

}  // namespace

Outcome<Catalogue> read_catalogue(World& world) {
  Sink sink;
  Catalogue out;
  read_sources(world, out, sink);
  read_light(world, out, sink);
  read_materials(world, out, sink);
  read_mixes(world, out, sink);
  take_shelf(world, "animals", out.animals, sink);
  take_shelf(world, "plants", out.plants, sink);
  take_shelf(world, "crew", out.crew, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(out), sink.take()};
}

}  // namespace loamsheet
