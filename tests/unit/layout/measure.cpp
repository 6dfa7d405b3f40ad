// Words broken into lines.
#include "layout/measure.h"

#include "sheets.h"

using namespace loamsheet;

namespace {

double width(const std::string& text, double size = 10) {
  return faces().width(Face::regular, size, text);
}

std::vector<std::string> broken(const Words& all, double measure) {
  std::vector<std::string> lines;
  for (const Line& line : break_lines(all, 10, measure, faces())) {
    std::string text;
    for (const Piece& piece : line.pieces) text += piece.text;
    lines.push_back(text);
  }
  return lines;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("a line breaks at a blank, which stays at its end outside the width") {
  const auto lines = break_lines(words("moss  and fern"), 10, width("moss and") + 0.1, faces());
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].pieces[0].text == "moss and ");
  CHECK(lines[0].width == Approx(width("moss and")));
  CHECK(lines[1].pieces[0].text == "fern");
}

TEST_CASE("a no-break blank, an amount, a range and a date are not parted") {
  CHECK(broken(words("about 5\u00A0cups"), width("about 5")) == Lines{"about ", "5\u00A0cups"});
  CHECK(broken(words("about 5 cm."), width("about 5")) == Lines{"about ", "5 cm."});
  CHECK(broken(words("of 9 \u00D7 4 cm"), width("9 \u00D7 4 cm") + 0.1) ==
        Lines{"of ", "9 \u00D7 4 cm"});
  CHECK(broken(words("of 9 \u00D7 4 cm"), width("of 9 \u00D7")) == Lines{"of 9 \u00D7 ", "4 cm"});
  CHECK(broken(words("say 35\u201360"), width("say 35\u2013")) == Lines{"say ", "35\u201360"});
  CHECK(broken(words("on 2026-03-07"), width("on 2026-03-")) == Lines{"on ", "2026-03-07"});
  CHECK(broken(words("gets 2 \u00B5mol/m\u00B2/s"), width("gets 2 \u00B5mol/m\u00B2/")) ==
        Lines{"gets ", "2 \u00B5mol/m\u00B2/s"});
  CHECK(broken(words("sum of EUR 299"), width("sum of EUR")) == Lines{"sum of ", "EUR 299"});
  CHECK(broken(words("need 1/2"), width("need 1/")) == Lines{"need ", "1/2"});
}

TEST_CASE("a line may break after a hyphen, an en dash or a slash between letters") {
  CHECK(broken(words("tree-fern"), width("tree-f")) == Lines{"tree-", "fern"});
  CHECK(broken(words("front/back"), width("front/b")) == Lines{"front/", "back"});
  CHECK(broken(words("day\u2013night"), width("day\u2013n")) == Lines{"day\u2013", "night"});
}

TEST_CASE("a word wider than the measure is broken between letters, and nothing is lost") {
  const double measure = width("substr");
  const auto lines = broken(words("substratum"), measure);
  std::string whole;
  for (const auto& line : lines) {
    CHECK(width(line) <= measure + 1e-6);
    whole += line;
  }
  CHECK(whole == "substratum");
  CHECK(lines.size() == 2);
}

TEST_CASE("faces change within a word without a break, and keep their order") {
  const Words mixed{{"mix", Face::bold}, {"es are", Face::regular}};
  const auto lines = break_lines(mixed, 10, 500, faces());
  REQUIRE(lines.size() == 1);
  REQUIRE(lines[0].pieces.size() == 2);
  CHECK(lines[0].pieces[0].text == "mix");
  CHECK(lines[0].pieces[1].text == "es are");
  CHECK(lines[0].pieces[1].x == Approx(lines[0].pieces[0].width));
  CHECK(broken(mixed, 1.2 * width("mixes")) == Lines{"mixes ", "are"});
}

TEST_CASE("lines are as few as greedy ones and more even") {
  // Greedy would leave "a" with the first line's end ragged by a whole word.
  const Words text = words("aaa bb cc ddddd");
  const double measure = width("aaa bb");
  CHECK(broken(text, measure) == Lines{"aaa ", "bb cc ", "ddddd"});
}

TEST_CASE("an end of line in the words is kept; words without ink give no line") {
  CHECK(broken(words("one\ntwo"), 500) == Lines{"one", "two"});
  CHECK(broken(words("  \n "), 500).empty());
  CHECK(broken({}, 500).empty());
}

TEST_CASE("need is the widest part between breaks and the width of all") {
  const Need n = need(words("moss and leaf-mould"), 10, faces());
  CHECK(n.least == Approx(std::max(width("mould"), width("moss"))));
  CHECK(n.most == Approx(width("moss and leaf-mould")));
}
