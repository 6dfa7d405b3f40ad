// Tags, bookmarks, running heads and the dump.
#include "sheets.h"

using namespace loamsheet;

namespace {

std::string outline(const Pages& pages) {
  std::string out;
  for (const Tag& t : pages.tags) {
    int depth = 0;
    for (int p = t.parent; p >= 0; p = pages.tags[static_cast<size_t>(p)].parent) ++depth;
    out += std::string(static_cast<size_t>(depth), ' ') + t.role + (t.scope.empty() ? "" : ":") +
           t.scope + '\n';
  }
  return out;
}

}  // namespace

TEST_CASE("elements stand in reading order under the section of their part") {
  Table table;
  table.caption = "Mix";
  table.columns = {{"Part"}, {"Share", true}};
  table.rows = {{words("Bark"), words("2")}};
  const Pages pages = laid(
      sheet_of({Heading{1, "Layers"}, Paragraph{words("Base upward.")},
                BulletList{{words("Rinse.")}}, table, FigureBlock{"elevation", "Front.", "A tank."},
                Callout{Callout::Kind::note, "Mind", {words("Dust.")}}}),
      figures_of(50, 50));
  CHECK(outline(pages) ==
        "Document\n Sect\n  H1\n  P\n  L\n   LI\n    Lbl\n    LBody\n"
        "  Table\n   Caption\n   TR\n    TH:Column\n    TH:Column\n   TR\n    TH:Row\n    TD\n"
        "  Figure\n   Caption\n  Sect\n   P\n   P\n");
  CHECK(pages.tags[16].alt == "A tank.");
}

TEST_CASE("a parent stands before its children, and every mark has a leaf") {
  const Pages pages = laid(sheet_of({Heading{1, "Layers"}, TickList{{words("Leak test")}},
                                     Facts{2, {{"Plant", words("7 March"), "late"}}}}));
  std::vector<bool> has_child(pages.tags.size());
  for (size_t i = 1; i < pages.tags.size(); ++i) {
    REQUIRE(pages.tags[i].parent < static_cast<int>(i));
    has_child[static_cast<size_t>(pages.tags[i].parent)] = true;
  }
  for (const TextMark& m : marks<TextMark>(pages.pages[0])) {
    if (m.tag >= 0) CHECK(!has_child[static_cast<size_t>(m.tag)]);
  }
}

TEST_CASE("headings of the first two levels are bookmarks with their page and top") {
  Sheet sheet = sheet_of({Heading{1, "Build"}, Heading{2, "Pull list"}, Heading{3, "Clay"},
                          Paragraph{words("Rinsed.")}});
  sheet.parts.push_back(sheet.parts[0]);
  sheet.parts[1].blocks = {Paragraph{words("No heading.")}};
  sheet.parts[1].title = "Record";
  const Pages pages = laid(sheet);
  REQUIRE(pages.bookmarks.size() == 3);
  CHECK(pages.bookmarks[0].title == "Build sheet");
  CHECK(pages.bookmarks[0].level == 1);
  CHECK(pages.bookmarks[0].top == pages.pages[0].body.top);
  CHECK(pages.bookmarks[1].title == "Pull list");
  CHECK(pages.bookmarks[1].level == 2);
  CHECK(pages.bookmarks[1].top < pages.bookmarks[0].top);
  CHECK(pages.bookmarks[2].title == "Record");
  CHECK(pages.bookmarks[2].page == 1);
}

TEST_CASE("every page carries the running head and its number, unread") {
  const Pages pages = laid(sheet_of({Paragraph{words(repeated("long", 3000))}}));
  REQUIRE(pages.pages.size() == 3);
  for (size_t p = 0; p < 3; ++p) {
    std::vector<std::string> running;
    for (const TextMark& m : marks<TextMark>(pages.pages[p])) {
      if (m.tag < 0) running.push_back(m.text);
    }
    CHECK(running == std::vector<std::string>{"TT-0001", "revision A", "Tarn & Thicket",
                                              "Page " + std::to_string(p + 1) + " of 3"});
  }
}

TEST_CASE("a running head that is too long ends in an ellipsis before the right one") {
  Sheet sheet = sheet_of({Paragraph{words("Moss.")}});
  sheet.running_left = repeated("ravine", 60);
  const Pages pages = laid(sheet);
  int heads = 0;
  for (const TextMark& m : marks<TextMark>(pages.pages[0])) {
    if (!m.text.starts_with("ravine")) continue;
    CHECK(m.text.ends_with("\u2026"));
    ++heads;
  }
  CHECK(heads == 1);
}

TEST_CASE("pages print themselves line by line") {
  Pages pages;
  pages.title = "T";
  pages.language = "en";
  pages.tags = {{"Document", -1, "", ""}, {"TH", 0, "", "Row"}, {"Figure", 0, "A tank", ""}};
  Page page{100, 200, {}, {10, 10, 90, 190}};
  page.marks.emplace_back(BoxMark{{1, 2, 3, 4}, 0.5, -1, 0.5});
  page.marks.emplace_back(RuleMark{{1, 2}, {3, 4}, 0.25, 0, {3, 2}});
  page.marks.emplace_back(FigureMark{"plan", {10, 20, 30, 40}, 2});
  page.marks.emplace_back(TextMark{"5 | 6", {1.005, 7}, 9, 12.5, Face::bold, 0, 1});
  pages.pages = {page};
  pages.bookmarks = {{"Build", 1, 0, 190}};
  CHECK(dump(pages) ==
        "pages v2\nabout | T\nabout | \nabout | \nabout | en\n"
        "page of 100.00 x 200.00 body 10.00 10.00 90.00 190.00\n"
        "  running rule 1.00 2.00 by 2.00 2.00 pen 0.25 dashes 3.00/ 2.00\n"
        "  running text 1.00 7.00 wide 12.50 9.00 bold | 5 | 6\n"
        "  - box 1.00 -186.00 2.00 x 2.00 fill 0.50\n"
        "  Document\n"
        "    TH Row\n"
        "    Figure 10.00 36.00 20.00 x 20.00 plan | A tank\n"
        "bookmark 1 page 1 190.00 | Build\n");
}
