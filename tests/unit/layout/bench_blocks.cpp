// Blocks for the bench and the wall as geometry: steps, the calendar, tables to write in.
#include "sheets.h"

using namespace loamsheet;

namespace {

constexpr double mm = 72 / 25.4;
using State = CalendarGrid::State;

CalendarGrid weeks(size_t count) {
  CalendarGrid grid;
  grid.weekdays = {"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"};
  for (size_t w = 0; w < count; ++w) {
    grid.weeks.push_back({std::vector<CalendarGrid::Cell>(7), {}});
    for (size_t d = 0; d < 7; ++d) grid.weeks[w].days[d].day = std::to_string(w * 7 + d + 1);
  }
  return grid;
}

Sheet landscape(Block block) {
  Sheet sheet = sheet_of({Heading{1, "Calendar"}, std::move(block)});
  sheet.parts[0].landscape = true;
  return sheet;
}

TextMark text_of(const Pages& pages, const std::string& words) {
  for (const Page& page : pages.pages) {
    for (const TextMark& m : marks<TextMark>(page)) {
      if (m.text == words) return m;
    }
  }
  FAIL("no '" << words << "' on the pages");
  return {};
}

const std::string& role(const Pages& pages, const TextMark& m) {
  return pages.tags.at(static_cast<size_t>(m.tag)).role;
}

}  // namespace

TEST_CASE("a step has a box, its number, its words, and its minutes at the right") {
  const Steps steps{{{"1", words("Leak test"), "5 min"},
                     {"10", words(repeated("Set the foam", 20)), "20 min"},
                     {"11", words("Let it cure"), ""}}};
  const Pages pages = laid(sheet_of({steps}));
  const TextMark one = text_of(pages, "1"), ten = text_of(pages, "10");
  CHECK(one.at.x + one.width == Approx(ten.at.x + ten.width).margin(0.02));
  CHECK(role(pages, one) == "Lbl");
  const TextMark five = text_of(pages, "5 min"), twenty = text_of(pages, "20 min");
  const double right = (style()["page.left"] + style()["page.measure"]) * mm;
  CHECK(five.at.x + five.width == Approx(right).margin(0.02));
  CHECK(twenty.at.x + twenty.width == Approx(right).margin(0.02));
  CHECK(five.at.y == text_of(pages, "Leak test").at.y);
  const auto boxes = marks<BoxMark>(pages.pages[0]);
  REQUIRE(boxes.size() == 3);
  CHECK(boxes[0].box.right < one.at.x);
  for (const TextMark& m : texts(pages, 0, "LBody")) CHECK(m.at.x > ten.at.x + ten.width);
}

TEST_CASE("a rule parts each step from the next") {
  const Pages pages = laid(sheet_of({Steps{
      {{"1", words("Leak test"), ""}, {"2", words("Foam"), ""}, {"3", words("Cure"), ""}}}}));
  CHECK(marks<RuleMark>(pages.pages[0]).size() == 2 + 1);  // and the running head's
}

TEST_CASE("numbers and minutes that crowd out the words of steps are an error") {
  CHECK(error_of(sheet_of({Steps{{{"1", words("Foam"), repeated("minutes", 20)}}}})) ==
        "the numbers and minutes of steps leave no room for their words");
}

TEST_CASE("the days of a calendar stand in seven equal columns under their weekdays") {
  const Pages pages = laid(landscape(weeks(3)));
  const Box body = pages.pages[0].body;
  const char* heads[] = {"Monday", "Tuesday", "Wednesday", "Thursday"};
  for (int d = 0; d < 4; ++d) {
    const TextMark head = text_of(pages, heads[d]);
    CHECK(role(pages, head) == "TH");
    const double left = body.left + body.width() / 7 * d + style()["calendar.pad"] * mm;
    CHECK(head.at.x == Approx(left).margin(0.02));
    for (int w = 0; w < 3; ++w) {
      const TextMark day = text_of(pages, std::to_string(w * 7 + d + 1));
      CHECK(day.at.x == head.at.x);
      CHECK(role(pages, day) == "TD");
    }
  }
}

TEST_CASE("nothing in a calendar is under 11 points, so that it reads from a metre away") {
  CalendarGrid grid = weeks(2);
  grid.weeks[0].days[2].lines = {words("Mist 40 s at 8:00"), words("Check the drain")};
  const Pages pages = laid(landscape(grid));
  for (const char* role : {"TH", "TD"}) {
    for (const TextMark& m : texts(pages, 0, role)) CHECK(m.size >= 11);
  }
}

