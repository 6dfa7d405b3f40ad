#include <map>

#include "base/text.h"
#include "sheet.h"

namespace loamsheet {
namespace {

// The tree as text: roles, each followed by its children in brackets; numbers are content ids.
std::string outline_of(Object node, Object page) {
  if (node.isInteger()) return std::to_string(node.getIntValue());
  if (node.isDictionaryOfType("/MCR")) {
    CHECK(node.getKey("/Pg").getObjGen() != page.getObjGen());
    return "elsewhere " + std::to_string(node.getKey("/MCID").getIntValue());
  }
  Object kids = node.getKey("/K");
  std::vector<std::string> parts;
  if (kids.isArray()) {
    for (auto& kid : kids.aitems()) parts.push_back(outline_of(kid, node.getKey("/Pg")));
  } else if (!kids.isNull()) {
    parts.push_back(outline_of(kids, node.getKey("/Pg")));
  }
  return node.getKey("/S").getName().substr(1) + "(" + join(parts, " ") + ")";
}

Object page_of(Opened& sheet, int index) {
  return sheet.pdf.getAllPages().at(index);
}

Object root_element(QPDF& pdf) {
  return pdf.getRoot().getKey("/StructTreeRoot").getKey("/K");
}

}  // namespace

TEST_CASE("the tree has the tags in their order, content before children") {
  Opened sheet(Archive::full);
  CHECK(outline_of(root_element(sheet.pdf), Object::newNull()) ==
        "Document(H1(0) P(1 elsewhere 0) Figure(2) Table(TR(TH(1) TD(2))))");
}

TEST_CASE("the parent tree leads from content back to its element") {
  Opened sheet(Archive::plain);
  Object numbers =
      sheet.pdf.getRoot().getKey("/StructTreeRoot").getKey("/ParentTree").getKey("/Nums");
  REQUIRE(numbers.getArrayNItems() == 4);
  for (int page = 0; page < 2; ++page) {
    Object key = page_of(sheet, page).getKey("/StructParents");
    CHECK(key.getIntValue() == numbers.getArrayItem(2 * page).getIntValue());
  }
  std::vector<std::string> roles;
  for (auto& owner : numbers.getArrayItem(3).aitems())
    roles.push_back(owner.getKey("/S").getName());
  CHECK(roles == std::vector<std::string>{"/P", "/TH", "/TD"});
}

TEST_CASE("a figure says what it shows and where it lies, a head cell what it heads") {
  Opened sheet(Archive::full);
  Object figure = root_element(sheet.pdf).getKey("/K").getArrayItem(2);
  CHECK(figure.getKey("/Alt").getUTF8Value() == "The tank from the front");
  CHECK(figure.getKey("/A").getKey("/BBox").unparse() == "[ 50.00 500.00 333.46 641.73 ]");
  Object row = root_element(sheet.pdf).getKey("/K").getArrayItem(3).getKey("/K");
  CHECK(row.getKey("/K").getArrayItem(0).getKey("/A").getKey("/Scope").getName() == "/Column");
}

TEST_CASE("the document says that it is tagged, its language and how to tab") {
  Opened sheet(Archive::full);
  Object catalog = sheet.pdf.getRoot();
  CHECK(catalog.getKey("/MarkInfo").getKey("/Marked").getBoolValue());
  CHECK(catalog.getKey("/Lang").getUTF8Value() == "en");
  CHECK(catalog.getKey("/ViewerPreferences").getKey("/DisplayDocTitle").getBoolValue());
  CHECK(page_of(sheet, 0).getKey("/Tabs").getName() == "/S");
}

TEST_CASE("bookmarks are nested by level and point at their places") {
  Opened sheet(Archive::full);
  Object outline = sheet.pdf.getRoot().getKey("/Outlines");
  Object first = outline.getKey("/First"), last = outline.getKey("/Last");
  CHECK(outline.getKey("/Count").getIntValue() == 3);
  CHECK(first.getKey("/Title").getUTF8Value() == "Build sheet");
  CHECK(first.getKey("/First").getKey("/Title").getUTF8Value() == "Layers");
  CHECK(first.getKey("/Count").getIntValue() == 1);
  CHECK(first.getKey("/Next").getObjGen() == last.getObjGen());
  CHECK(last.getKey("/Prev").getObjGen() == first.getObjGen());
  Object place = last.getKey("/Dest");
  CHECK(place.getArrayItem(0).getObjGen() == sheet.pdf.getAllPages()[1].getObjGen());
  CHECK(place.getArrayItem(3).getNumericValue() == 520);
}

}  // namespace loamsheet
