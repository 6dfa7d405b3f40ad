// What cannot be set is an error, never an overlap.
#include "sheets.h"

using namespace loamsheet;

TEST_CASE("a figure that is missing, too wide or too high is an error") {
  const Sheet sheet = sheet_of({FigureBlock{"elevation", "", "A tank."}});
  CHECK(error_of(sheet) == "there is no figure 'elevation'");
  CHECK(error_of(sheet, figures_of(190, 50)) == "the figure 'elevation' is wider than the text");
  CHECK(error_of(sheet, figures_of(100, 290)) == "a block is higher than a page");
}

TEST_CASE("a table that is not one is an error") {
  CHECK(error_of(sheet_of({Table{}})) == "a table has no columns");
  Table ragged;
  ragged.columns = {{"Item"}, {"Need"}};
  ragged.rows = {{words("Clay")}};
  CHECK(error_of(sheet_of({ragged})) == "a row of a table has not as many cells as columns");
  Table crowded;
  crowded.columns.resize(60);
  CHECK(error_of(sheet_of({crowded})) == "a table has too many columns for the width of the page");
}

TEST_CASE("a letter that the faces lack is named once, with its text") {
  CHECK(error_of(sheet_of({Paragraph{words("the pond \u6C60 and \u6C60")}})) ==
        "the sheet's typeface has no letter '\u6C60' (U+6C60), in \"the pond \u6C60 and \u6C60\"");
}

TEST_CASE("a sheet without content, and facts without columns, are errors") {
  CHECK(error_of(sheet_of({BulletList{}, TickList{}, Facts{}})) ==
        "the sheet has nothing to print");
  Facts facts;
  facts.columns = 0;
  facts.facts = {{"Plant", words("7 March"), ""}};
  CHECK(error_of(sheet_of({facts})) == "facts are to be set in no column at all");
}

TEST_CASE("a measure that the style lacks is named") {
  const auto pages =
      lay_out(sheet_of({Paragraph{words("Moss.")}}), {}, faces(), PageStyle({{"page.left", 17}}));
  REQUIRE(pages.messages.size() == 1);
  CHECK(pages.messages[0].message.find("page.") != std::string::npos);
  CHECK(pages.messages[0].where.file == "templates/style.yaml");
  CHECK(pages.messages[0].fault == Fault::file);
}

TEST_CASE("all errors of a sheet are told at once") {
  const auto pages =
      lay_out(sheet_of({Table{}, FigureBlock{"plan", "", ""}}), {}, faces(), style());
  CHECK(pages.messages.size() == 2);
}
