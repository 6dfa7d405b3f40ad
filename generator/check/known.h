// known: how well a value of the build is known, and where one that the spec did not state is from.
#pragma once
#include <string>

#include "base/span.h"
#include "base/units.h"

namespace loamsheet {

class FieldSink;

// A value that may not be known. `unknown` is its position in Build::unknowns, -1 when it is known.
template <class T>
struct Uncertain {
  Range<T> range;
  int unknown = -1;
};

struct UnknownInput {
  std::string key;  // "layers.substrate.placed"
  Span where;
  std::string from;   // whose range stands in: a profile with its revision, or "catalogue"
  std::string shown;  // that range in words of the spec: "dry–damp", "35–60 %"
};
void fields(const UnknownInput&, FieldSink&);

// A value that the spec did not state itself.
struct Assumed {
  std::string key, value, from;  // from: "humid-sloped, revision 2" or "default" or "catalogue"
  std::string item = {};         // what the list's item is called that the key belongs to: "perch"
};
void fields(const Assumed&, FieldSink&);

}  // namespace loamsheet
