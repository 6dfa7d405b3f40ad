// Pass 3, paginate: which bands go on which page.
#pragma once
#include <vector>

#include "base/diagnostic.h"
#include "layout/flow.h"

namespace loamsheet {

// Bands [from, to) on one page; head: of the table that goes on from the page before, or -1.
struct Slice {
  size_t from = 0, to = 0;
  int head = -1;
};

// Each page takes what fits into `height` points and ends as late as can be, unless bands that
// hold to each other would be parted and leaving some of the page blank costs less. A band higher
// than a page is an error.
std::vector<Slice> paginate(const Flow&, double height, Sink&);

}  // namespace loamsheet
