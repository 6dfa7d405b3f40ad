// A shop's own additions to the catalogue.
#include <catch2/catch.hpp>

#include "catalogue/catalogue.h"
#include "catalogue/living.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

Catalogue real() {
  return read_catalogue(*real_world()).value.value();
}

std::string said(const std::string& text) {
  Catalogue catalogue = real();
  std::string out;
  for (const Diagnostic& d : add_entries(catalogue, "shop.yaml", text)) {
    out += d.where.file + ':' + std::to_string(d.where.line) + ':' +
           std::to_string(d.where.column) + ' ' + d.message + '\n';
  }
  return out;
}

}  // namespace

TEST_CASE("a shop's file adds entries of every kind and overrides those of the catalogue") {
  Catalogue c = real();
  const auto messages = add_entries(c, "shop.yaml", R"(
sources:
  shop-card: {title: "plant cards"}
materials:
  shop-chips:
    name: shop chips
    role: substrate
    facts:
      - {from: shop-card, dry_density: 200 kg/m3, hazards: [resinous-wood]}
mixes:
  shop-mix:
    name: shop mix
    for: humid
    from: common practice
    parts: {shop-chips: 2, sand: 1}
animals:
  shop-gecko:
    name: shop gecko
    facts:
      - {from: common practice, group: small arboreal gecko, mass: 3 g}
plants:
  ficus-pumila:
    name: our fig
    synonyms: [shop-fig]
    facts:
      - {from: shop-card, habit: climber}
crew:
  shop-springtail:
    name: shop springtail
    facts:
      - {from: common practice, group: springtail}
)");
  CHECK(messages.empty());
  CHECK(read_plant(c, "ficus-pumila").value->name == "our fig");
  CHECK_FALSE(read_plant(c, "ficus-pumila").value->robustness);
  CHECK(c.plants.renamed("shop-fig") == "ficus-pumila");
  CHECK(read_animal(c, "shop-gecko").value->body.skin_takes_up->value == false);
  CHECK(read_material(c, "shop-chips").value->hazards[0].kind == "resinous-wood");
  CHECK(read_mix(c, "shop-mix").value->parts.size() == 2);
  CHECK(read_crew(c, "shop-springtail").value->group->value == "springtail");
  CHECK(read_source(c, "shop-card").value->title == "plant cards");
  CHECK(read_plant(c, "fittonia-albivenis").value);
}

TEST_CASE("mistakes of a shop's file are told at their line") {
  CHECK(said("plants:\n  a-fern:\n    name: a\n    facts:\n      - {from: card, light: low}\n") ==
        "shop.yaml:5:16 unknown source 'card'\n");
  CHECK(
      said("plants:\n  a-fern:\n    name: a\n    facts:\n      - {from: from memory, light: lo}\n")
          .starts_with("shop.yaml:5:36 "));
  CHECK(said("plants:\n  a-fern:\n    name: a\n").starts_with("shop.yaml:2:3 "));
  CHECK(said("plant:\n  a-fern:\n    name: a\n").starts_with("shop.yaml:1:1 "));
  CHECK(said("plants: [\n").starts_with("shop.yaml:"));
  CHECK(said("mixes:\n  m:\n    name: m\n    for: arid\n    from: common practice\n"
             "    parts: {sandd: 1}\n") == "shop.yaml:6:13 unknown material 'sandd' in a mix\n");
}

TEST_CASE("a shop's file is laid out as its writer likes") {
  CHECK(said("plants:\n   a-fern:\n     name: a\n     facts: [{from: from memory, light: low}]\n")
            .empty());
  CHECK(
      said("\"plants\": {a-fern: {name: a, facts: [{from: from memory, light: low}]}}\n").empty());
}

TEST_CASE("an empty file of a shop's adds nothing") {
  CHECK(said("plants: {}\n").empty());
}
