#include "read/language.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {

void check_language(World& world, const Node& spec, Complaints& out) {
  const auto typed = spec.text("print.language");
  if (!typed || *typed == reference_language) return;
  const auto known = world.folders(world.data("templates"));
  if (std::find(known.begin(), known.end(), *typed) != known.end()) return;
  Diagnostic d = complaint(spec.find("print.language")->where,
                           "there are no words for the language '" + *typed + "'");
  d.expected = "a folder of templates/: " + join(known, ", ");
  if (const auto near = closest(*typed, known)) {
    d.hint = "did you mean '" + *near + "'?";
    d.edit = Edit{d.where, *near};
  }
  out.add(std::move(d));
}

}  // namespace loamsheet
