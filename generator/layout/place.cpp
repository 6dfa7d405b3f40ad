#include "layout/place.h"

#include <cmath>

namespace loamsheet {
namespace {

// libharu writes five decimals of a float; a hundredth of a point is far finer than a printer.
double rounded(double v) {
  return std::round(v * 100) / 100;
}

struct Mover {
  double x, y;
  Point moved(Point p) const { return {rounded(p.x + x), rounded(p.y + y)}; }
  void operator()(TextMark& m) const { m.at = moved(m.at); }
  void operator()(RuleMark& m) const { m.from = moved(m.from), m.to = moved(m.to); }
  void operator()(BoxMark& m) const { move(m.box); }
  void operator()(FigureMark& m) const { move(m.box); }
  void move(Box& b) const {
    const Point low = moved({b.left, b.bottom}), high = moved({b.right, b.top});
    b = {low.x, low.y, high.x, high.y};
  }
};

// A repeated head is not read again: its text becomes an artifact.
Band unread(Band head) {
  for (PageMark& mark : head.marks) {
    if (auto* text = std::get_if<TextMark>(&mark)) text->tag = -1;
  }
  return head;
}

void add_marks(const Band& band, Point at, Page& page) {
  for (PageMark mark : band.marks) {
    std::visit(Mover{at.x, at.y}, mark);
    page.marks.push_back(std::move(mark));
  }
}

void add_bookmarks(const Flow& flow, size_t band, double top, Pages& pages) {
  for (const Anchor& a : flow.anchors) {
    if (a.band != band) continue;
    const int page = static_cast<int>(pages.pages.size());
    pages.bookmarks.push_back({a.title, a.level, page, rounded(top)});
  }
}

}  // namespace

void place(const Flow& flow, const std::vector<Slice>& slices, const Paper& paper, Pages& pages) {
  for (const Slice& slice : slices) {
    Page page;
    page.width = rounded(paper.width);
    page.height = rounded(paper.height);
    page.body = paper.body;
    double y = paper.body.top;
    if (slice.head >= 0) {
      const Band head = unread(flow.heads[static_cast<size_t>(slice.head)]);
      add_marks(head, {paper.body.left, y}, page);
      y -= head.height;
    }
    for (size_t i = slice.from; i < slice.to; ++i) {
      if (i > slice.from) y -= flow.bands[i].space;
      add_bookmarks(flow, i, y, pages);
      add_marks(flow.bands[i], {paper.body.left, y}, page);
      y -= flow.bands[i].height;
    }
    pages.pages.push_back(std::move(page));
  }
}

}  // namespace loamsheet
