#include "base/text.h"
#include "layout/layout.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return ' ' + fixed(v, 2);
}
std::string number(Point p) {
  return number(p.x) + number(p.y);
}
std::string number(const Box& b) {
  return number(b.left) + number(b.bottom) + number(b.right) + number(b.top);
}
std::string tagged(int tag) {
  return tag < 0 ? " -" : ' ' + std::to_string(tag);
}

struct MarkLine {
  std::string operator()(const TextMark& m) const {
    constexpr const char* faces[] = {" regular", " bold", " italic"};
    return "text" + number(m.at) + number(m.width) + number(m.size) +
           faces[static_cast<int>(m.face)] + number(m.grey) + tagged(m.tag) + " | " + m.text;
  }
  std::string operator()(const RuleMark& m) const {
    std::string out = "rule" + number(m.from) + number(m.to) + number(m.width) + number(m.grey);
    for (double d : m.dashes) out += number(d);
    return out;
  }
  std::string operator()(const BoxMark& m) const {
    return "box" + number(m.box) + number(m.fill) + number(m.stroke) + number(m.stroke_width);
  }
  std::string operator()(const FigureMark& m) const {
    return "figure" + number(m.box) + tagged(m.tag) + " | " + m.id;
  }
};

std::string line(const Tag& t, size_t index) {
  std::string out = "tag " + std::to_string(index) + ' ' + t.role + tagged(t.parent);
  if (!t.scope.empty()) out += " scope " + t.scope;
  if (t.columns > 1) out += " columns " + std::to_string(t.columns);
  if (!t.alt.empty()) out += " | " + t.alt;
  return out + '\n';
}

}  // namespace

// One line a mark, a tag, a bookmark; points with two decimals; free text last, after a bar.
std::string dump(const Pages& pages) {
  std::string out = "pages v1\n";
  for (const std::string& s : {pages.title, pages.author, pages.subject, pages.language}) {
    out += "about | " + s + '\n';
  }
  for (const Page& page : pages.pages) {
    out += "page" + number(page.width) + number(page.height) + number(page.body) + '\n';
    for (const PageMark& mark : page.marks) out += "  " + std::visit(MarkLine{}, mark) + '\n';
  }
  for (size_t i = 0; i < pages.tags.size(); ++i) out += line(pages.tags[i], i);
  for (const Bookmark& b : pages.bookmarks) {
    out += "bookmark " + std::to_string(b.level) + ' ' + std::to_string(b.page) + number(b.top) +
           " | " + b.title + '\n';
  }
  return out;
}

}  // namespace loamsheet
