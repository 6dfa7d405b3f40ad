// Flow: one part as a column of bands, strips that no page break divides. Filled by pass 2
// (form), divided by pass 3 (paginate).
#pragma once
#include <string>
#include <vector>

#include "layout/pages.h"

namespace loamsheet {

// How strongly a band holds on to the band before it.
enum class Keep { free, wish, strong, must };

struct Band {
  double space = 0;  // above it, points; dropped at the top of a page
  double height = 0;
  std::vector<PageMark> marks;  // origin: the band's upper left corner, y up, so y <= 0
  Keep keep = Keep::free;
  int head = -1;  // in Flow::heads: what is repeated above it on a new page
};

// A bookmark at a band, before its page is known.
struct Anchor {
  std::string title;
  int level = 1;
  size_t band = 0;
};

struct Flow {
  std::vector<Band> bands;
  std::vector<Band> heads;  // table heads
  std::vector<Anchor> anchors;
};

}  // namespace loamsheet