TEST_CASE("a week is as high as its fullest day") {
  CalendarGrid grid = weeks(3);
  grid.weeks[1].days[4].lines.assign(9, words("Mist by hand"));
  const Pages pages = laid(landscape(grid));
  const double first = text_of(pages, "1").at.y, second = text_of(pages, "8").at.y;
  const double third = text_of(pages, "15").at.y;
  CHECK(first - second == Approx(style()["calendar.least"] * mm).margin(0.02));
  CHECK(second - third > 9 * style()["calendar.leading"]);
}

TEST_CASE("what is done every day of a week stands over its days, in a row of its own") {
  CalendarGrid grid = weeks(2);
  grid.weeks[1].every_day = words("Every day: mist");
  const Pages pages = laid(landscape(grid));
  const TextMark strip = text_of(pages, "Every day: mist");
  CHECK(strip.at.y < text_of(pages, "1").at.y);
  CHECK(strip.at.y > text_of(pages, "8").at.y);
  CHECK(strip.at.x == text_of(pages, "8").at.x);
  CHECK(pages.tags.at(static_cast<size_t>(strip.tag)).columns == 7);
}

TEST_CASE("a long calendar breaks between weeks and repeats the weekdays, unread") {
  const Pages pages = laid(landscape(weeks(20)));
  REQUIRE(pages.pages.size() >= 3);
  for (size_t p = 1; p < pages.pages.size(); ++p) {
    int heads = 0;
    for (const TextMark& m : marks<TextMark>(pages.pages[p])) {
      heads += m.text == "Monday" && m.tag < 0;
    }
    CHECK(heads == 1);
    CHECK(texts(pages, p, "TD").size() % 7 == 0);
  }
}

TEST_CASE("milestones stand in a heavy frame, closed days on grey, days outside are hatched") {
  CalendarGrid grid = weeks(1);
  grid.weeks[0].days[1].milestone = true;
  grid.weeks[0].days[5].state = State::closed;
  grid.weeks[0].days[6].state = State::outside;
  grid.weeks[0].days[6].day = "";
  const Pages pages = laid(landscape(grid));
  const auto boxes = marks<BoxMark>(pages.pages[0]);
  REQUIRE(boxes.size() == 2);
  const Box body = pages.pages[0].body;
  const double cell = body.width() / 7;
  CHECK(boxes[0].fill == style()["calendar.closed-fill"]);
  CHECK(boxes[0].box.left == Approx(body.left + 5 * cell).margin(0.02));
  CHECK(boxes[1].stroke_width >= 3 * style()["calendar.rule"]);
  CHECK(boxes[1].box.left > body.left + cell);
  CHECK(boxes[1].box.right < body.left + 2 * cell);
  int oblique = 0;
  for (const RuleMark& r : marks<RuleMark>(pages.pages[0])) {
    if (r.from.x == r.to.x || r.from.y == r.to.y) continue;
    ++oblique;
    CHECK(r.from.x >= body.left + 6 * cell - 0.02);
    CHECK(r.to.x <= body.right + 0.02);
  }
  CHECK(oblique > 10);
}

TEST_CASE("the grey of a closed day leaves the rule above it whole") {
  CalendarGrid grid = weeks(2);
  for (auto& week : grid.weeks) week.days[5].state = State::closed;
  const Pages pages = laid(landscape(grid));
  const double edge = style()["calendar.rule"] / 2 - 0.001;
  int above = 0;
  for (const BoxMark& grey : marks<BoxMark>(pages.pages[0])) {
    for (const RuleMark& r : marks<RuleMark>(pages.pages[0])) {
      const bool over = r.from.y == r.to.y && r.from.x < grey.box.right && r.to.x > grey.box.left;
      if (!over || r.from.y <= grey.box.bottom + edge) continue;
      CHECK(r.from.y >= grey.box.top + edge);
      ++above;
    }
  }
  CHECK(above > 0);
}

TEST_CASE("a week with too few days, or no weekdays, is an error") {
  CalendarGrid grid = weeks(2);
  grid.weeks[1].days.pop_back();
  CHECK(error_of(landscape(grid)) == "a week has not as many days as the calendar");
  CHECK(error_of(landscape(CalendarGrid{})) == "a calendar has no weekdays");
}

TEST_CASE("a table to write in has rows as high as asked, and lines between its columns") {
  Table table;
  table.columns = {{"Plant"}, {"Week 1"}, {"Week 2"}};
  for (int i = 0; i < 4; ++i) {
    table.rows.push_back({words("Plant " + std::to_string(i)), {}, {}});
  }
  table.write_rows = 9;
  const Pages pages = laid(sheet_of({table}));
  CHECK(text_of(pages, "Plant 1").at.y - text_of(pages, "Plant 2").at.y ==
        Approx(9 * mm).margin(0.02));
  int upright = 0;
  for (const RuleMark& r : marks<RuleMark>(pages.pages[0])) upright += r.from.x == r.to.x;
  CHECK(upright == 2 * (1 + 4));
}
