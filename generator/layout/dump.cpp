// dump: the pages as text in which the change of a word stays small. The tree of tags is there by
// indent, with each tag's marks under it: its first stands beside its role, "." is one more, "^P"
// one more of the P above, "-" an artifact. Places are relative: across, "=" begins where the text
// before (in a table, the cell above) does, "=|" ends there, ">" goes on after it; up, the distance
// from the mark before. Heads, feet and rows of lines that are as before are not said again.
#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "base/text.h"
#include "layout/dump_lines.h"
#include "layout/layout.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return ' ' + fixed(v, 2);
}

bool near(double a, double b) {
  return std::fabs(a - b) < 0.011;  // places are rounded to 0.01
}

double right(const TextMark& m) {
  return m.at.x + m.width;
}

int tag_of(const PageMark& mark) {
  if (const auto* text = std::get_if<TextMark>(&mark)) return text->tag;
  if (const auto* figure = std::get_if<FigureMark>(&mark)) return figure->tag;
  return -1;
}

std::string style_of(const TextMark& m) {
  constexpr const char* faces[] = {"", " bold", " italic"};
  return number(m.size) + faces[static_cast<int>(m.face)] +
         (m.grey > 0 ? " grey" + number(m.grey) : "");
}

std::string name_of(const Tag& tag) {
  return tag.role + (tag.scope.empty() ? "" : ' ' + tag.scope) +
         (tag.columns > 1 ? " over " + std::to_string(tag.columns) : "");
}

// Of each cell of a table the one above it; -1: none.
std::vector<int> cells_above(const std::vector<Tag>& tags) {
  std::vector<int> above(tags.size(), -1), last_row = above, row_before = above;
  std::vector<std::vector<int>> cells(tags.size());
  for (size_t i = 0; i < tags.size(); ++i) {
    const int tag = static_cast<int>(i);
    if (tags[i].parent < 0) continue;
    const auto parent = static_cast<size_t>(tags[i].parent);
    if (tags[i].role == "TR") row_before[i] = std::exchange(last_row[parent], tag);
    if (tags[parent].role != "TR") continue;
    auto& row = cells[parent];
    const int before = row_before[parent];
    if (before >= 0 && row.size() < cells[static_cast<size_t>(before)].size()) {
      above[i] = cells[static_cast<size_t>(before)][row.size()];
    }
    row.insert(row.end(), static_cast<size_t>(tags[i].columns), tag);
  }
  return above;
}

std::vector<int> depths_of(const std::vector<Tag>& tags) {
  std::vector<int> depths;
  for (const Tag& tag : tags) {
    depths.push_back(tag.parent < 0 ? 0 : depths[static_cast<size_t>(tag.parent)] + 1);
  }
  return depths;
}

// Heads and feet, which stand outside of the page's body.
struct Running {
  std::vector<const PageMark*> marks;
  size_t page = 0;
};

std::vector<const PageMark*> outside_of_body(const Page& page) {
  std::vector<const PageMark*> marks;
  for (const PageMark& mark : page.marks) {
    const auto* text = std::get_if<TextMark>(&mark);
    const auto* rule = std::get_if<RuleMark>(&mark);
    if (!text && !rule) continue;
    const double y = text ? text->at.y : rule->from.y;
    if (y > page.body.top || y < page.body.bottom) marks.push_back(&mark);
  }
  return marks;
}

// The same at the same place, or with the page's own number and as far from an edge.
bool goes_on(const TextMark& a, size_t page_a, const TextMark& b, size_t page_b) {
  std::string next = a.text;
  const std::string number = std::to_string(page_a + 1);
  if (const size_t at = next.find(number); at != std::string::npos) {
    next.replace(at, number.size(), std::to_string(page_b + 1));
  }
  return (b.text == a.text || b.text == next) && a.at.y == b.at.y && style_of(a) == style_of(b) &&
         (near(a.at.x, b.at.x) || near(right(a), right(b)));
}

bool goes_on(const Running& a, const Running& b) {
  if (a.marks.size() != b.marks.size()) return false;
  for (size_t i = 0; i < a.marks.size(); ++i) {
    const auto *one = std::get_if<TextMark>(a.marks[i]), *other = std::get_if<TextMark>(b.marks[i]);
    double here = 0, there = 0;
    const bool same =
        one && other ? goes_on(*one, a.page, *other, b.page)
                     : said_lines({a.marks[i]}, here).text == said_lines({b.marks[i]}, there).text;
    if (!same) return false;
  }
  return true;
}

class Writer {
 public:
  explicit Writer(const Pages& pages)
      : pages_(pages),
        above_(cells_above(pages.tags)),
        depths_(depths_of(pages.tags)),
        first_(pages.tags.size()) {}

  std::string written() {
    for (page_ = 0; page_ < pages_.pages.size(); ++page_) write_page();
    open(pages_.tags.size());
    for (; bookmark_ < pages_.bookmarks.size(); ++bookmark_) {
      const Bookmark& b = pages_.bookmarks[bookmark_];
      line(0, "bookmark " + std::to_string(b.level) + " page " + std::to_string(b.page + 1) +
                  number(b.top) + " | " + b.title);
    }
    return out_;
  }

 private:
  void line(int depth, const std::string& text) {
    out_.append(static_cast<size_t>(2 * depth), ' ') += text + '\n';
  }

  // Beside or under the tag of the mark before.
  void mark_line(const std::string& text) { line(depth_, text); }

