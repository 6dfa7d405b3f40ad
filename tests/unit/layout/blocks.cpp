// Each block as geometry on its page.
#include <set>

#include "sheets.h"

using namespace loamsheet;

namespace {

constexpr double mm = 72 / 25.4;

Table pull_list(int rows) {
  Table table;
  table.columns = {{"Item", false, 1}, {"Need", true, 0}};
  for (int i = 0; i < rows; ++i) {
    table.rows.push_back({words("Item " + std::to_string(i)), words(std::to_string(i * 7) + " L")});
  }
  return table;
}

}  // namespace

TEST_CASE("paper is A4 or Letter, upright or on its side, to a hundredth of a point") {
  Sheet sheet = sheet_of({Paragraph{words("Moss.")}});
  CHECK(laid(sheet).pages[0].width == 595.28);
  CHECK(laid(sheet).pages[0].height == 841.89);
  sheet.paper = "Letter";
  sheet.parts[0].landscape = true;
  CHECK(laid(sheet).pages[0].width == 792);
  CHECK(laid(sheet).pages[0].height == 612);
}

TEST_CASE("every place is rounded to a hundredth of a point") {
  const Pages pages =
      laid(sheet_of({Heading{1, "Layers"}, Paragraph{words(repeated("fern", 99))}}));
  for (const TextMark& m : marks<TextMark>(pages.pages[0])) {
    CHECK(std::abs(m.at.x * 100 - std::round(m.at.x * 100)) < 1e-6);
    CHECK(std::abs(m.at.y * 100 - std::round(m.at.y * 100)) < 1e-6);
  }
}

TEST_CASE("running text keeps to the measure and its leading") {
  const Pages pages = laid(sheet_of({Paragraph{words(repeated("clay", 200))}}));
  const auto lines = texts(pages, 0, "P");
  REQUIRE(lines.size() > 3);
  for (size_t i = 0; i < lines.size(); ++i) {
    CHECK(lines[i].width <= style()["page.measure"] * mm);
    CHECK(lines[i].at.x == Approx(style()["page.left"] * mm).margin(0.005));
    if (i > 0) CHECK(lines[i - 1].at.y - lines[i].at.y == Approx(style()["body.leading"]));
  }
}

TEST_CASE("numbers end on one line at the right of their column") {
  const Pages pages = laid(sheet_of({pull_list(20)}));
  std::set<long> ends;
  for (const TextMark& m : texts(pages, 0, "TD")) {
    ends.insert(std::lround((m.at.x + m.width) * 10));
  }
  CHECK(ends.size() == 1);
}

TEST_CASE("a long table repeats its head, unread, on every page") {
  const Pages pages = laid(sheet_of({pull_list(200)}));
  REQUIRE(pages.pages.size() > 3);
  CHECK(texts(pages, 0, "TH").size() > 2);
  for (size_t p = 1; p < pages.pages.size(); ++p) {
    int heads = 0;
    for (const TextMark& m : marks<TextMark>(pages.pages[p]))
      heads += m.text == "Item" && m.tag < 0;
    CHECK(heads == 1);
  }
}

TEST_CASE("a total is bold, under a heavier rule, on the page of the row before it") {
  Table table = pull_list(30);
  table.totals = true;
  table.tick_column = true;
  const Pages pages = laid(sheet_of({table}));
  const auto cells = texts(pages, 0, "TD");
  CHECK(cells.back().face == Face::bold);
  CHECK(cells[cells.size() - 2].face == Face::regular);
  CHECK(marks<BoxMark>(pages.pages[0]).size() == 29);
  const auto rules = marks<RuleMark>(pages.pages[0]);
  const auto above = std::find_if(rules.begin(), rules.end(), [&](const RuleMark& r) {
    return r.from.y > cells.back().at.y && r.from.y < cells[cells.size() - 2].at.y;
  });
  REQUIRE(above != rules.end());
  CHECK(above->width == style()["table.total-rule"]);
}

TEST_CASE("a row is never parted from itself unless it is nearly a page high") {
  Table table = pull_list(0);
  table.rows.push_back({words(repeated("row", 1500)), words("1")});
  table.rows.push_back({words(repeated("next", 10)), words("2")});
  const Pages pages = laid(sheet_of({table}));
  CHECK(pages.pages.size() == 2);
  table.rows[0][0] = words(repeated("row", 700));
  table.rows[1][0] = words(repeated("next", 700));
  const Pages whole = laid(sheet_of({table}));
  REQUIRE(whole.pages.size() == 2);
  for (const TextMark& m : texts(whole, 0, "TH")) CHECK(m.text.find("next") == std::string::npos);
}

