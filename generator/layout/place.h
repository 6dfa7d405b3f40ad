// Pass 4, place: bands at their places on paper.
#pragma once
#include <vector>

#include "layout/flow.h"
#include "layout/paginate.h"

namespace loamsheet {

// A page's paper and the area of its text, points, y up from the paper's lower edge.
struct Paper {
  double width = 0, height = 0;
  Box body;
};

// Appends the pages of a part and its bookmarks.
void place(const Flow&, const std::vector<Slice>&, const Paper&, Pages&);

}  // namespace loamsheet
