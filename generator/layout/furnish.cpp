#include "layout/furnish.h"

#include <cmath>

#include "base/text.h"
#include "layout/form.h"

namespace loamsheet {
namespace {

double rounded(double v) {
  return std::round(v * 100) / 100;
}

std::string replaced(std::string text, const std::string& slot, const std::string& by) {
  const size_t at = text.find(slot);
  return at == std::string::npos ? text : text.replace(at, slot.size(), by);
}

class Furnisher {
 public:
  Furnisher(const Typefaces& type, const PageStyle& style) : type_(type), style_(style) {}

  // Text at the left and right ends of the line with base line `y`.
  void pair(const std::string& left, const std::string& right, double y, Page& page) const {
    const TextMark r = mark(right, page.body.width());
    const double room = page.body.width() - r.width - points(style_["running.gap"]);
    add(mark(left, room), page.body.left, y, page);
    add(r, page.body.right - r.width, y, page);
  }

  void line(double y, Page& page) const {
    const double at = rounded(y);
    page.marks.emplace_back(RuleMark{{page.body.left, at},
                                     {page.body.right, at},
                                     style_["running.rule"],
                                     style_["running.rule-grey"],
                                     {}});
  }

 private:
  TextMark mark(const std::string& text, double room) const {
    TextMark m;
    m.size = style_["running.size"];
    m.grey = style_["running.grey"];
    m.text = text;
    m.width = type_.width(m.face, m.size, m.text);
    for (int n = code_points(text); n > 0 && m.width > room; --n) {
      m.text = trimmed(slice(text, 0, n - 1)) + "\u2026";
      m.width = type_.width(m.face, m.size, m.text);
    }
    return m;
  }

  static void add(TextMark m, double x, double y, Page& page) {
    if (m.text.empty()) return;
    m.at = {rounded(x), rounded(y)};
    page.marks.push_back(std::move(m));
  }

  const Typefaces& type_;
  const PageStyle& style_;
};

}  // namespace

void furnish(const Sheet& sheet, const Typefaces& type, const PageStyle& style, Pages& pages) {
  const Furnisher furnisher(type, style);
  const std::string count = std::to_string(pages.pages.size());
  for (size_t i = 0; i < pages.pages.size(); ++i) {
    Page& page = pages.pages[i];
    const double head = page.height - points(style["running.head"]);
    const double foot = points(style["running.foot"]);
    furnisher.pair(sheet.running_left, sheet.running_right, head, page);
    furnisher.line(head - points(style["running.rule-gap"]), page);
    const std::string number = replaced(sheet.page_of, "{page}", std::to_string(i + 1));
    furnisher.pair(sheet.foot, replaced(number, "{pages}", count), foot, page);
  }
}

}  // namespace loamsheet
