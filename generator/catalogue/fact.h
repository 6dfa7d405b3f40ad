// fact: a value with its origin.
#pragma once
#include <optional>
#include <string>

namespace loamsheet {

// Where a fact comes from: a source of specs/catalogue/sources.yaml, "common practice" or
// "from memory".
struct Origin {
  std::string name;  // the id of a source, or "common practice", or "from memory"
  bool from_memory() const { return name == "from memory"; }
  bool published() const { return name != "common practice" && name != "from memory"; }
};

template <class T>
struct Fact {
  T value{};
  Origin origin;
};

// What nobody knows well enough is absent.
template <class T>
using Known = std::optional<Fact<T>>;

// One of the hazards that an entry lists.
struct Hazard {
  std::string kind;  // latex-sap, calcium-oxalate, rough, ..., none-known
  Origin origin;
};

}  // namespace loamsheet