TEST_CASE("facts stand in columns with their values on one base line") {
  Facts facts;
  facts.columns = 3;
  facts.facts = {{"Plant", words("7 March 2026"), "a Saturday"},
                 {"Highest waterline, measured from the outside of the base", words("45 mm"), ""},
                 {"Mass", words("80 kg"), ""}};
  const Pages pages = laid(sheet_of({facts}));
  const auto values = texts(pages, 0, "LBody");
  REQUIRE(values.size() == 4);
  CHECK(values[0].at.y == values[2].at.y);
  CHECK(values[2].at.y == values[3].at.y);
  CHECK(values[2].at.x - values[0].at.x == Approx(values[3].at.x - values[2].at.x).margin(0.02));
  CHECK(values[1].text == "a Saturday");
  CHECK(values[1].at.y < values[0].at.y);
}

TEST_CASE("four facts in three columns stand two by two") {
  Facts facts;
  facts.columns = 3;
  facts.facts.assign(4, {"Mass", words("80 kg"), ""});
  const auto values = texts(laid(sheet_of({facts})), 0, "LBody");
  REQUIRE(values.size() == 4);
  CHECK(values[0].at.y == values[1].at.y);
  CHECK(values[2].at.y == values[3].at.y);
  CHECK(values[2].at.y < values[1].at.y);
}

TEST_CASE("tick lists have a box an item, level with its first line") {
  const Pages pages = laid(sheet_of({TickList{{words("Leak test"), words("Stand level")}}}));
  const auto boxes = marks<BoxMark>(pages.pages[0]);
  const auto lines = texts(pages, 0, "LBody");
  REQUIRE(boxes.size() == 2);
  REQUIRE(lines.size() == 2);
  const double capital = faces().metrics(Face::regular).cap_height * lines[0].size;
  for (size_t i = 0; i < 2; ++i) {
    CHECK((boxes[i].box.top + boxes[i].box.bottom) / 2 ==
          Approx(lines[i].at.y + capital / 2).margin(0.02));
    CHECK(boxes[i].box.right < lines[i].at.x);
  }
}

TEST_CASE("a blank gives at least 40 mm to write on") {
  for (int count : {1, 14, 20, 60}) {
    const Pages pages = laid(sheet_of({Blank{words(repeated("reading", count))}}));
    const auto rules = marks<RuleMark>(pages.pages[0]);
    REQUIRE(rules.size() == 2);  // the running head's and the blank's
    CHECK(rules[0].to.x - rules[0].from.x >= 40 * mm - 0.01);
    for (const TextMark& m : texts(pages, 0, "P")) {
      const bool beside = std::abs(m.at.y - rules[0].from.y) < m.size;
      if (beside) CHECK(m.at.x + m.width < rules[0].from.x);
    }
  }
}

TEST_CASE("the frame of a notice is the heavier the less is cleared") {
  auto weight = [](Callout::Kind kind) {
    const Pages pages = laid(sheet_of({Callout{kind, "Status", {words("Why.")}}}));
    double sum = 0;
    for (const BoxMark& b : marks<BoxMark>(pages.pages[0])) {
      sum += b.stroke >= 0 ? b.stroke_width : b.box.width();
    }
    for (const RuleMark& r : marks<RuleMark>(pages.pages[0]))
      sum += r.dashes.empty() ? 0 : r.width / 4;
    return sum;
  };
  CHECK(weight(Callout::Kind::not_cleared) > weight(Callout::Kind::provisional));
  CHECK(weight(Callout::Kind::provisional) > weight(Callout::Kind::cleared));
}

TEST_CASE("a figure keeps its own size, in the middle, with its caption below") {
  const Pages pages =
      laid(sheet_of({FigureBlock{"elevation", "From the front.", "A tank."}}), figures_of(120, 80));
  const auto figures = marks<FigureMark>(pages.pages[0]);
  REQUIRE(figures.size() == 1);
  CHECK(figures[0].box.width() == Approx(120 * mm).margin(0.02));
  CHECK(figures[0].box.height() == Approx(80 * mm).margin(0.02));
  CHECK((figures[0].box.left + figures[0].box.right) / 2 == Approx(595.28 / 2).margin(0.02));
  CHECK(texts(pages, 0, "Caption").at(0).at.y < figures[0].box.bottom);
}