  void write_page() {
    const Page& page = pages_.pages[page_];
    const std::string size = " of" + number(page.width) + " x" + number(page.height) + " body" +
                             number(page.body.left) + number(page.body.bottom) +
                             number(page.body.right) + number(page.body.top);
    line(0, "page" + (size == size_ ? "" : size));
    size_ = size;
    y_ = page.body.top;
    text_ = nullptr;
    words_.clear();
    const Running outside{outside_of_body(page), page_};
    Running& before = running_[size];
    if (!goes_on(before, outside)) write_running(outside);
    before = outside;
    for (const PageMark& mark : page.marks) {
      const auto& marks = outside.marks;
      if (std::find(marks.begin(), marks.end(), &mark) == marks.end()) write(mark);
    }
    write_lines();
  }

  void write_running(const Running& running) {
    for (const PageMark* mark : running.marks) {
      double y = 0;
      const auto* m = std::get_if<TextMark>(mark);
      line(1, "running " + (m ? "text" + number(m->at.x) + number(m->at.y) + " wide" +
                                    number(m->width) + style_of(*m) + " | " + m->text
                              : said_lines({mark}, y).text));
    }
  }

  void write(const PageMark& mark) {
    const auto* text = std::get_if<TextMark>(&mark);
    const auto* figure = std::get_if<FigureMark>(&mark);
    if (!text && !figure) return lines_.push_back(&mark);
    write_lines();
    if (text) write_bookmarks(*text);
    const std::string label = label_of(tag_of(mark));
    if (text) write(*text, label);
    if (figure) write(*figure, label);
    last_tag_ = tag_of(mark);
  }

  void write_lines() {
    if (lines_.empty()) return;
    const SaidLines said = said_lines(lines_, y_);
    std::string& before = said_[said.kinds];
    mark_line("- " + (before == said.text ? said.kinds + " as before" : said.text));
    before = said.text;
    lines_.clear();
  }

  void write_bookmarks(const TextMark& m) {
    for (; bookmark_ < pages_.bookmarks.size(); ++bookmark_) {
      const Bookmark& b = pages_.bookmarks[bookmark_];
      if (b.page != static_cast<int>(page_) || b.top < m.at.y) return;
      line(1, "bookmark " + std::to_string(b.level) + number(b.top - m.at.y) + " | " +
                  (b.title == m.text ? "″" : b.title));
    }
  }

  void open(size_t end) {
    for (; opened_ < end; ++opened_) {
      const Tag& tag = pages_.tags[opened_];
      line(depths_[opened_] + 1, name_of(tag) + (tag.alt.empty() ? "" : " | " + tag.alt));
    }
  }

  std::string label_of(int tag) {
    if (tag < 0) return "-";
    const auto index = static_cast<size_t>(tag);
    const bool fresh = index >= opened_;
    if (fresh) open(index);
    depth_ = depths_[index] + 1;
    if (fresh) return name_of(pages_.tags[opened_++]);
    return tag == last_tag_ ? "." : '^' + pages_.tags[index].role + steps_back(index);
  }

  // How many of the same role lie between.
  std::string steps_back(size_t tag) const {
    int between = 0;
    for (size_t i = tag + 1; i < opened_; ++i) {
      between += pages_.tags[i].role == pages_.tags[tag].role ? 1 : 0;
    }
    return between == 0 ? "" : std::to_string(between + 1);
  }

  const TextMark* neighbour(const TextMark& m) const {
    if (m.tag < 0 || first_[static_cast<size_t>(m.tag)]) return text_;
    for (int t = above_[static_cast<size_t>(m.tag)]; t >= 0; t = above_[static_cast<size_t>(t)]) {
      if (first_[static_cast<size_t>(t)]) return first_[static_cast<size_t>(t)];
    }
    return text_;
  }

  std::string across(const TextMark& m) const {
    const TextMark* by = neighbour(m);
    if (by && near(m.at.x, by->at.x)) return " =";
    if (by && near(right(m), right(*by))) return " =|";
    if (text_ && m.at.y == text_->at.y && near(m.at.x, right(*text_))) return " >";
    return number(m.at.x);
  }

  double up(double y) { return y - std::exchange(y_, y); }

  // Words that stand right under the same, as large, are not said again.
  void write(const TextMark& m, const std::string& label) {
    std::string place = across(m);
    place += number(up(m.at.y));
    std::string& over = words_[fixed(m.at.x, 2) + style_of(m)];
    mark_line(label + place +
              (over == m.text ? " | ″" : " wide" + number(m.width) + style_of(m) + " | " + m.text));
    over = m.text;
    text_ = &m;
    if (m.tag < 0) return;
    auto& first = first_[static_cast<size_t>(m.tag)];
    if (!first) first = &m;
  }

  void write(const FigureMark& m, const std::string& label) {
    const std::string& alt = m.tag < 0 ? m.id : pages_.tags[static_cast<size_t>(m.tag)].alt;
    mark_line(label + number(m.box.left) + number(up(m.box.top)) + number(m.box.width()) + " x" +
              number(m.box.height()) + ' ' + m.id + " | " + alt);
    y_ = m.box.bottom;
  }

  const Pages& pages_;
  std::vector<int> above_, depths_;
  std::vector<const TextMark*> first_;        // of each tag
  std::map<std::string, Running> running_;    // of the last page, by the page's size
  std::vector<const PageMark*> lines_;        // rules and boxes since the last text or figure
  std::map<std::string, std::string> said_;   // such lines, by their kinds
  std::map<std::string, std::string> words_;  // on this page, by where they begin and their style
  const TextMark* text_ = nullptr;            // the last on this page
  std::string out_, size_;
  size_t page_ = 0, opened_ = 0, bookmark_ = 0;
  int last_tag_ = -1, depth_ = 1;
  double y_ = 0;
};

}  // namespace

std::string dump(const Pages& pages) {
  std::string out = "pages v2\n";
  for (const std::string& s : {pages.title, pages.author, pages.subject, pages.language}) {
    out += "about | " + s + '\n';
  }
  return out + Writer(pages).written();
}

}  // namespace loamsheet
