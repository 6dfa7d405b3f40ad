#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "finish/steps.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;
using Dictionary = std::map<std::string, Object>;

Object column_or_row(const std::string& scope) {
  return Object::newDictionary(
      Dictionary{{"/O", Object::newName("/Table")}, {"/Scope", Object::newName("/" + scope)}});
}

Object placed_at(const Box& box) {
  return Object::newDictionary(Dictionary{
      {"/O", Object::newName("/Layout")},
      {"/Placement", Object::newName("/Block")},
      {"/BBox", Object::newArray({Object::newReal(box.left, 2), Object::newReal(box.bottom, 2),
                                  Object::newReal(box.right, 2), Object::newReal(box.top, 2)})}});
}

// Builds the tree: one element a tag, its own marked content before its children.
class Tree {
 public:
  Tree(QPDF& pdf, const Pages& pages, const Content& content)
      : pdf_(pdf),
        pages_(pages),
        content_(content),
        root_(pdf.makeIndirectObject(Object::newDictionary())) {}

  Object build() {
    for (const auto& tag : pages_.tags) elements_.push_back(element(tag));
    Object by_page = Object::newArray();
    for (size_t page = 0; page < pages_.pages.size(); ++page) add_page(page, by_page);
    attach_children();
    root_.replaceKey("/Type", Object::newName("/StructTreeRoot"));
    root_.replaceKey("/ParentTree", pdf_.makeIndirectObject(
                                        Object::newDictionary(Dictionary{{"/Nums", by_page}})));
    root_.replaceKey("/ParentTreeNextKey", Object::newInteger(long(pages_.pages.size())));
    return root_;
  }

 private:
  QPDF& pdf_;
  const Pages& pages_;
  const Content& content_;
  Object root_;
  std::vector<Object> elements_;

  Object element(const Tag& tag) {
    if (tag.parent >= static_cast<int>(elements_.size())) {
      throw Mismatch("a tag comes before its parent");
    }
    Dictionary entries{{"/Type", Object::newName("/StructElem")},
                       {"/S", Object::newName("/" + tag.role)},
                       {"/P", tag.parent < 0 ? root_ : elements_[tag.parent]},
                       {"/K", Object::newArray()}};
    if (!tag.alt.empty()) entries["/Alt"] = Object::newUnicodeString(tag.alt);
    if (!tag.scope.empty()) entries["/A"] = column_or_row(tag.scope);
    return pdf_.makeIndirectObject(Object::newDictionary(entries));
  }

  // Hangs the page's marked content on its elements and enters both in the parent tree.
  void add_page(size_t index, Object& by_page) {
    Object page = pdf_.getAllPages().at(index);
    Object owners = Object::newArray();
    const auto& tags = content_[index].tag_of_id;
    for (size_t id = 0; id < tags.size(); ++id) {
      owners.appendItem(elements_[tags[id]]);
      add_content(elements_[tags[id]], page, static_cast<int>(id));
    }
    for (const auto& mark : pages_.pages[index].marks) place_figure(mark);
    page.replaceKey("/StructParents", Object::newInteger(long(index)));
    page.replaceKey("/Tabs", Object::newName("/S"));
    by_page.appendItem(Object::newInteger(long(index)));
    by_page.appendItem(pdf_.makeIndirectObject(owners));
  }

  void place_figure(const PageMark& mark) {
    const auto* figure = std::get_if<FigureMark>(&mark);
    if (figure && figure->tag >= 0) {
      elements_[figure->tag].replaceKey("/A", placed_at(figure->box));
    }
  }

  // An element's /Pg is the page where it begins; content on a later page names its own.
  void add_content(Object element, Object page, int id) {
    if (!element.hasKey("/Pg")) element.replaceKey("/Pg", page);
    Object piece = Object::newInteger(id);
    if (element.getKey("/Pg").getObjGen() != page.getObjGen()) {
      piece = Object::newDictionary(
          Dictionary{{"/Type", Object::newName("/MCR")}, {"/Pg", page}, {"/MCID", piece}});
    }
    element.getKey("/K").appendItem(piece);
  }

  void attach_children() {
    Object top = Object::newArray();
    for (size_t i = 0; i < elements_.size(); ++i) {
      const int parent = pages_.tags[i].parent;
      (parent < 0 ? top : elements_[parent].getKey("/K")).appendItem(elements_[i]);
    }
    root_.replaceKey("/K", top);
    for (auto& element : elements_) drop_array_of_one(element);
  }

  static void drop_array_of_one(Object element) {
    Object kids = element.getKey("/K");
    if (kids.getArrayNItems() == 0) element.removeKey("/K");
    if (kids.getArrayNItems() == 1) element.replaceKey("/K", kids.getArrayItem(0));
  }
};

}  // namespace

void write_structure(QPDF& pdf, const Pages& pages, const Content& content) {
  if (pages.tags.empty()) return;
  Object catalog = pdf.getRoot();
  catalog.replaceKey("/StructTreeRoot", Tree(pdf, pages, content).build());
  catalog.replaceKey("/MarkInfo",
                     Object::newDictionary(Dictionary{{"/Marked", Object::newBool(true)}}));
}

}  // namespace loamsheet
