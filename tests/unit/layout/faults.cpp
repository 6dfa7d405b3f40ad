// The fault finder finds each fault that is put before it; sheets of any content have none.
#include <random>

#include "sheets.h"

using namespace loamsheet;

namespace {

TextMark text(const std::string& t, Point at, int tag = 1) {
  return {t, at, 10, faces().width(Face::regular, 10, t), Face::regular, 0, tag};
}

std::vector<std::string> faults_of(std::vector<PageMark> marks) {
  Pages pages;
  pages.tags = {
      {"Document", -1, "", ""}, {"P", 0, "", ""}, {"H2", 0, "", ""}, {"Figure", 0, "", ""}};
  pages.pages = {Page{300, 400, std::move(marks), {40, 40, 260, 360}}};
  return faults(pages, faces());
}

using Faults = std::vector<std::string>;

}  // namespace

TEST_CASE("sound marks have no fault") {
  CHECK(faults_of({text("moss", {40, 340}), text("fern", {40, 327}), text("TT-0001", {40, 375}, -1),
                   FigureMark{"plan", {50, 100, 200, 300}, 3}})
            .empty());
}

TEST_CASE("each fault is found") {
  CHECK(faults_of({text("moss", {40, 340}), text("fern", {50, 335})}) ==
        Faults{"page 1: 'moss' overlaps 'fern'"});
  CHECK(faults_of({text("moss", {250, 340})}) == Faults{"page 1: 'moss' is outside the text area"});
  CHECK(faults_of({text("moss", {40, 340}), text("foot", {40, 10}, -1)}) ==
        Faults{"page 1: 'foot' is outside the text area"});
  CHECK(faults_of({text("moss", {60, 200}), FigureMark{"plan", {50, 100, 200, 300}, 3}}) ==
        Faults{"page 1: 'moss' stands on figure 'plan'"});
  CHECK(faults_of({FigureMark{"plan", {50, 100, 270, 300}, 3}}) ==
        Faults{"page 1: figure 'plan' is outside the text area"});
  CHECK(faults_of({text("foot", {40, 20}, -1)}) == Faults{"page 1: nothing on it"});
  CHECK(faults_of({text("moss", {40, 340}), text("Layers", {40, 300}, 2)}) ==
        Faults{"page 1: the heading 'Layers' stands alone at the end"});
}

namespace {

// Blocks of any content, from a seed: the same on every machine.
class AnySheet {
 public:
  explicit AnySheet(unsigned seed) : random_(seed) {}

  Sheet make() {
    Sheet sheet = sheet_of({});
    sheet.paper = upto(2) == 1 ? "Letter" : "A4";
    sheet.parts.assign(1 + upto(3), sheet.parts[0]);
    for (Part& part : sheet.parts) {
      part.landscape = upto(4) == 0;
      part.blocks.push_back(Heading{1, line(8)});
      for (unsigned n = 1 + upto(14); n > 0; --n) add_block(part.blocks);
      part.blocks.push_back(Paragraph{any_words(40)});
    }
    return sheet;
  }

 private:
  unsigned upto(unsigned n) { return static_cast<unsigned>(random_() % n); }

  std::string word() {
    static const char* const some[] = {
        "moss",           "tree-fern/bark",    "\u00D7",     "90 \u00D7 45 cm",
        "(damp)",         "35\u201360\u00A0%", "substrate,", "a",
        "\u201Cwet\u201D"};
    if (upto(40) == 0) return std::string(20 + upto(150), 'w');
    return some[upto(9)];
  }

  std::string line(unsigned most) {
    std::string text = word();
    for (unsigned n = upto(most); n > 0; --n) text += ' ' + word();
    return text;
  }

  // Heads are repeated on every page and are the templates' own words: none is endless.
  std::string head() { return upto(2) ? "Wednesday" : "Dry mass of parts"; }

  Words any_words(unsigned most) {
    Words all;
    for (unsigned n = 1 + upto(3); n > 0; --n) {
      all.push_back({line(most) + ' ', static_cast<Face>(upto(3))});
    }
    return all;
  }

