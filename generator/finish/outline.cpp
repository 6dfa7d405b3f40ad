#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "base/text.h"
#include "finish/steps.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

// An outline item while the outline is built.
struct Item {
  Object object;
  int level;
};

Object target(Object page, double top) {
  return Object::newArray({page, Object::newName("/XYZ"), Object::newInteger(0),
                           Object::newReal(fixed(top, 2)), Object::newNull()});
}

Object new_item(QPDF& pdf, const Bookmark& bookmark) {
  const auto& pages = pdf.getAllPages();
  if (bookmark.page < 0 || bookmark.page >= static_cast<int>(pages.size())) {
    throw Mismatch("bookmark " + bookmark.title + " points at no page");
  }
  Object item = pdf.makeIndirectObject(Object::newDictionary());
  item.replaceKey("/Title", Object::newUnicodeString(bookmark.title));
  item.replaceKey("/Dest", target(pages[bookmark.page], bookmark.top));
  return item;
}

// Adds `item` as the last child of `parent`. Every item is shown open.
void append(Object parent, Object item) {
  item.replaceKey("/Parent", parent);
  if (parent.hasKey("/Last")) {
    item.replaceKey("/Prev", parent.getKey("/Last"));
    parent.getKey("/Last").replaceKey("/Next", item);
  } else {
    parent.replaceKey("/First", item);
  }
  parent.replaceKey("/Last", item);
}

// /Count is the number of items shown below one, at every depth.
void count_up(const std::vector<Item>& above) {
  for (const auto& item : above) {
    Object object = item.object;
    const auto before = object.hasKey("/Count") ? object.getKey("/Count").getIntValue() : 0;
    object.replaceKey("/Count", Object::newInteger(before + 1));
  }
}

}  // namespace

void write_outline(QPDF& pdf, const Pages& pages) {
  if (pages.bookmarks.empty()) return;
  std::vector<Item> above{{pdf.makeIndirectObject(Object::newDictionary()), 0}};
  for (const auto& bookmark : pages.bookmarks) {
    while (above.size() > 1 && above.back().level >= bookmark.level) above.pop_back();
    Object item = new_item(pdf, bookmark);
    append(above.back().object, item);
    count_up(above);
    above.push_back({item, bookmark.level});
  }
  Object outline = above.front().object;
  outline.replaceKey("/Type", Object::newName("/Outlines"));
  pdf.getRoot().replaceKey("/Outlines", outline);
  pdf.getRoot().replaceKey("/PageMode", Object::newName("/UseOutlines"));
}

}  // namespace loamsheet
