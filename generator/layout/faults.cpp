#include "layout/faults.h"

#include <algorithm>

namespace loamsheet {
namespace {

constexpr double slack = 0.05;                 // points: rounding of places
constexpr double unprintable = 5 * 72 / 25.4;  // points: what an office printer leaves white

struct Inked {
  const TextMark* mark;
  Box box;
};

class PageCheck {
 public:
  PageCheck(const Pages& pages, size_t index, const Typefaces& type)
      : pages_(pages), page_(pages.pages[index]), index_(index), type_(type) {
    for (const PageMark& mark : page_.marks) {
      if (auto* t = std::get_if<TextMark>(&mark)) texts_.push_back({t, box_of(*t)});
      if (auto* f = std::get_if<FigureMark>(&mark)) figures_.push_back(f);
    }
  }

  std::vector<std::string> run() {
    overlaps();
    places();
    figures();
    content();
    return std::move(found_);
  }

 private:
  Box box_of(const TextMark& t) const {
    const FaceMetrics m = type_.metrics(t.face);
    return {t.at.x, t.at.y - m.descent * t.size, t.at.x + t.width, t.at.y + m.cap_height * t.size};
  }

  void say(const std::string& what) {
    found_.push_back("page " + std::to_string(index_ + 1) + ": " + what);
  }

  // Sorted by their left ends, so that each is compared only with those that may reach it.
  void overlaps() {
    std::vector<Inked> sorted = texts_;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const Inked& a, const Inked& b) { return a.box.left < b.box.left; });
    for (size_t i = 0; i < sorted.size(); ++i) {
      for (size_t j = i + 1; j < sorted.size(); ++j) {
        if (sorted[j].box.left >= sorted[i].box.right) break;
        if (!sorted[i].box.overlaps(sorted[j].box, -slack)) continue;
        say("'" + sorted[i].mark->text + "' overlaps '" + sorted[j].mark->text + "'");
      }
    }
  }

  void places() {
    const Box paper{unprintable, unprintable, page_.width - unprintable,
                    page_.height - unprintable};
    for (const Inked& t : texts_) {
      const Box& area = t.mark->tag < 0 ? paper : page_.body;
      if (!within(t.box, area)) say("'" + t.mark->text + "' is outside the text area");
    }
  }

  static bool within(const Box& inner, const Box& outer) {
    return outer.contains({inner.left, inner.bottom}, slack) &&
           outer.contains({inner.right, inner.top}, slack);
  }

  void figures() {
    for (const FigureMark* f : figures_) {
      if (!within(f->box, page_.body)) say("figure '" + f->id + "' is outside the text area");
      for (const Inked& t : texts_) {
        if (!t.box.overlaps(f->box, -slack)) continue;
        say("'" + t.mark->text + "' stands on figure '" + f->id + "'");
      }
    }
  }

  bool is_heading(const TextMark& t) const {
    return pages_.tags[static_cast<size_t>(t.tag)].role.starts_with('H');
  }

  void content() {
    const Inked* last = nullptr;
    for (const Inked& t : texts_) {
      if (t.mark->tag >= 0 && (!last || t.box.bottom < last->box.bottom)) last = &t;
    }
    double floor = last ? last->box.bottom : page_.height;
    for (const FigureMark* f : figures_) floor = std::min(floor, f->box.bottom);
    if (!last && figures_.empty()) say("nothing on it");
    if (last && floor == last->box.bottom && is_heading(*last->mark)) {
      say("the heading '" + last->mark->text + "' stands alone at the end");
    }
  }

  const Pages& pages_;
  const Page& page_;
  size_t index_;
  const Typefaces& type_;
  std::vector<Inked> texts_;
  std::vector<const FigureMark*> figures_;
  std::vector<std::string> found_;
};

}  // namespace

std::vector<std::string> faults(const Pages& pages, const Typefaces& type) {
  std::vector<std::string> all;
  for (size_t i = 0; i < pages.pages.size(); ++i) {
    auto found = PageCheck(pages, i, type).run();
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

}  // namespace loamsheet
