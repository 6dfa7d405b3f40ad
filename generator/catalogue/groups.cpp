#include "catalogue/groups.h"

#include <algorithm>

#include "catalogue/entry.h"
#include "catalogue/fact_line.h"
#include "catalogue/keys.h"

namespace loamsheet {

Body read_body(const BodyShelves& shelves, std::string group, Sink& sink) {
  Body body;
  std::replace(group.begin(), group.end(), ' ', '-');
  if (!shelves.groups.has(group)) return body;
  const auto lines = read_entry(shelves.groups, group, group_keys(), sink);
  if (!lines) return body;
  for (const Node& node : lines->items) {
    const FactLine line(node, shelves.sources, sink);
    line.take("skin_takes_up", body.skin_takes_up);
    line.take("moults_bare", body.moults_bare);
    line.take("thickness", body.thickness);
  }
  return body;
}

}  // namespace loamsheet