  std::vector<Words> items(unsigned most) {
    std::vector<Words> all;
    for (unsigned n = upto(most); n > 0; --n) all.push_back(any_words(25));
    return all;
  }

  Table table() {
    Table t;
    t.caption = upto(2) ? line(5) : "";
    t.tick_column = upto(2);
    t.totals = upto(2);
    t.write_rows = upto(3) ? 0 : upto(20);
    for (unsigned n = 1 + upto(6); n > 0; --n) {
      t.columns.push_back({head(), upto(2) == 1, static_cast<double>(upto(3))});
    }
    for (unsigned n = upto(8) == 0 ? 200 : upto(20); n > 0; --n) {
      t.rows.emplace_back();
      for (size_t c = 0; c < t.columns.size(); ++c) t.rows.back().push_back(any_words(3));
    }
    return t;
  }

  Facts facts() {
    Facts f;
    f.columns = static_cast<int>(1 + upto(5));
    for (unsigned n = upto(12); n > 0; --n) {
      f.facts.push_back({line(3), any_words(3), upto(2) ? line(6) : ""});
    }
    return f;
  }

  Steps steps() {
    Steps s;
    for (unsigned n = upto(30); n > 0; --n) {
      s.steps.push_back({std::to_string(upto(40)), any_words(30), upto(3) ? "20 min" : ""});
    }
    return s;
  }

  CalendarGrid::Cell cell() {
    CalendarGrid::Cell c;
    c.day = upto(5) ? line(2) : "";
    c.state = static_cast<CalendarGrid::State>(upto(3));
    c.milestone = upto(4) == 0;
    if (upto(3) == 0) c.lines = items(upto(60) ? 5 : 40);
    return c;
  }

  CalendarGrid calendar() {
    CalendarGrid g;
    g.weekdays.assign(1 + upto(7), head());
    for (unsigned n = upto(9); n > 0; --n) {
      g.weeks.emplace_back();
      for (size_t c = 0; c < g.weekdays.size(); ++c) g.weeks.back().days.push_back(cell());
      if (upto(3) == 0) g.weeks.back().every_day = any_words(30);
    }
    return g;
  }

  void add_block(std::vector<Block>& blocks) {
    switch (upto(11)) {
      case 0:
        blocks.push_back(Heading{static_cast<int>(2 + upto(2)), line(8)});
        blocks.push_back(Paragraph{any_words(20)});
        break;
      case 1:
        blocks.push_back(Paragraph{any_words(120), upto(2) == 1});
        break;
      case 2:
        blocks.push_back(BulletList{items(8)});
        break;
      case 3:
        blocks.push_back(TickList{items(8)});
        break;
      case 4:
        blocks.push_back(Blank{any_words(5)});
        break;
      case 5:
        blocks.push_back(facts());
        break;
      case 6:
        blocks.push_back(table());
        break;
      case 7:
        blocks.push_back(
            Callout{static_cast<Callout::Kind>(upto(5)), line(6), items(upto(9) ? 4 : 60)});
        break;
      case 8:
        blocks.push_back(steps());
        break;
      case 9:
        blocks.push_back(calendar());
        break;
      default:
        blocks.push_back(FigureBlock{"elevation", line(12), "A tank."});
    }
  }

  std::mt19937 random_;
};

}  // namespace

TEST_CASE("sheets of any content have no fault") {
  for (unsigned seed = 1; seed <= 250; ++seed) {
    const Sheet sheet = AnySheet(seed).make();
    const Figures figures = figures_of(100 + seed % 70, 30 + seed % 60);
    const bool large = seed % 3 == 0;
    const auto pages = lay_out(sheet, figures, faces(), style(large));
    INFO("seed " << seed);
    for (const auto& m : pages.messages) FAIL_CHECK(m.message);
    if (!pages) continue;
    CHECK(faults(*pages.value, faces()) == std::vector<std::string>{});
  }
}
