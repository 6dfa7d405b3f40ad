// read: bytes -> Spec, what the file says, every leaf with its place.
// In: the text of a spec and, through the World, the profiles that it uses.
// Out: Spec. Never: arithmetic, names looked up in the catalogue, defaults filled in.
#pragma once
#include <span>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "read/key.h"
#include "read/node.h"
#include "read/yaml_file.h"

namespace loamsheet {

struct ProfileUse {
  std::string name, revision, path;
};

struct Spec {
  std::string file;                  // as the user named it
  std::string text;                  // the bytes of the spec, for embedding
  Node root;                         // spec merged over its profiles
  std::vector<ProfileUse> profiles;  // in the order of `use`
};

// Where profiles are looked for: first beside the spec in `profiles/`, then `shop_folder` (the
// --profiles option; may be empty), then the program's own specs/profiles/.
Outcome<Spec> read_spec(World&, const std::string& path, const std::string& shop_folder);

// Any document that a table describes (catalogue files are read with it, too).
Outcome<Node> read_document(const YamlFile&, std::span<const Key> table);
Outcome<Node> read_document(std::string_view text, const std::string& file,
                            std::span<const Key> table);

// One entry of a section of a document, read as if it stood there alone.
Outcome<Node> read_part(const YamlFile&, const std::string& section, const PackedEntry&,
                        std::span<const Key> table);

// The JSON Schema (draft 2020-12) of a spec, and the key reference as Markdown.
std::string spec_schema();
std::string key_reference();

// The merged tree as stable text, nested by indent; a leaf has its kept value, place and origin.
std::string dump(const Spec&);

}  // namespace loamsheet
