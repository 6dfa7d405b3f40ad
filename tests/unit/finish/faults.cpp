#include "sheet.h"

namespace loamsheet {
namespace {

// The fault that finishing these parts ends in.
std::string fault(const Parts& parts) {
  const auto pdf = parts.finished();
  REQUIRE(!pdf);
  REQUIRE(pdf.messages.size() == 1);
  CHECK(pdf.messages[0].fault == Fault::internal);
  return pdf.messages[0].message;
}

}  // namespace

TEST_CASE("a figure drawn in another size than its place is a fault") {
  Parts parts;
  parts.figures.all[0].width = 90;
  parts.drawn = *draw_pdf(parts.figures, faces()).value;
  CHECK(fault(parts) ==
        "the PDF could not be finished: figure elevation was drawn in another size");
}

TEST_CASE("a figure that is missing is a fault") {
  Parts parts;
  parts.figures.all[0].id = "other";
  CHECK(fault(parts) == "the PDF could not be finished: figure elevation was not drawn");
  parts.figures.all.pop_back();
  CHECK(fault(parts) == "the PDF could not be finished: not every figure was drawn");
}

TEST_CASE("pages and texts that do not match the painting are a fault") {
  Parts parts;
  parts.pages.pages[1].marks.push_back(words("more", {50, 50}, -1));
  CHECK(fault(parts) ==
        "the PDF could not be finished: a painted page has not the texts it was laid out with");
  parts.pages.pages.pop_back();
  CHECK(fault(parts) == "the PDF could not be finished: not every page was painted");
}

TEST_CASE("tags and bookmarks that lead nowhere are a fault") {
  Parts parts;
  parts.pages.bookmarks[0].page = 9;
  CHECK(fault(parts) == "the PDF could not be finished: bookmark Build sheet points at no page");
  parts.pages.tags.resize(3);
  CHECK(fault(parts) ==
        "the PDF could not be finished: a mark has a tag that the structure tree lacks");
}

TEST_CASE("two files of one name are a fault") {
  Parts parts;
  parts.attachments[1].name = parts.attachments[0].name;
  CHECK(fault(parts) ==
        "the PDF could not be finished: two embedded files are called fern-ravine.yaml");
}

TEST_CASE("bytes that are no PDF are a fault, not a crash") {
  Parts parts;
  parts.painted = "not a PDF";
  CHECK(fault(parts).starts_with("the PDF could not be finished: painted pages"));
}

}  // namespace loamsheet
