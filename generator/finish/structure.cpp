#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "base/text.h"
#include "finish/steps.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;
using Dictionary = std::map<std::string, Object>;

// What a cell heads and spans.
Object cell(const Tag& tag) {
  Dictionary entries{{"/O", Object::newName("/Table")}};
  if (!tag.scope.empty()) entries["/Scope"] = Object::newName("/" + tag.scope);
  if (tag.columns > 1) entries["/ColSpan"] = Object::newInteger(tag.columns);
  return Object::newDictionary(entries);
}

Object placed_at(const Box& box) {
  return Object::newDictionary(Dictionary{
      {"/O", Object::newName("/Layout")},
      {"/Placement", Object::newName("/Block")},
      {"/BBox", Object::newArray(
                    {Object::newReal(fixed(box.left, 2)), Object::newReal(fixed(box.bottom, 2)),
                     Object::newReal(fixed(box.right, 2)), Object::newReal(fixed(box.top, 2))})}});
}

// Builds the tree: one element a tag, its own marked content before its children.
class Tree {
 public:
  Tree(QPDF& pdf, const Pages& pages, const Content& content)
      : pdf_(pdf), pages_(pages), content_(content), kids_(pages.tags.size()) {}

  Object build() {
    Object root = pdf_.makeIndirectObject(Object::newDictionary());
    root.replaceKey("/Type", Object::newName("/StructTreeRoot"));
    std::vector<Object> top;
    for (const auto& tag : pages_.tags) add_element(tag, root);
    add_content(root);
    for (size_t i = 0; i < elements_.size(); ++i) {
      const int parent = pages_.tags[i].parent;
      (parent < 0 ? top : kids_[parent]).push_back(elements_[i]);
    }
    for (size_t i = 0; i < elements_.size(); ++i) set_kids(elements_[i], kids_[i]);
    set_kids(root, top);
    return root;
  }

 private:
  QPDF& pdf_;
  const Pages& pages_;
  const Content& content_;
  std::vector<Object> elements_;
  std::vector<std::vector<Object>> kids_;  // of each element
  std::map<std::pair<std::string, int>, Object> cells_;

  void add_element(const Tag& tag, Object root) {
    if (tag.parent >= static_cast<int>(elements_.size())) {
      throw Mismatch("a tag comes before its parent");
    }
    Dictionary entries{{"/S", Object::newName("/" + tag.role)},
                       {"/P", tag.parent < 0 ? root : elements_[tag.parent]}};
    if (!tag.alt.empty()) entries["/Alt"] = Object::newUnicodeString(tag.alt);
    if (!tag.scope.empty() || tag.columns > 1) entries["/A"] = shared_cell(tag);
    elements_.push_back(pdf_.makeIndirectObject(Object::newDictionary(entries)));
  }

  Object shared_cell(const Tag& tag) {
    Object& shared = cells_[{tag.scope, tag.columns}];
    if (!shared.isInitialized()) shared = pdf_.makeIndirectObject(cell(tag));
    return shared;
  }

  // Hangs marked content on its elements and enters both in the parent tree.
  void add_content(Object root) {
    std::vector<Object> by_page;
    const auto& pages = pdf_.getAllPages();
    for (size_t i = 0; i < pages_.pages.size(); ++i) {
      Object page = pages.at(i);
      by_page.push_back(Object::newInteger(static_cast<long long>(i)));
      by_page.push_back(pdf_.makeIndirectObject(owners(page, content_[i].tag_of_id)));
      page.replaceKey("/StructParents", by_page[2 * i]);
      page.replaceKey("/Tabs", Object::newName("/S"));
      for (const auto& mark : pages_.pages[i].marks) place_figure(mark);
    }
    Dictionary tree{{"/Nums", Object::newArray(by_page)}};
    root.replaceKey("/ParentTree", pdf_.makeIndirectObject(Object::newDictionary(tree)));
    root.replaceKey("/ParentTreeNextKey",
                    Object::newInteger(static_cast<long long>(pages_.pages.size())));
  }

  // The elements that a page's marked content belongs to, by its id.
  Object owners(Object page, const std::vector<int>& tag_of_id) {
    std::vector<Object> owners;
    for (int tag : tag_of_id) {
      add_piece(tag, page, static_cast<long long>(owners.size()));
      owners.push_back(elements_[tag]);
    }
    return Object::newArray(owners);
  }

  // An element's /Pg is the page where it begins; content on a later page names its own.
  void add_piece(int tag, Object page, long long id) {
    Object piece = Object::newInteger(id);
    if (kids_[tag].empty()) elements_[tag].replaceKey("/Pg", page);
    if (elements_[tag].getKey("/Pg").getObjGen() != page.getObjGen()) {
      piece = Object::newDictionary(
          Dictionary{{"/Type", Object::newName("/MCR")}, {"/Pg", page}, {"/MCID", piece}});
    }
    kids_[tag].push_back(piece);
  }

  void place_figure(const PageMark& mark) {
    const auto* figure = std::get_if<FigureMark>(&mark);
    if (figure && figure->tag >= 0) {
      elements_[figure->tag].replaceKey("/A", placed_at(figure->box));
    }
  }

  static void set_kids(Object element, const std::vector<Object>& kids) {
    if (kids.size() == 1) element.replaceKey("/K", kids.front());
    if (kids.size() > 1) element.replaceKey("/K", Object::newArray(kids));
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
