// A small sheet of two pages as the stages before finish hand it over, and its finished PDF.
#pragma once
#include <catch2/catch.hpp>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "draw/draw.h"
#include "finish/finish.h"
#include "paint/paint.h"
#include "world/world.h"

namespace loamsheet {

using Object = QPDFObjectHandle;

inline const Typefaces& faces() {
  static const auto world = real_world();
  static const auto loaded = load_typefaces(*world);
  REQUIRE(loaded);
  return *loaded.value;
}

inline std::string colour_profile() {
  const auto world = real_world();
  const auto bytes = world->read(world->data("fonts/sRGB.icc"));
  REQUIRE(bytes);
  return *bytes;
}

// A text where it belongs, of a tag (or -1).
inline TextMark words(const std::string& text, Point at, int tag, Face face = Face::regular) {
  TextMark mark{text, at, 10, 0, face, 0, tag};
  mark.width = faces().width(face, mark.size, text);
  return mark;
}

namespace tag {
enum { document, heading, paragraph, figure, table, row, head_cell, cell };
}

inline Page first_page() {
  Page page{595.28, 841.89, {}};
  page.marks.push_back(BoxMark{{50, 770, 300, 800}, 0.9, 0.5});
  page.marks.push_back(words("Build sheet", {50, 780}, tag::heading, Face::bold));
  page.marks.push_back(words("Spread 13.5 L of clay – 5 cm deep;", {50, 740}, tag::paragraph));
  page.marks.push_back(words("lay the self-", {50, 728}, tag::paragraph));
  page.marks.push_back(words("draining mesh", {50, 716}, tag::paragraph));
  page.marks.push_back(FigureMark{"elevation", {50, 500, 50 + 283.46, 500 + 141.73}, tag::figure});
  page.marks.push_back(words("page 1", {50, 30}, -1));
  return page;
}

inline Page second_page() {
  Page page{841.89, 595.28, {}};
  page.marks.push_back(words("on ½ × Ω.", {50, 540}, tag::paragraph));
  page.marks.push_back(words("Item", {50, 500}, tag::head_cell, Face::bold));
  page.marks.push_back(words("clay", {150, 500}, tag::cell));
  page.marks.push_back(RuleMark{{50, 490}, {300, 490}, 0.5, 0, {}});
  page.marks.push_back(words("page 2", {50, 30}, -1));
  return page;
}

inline Pages example_pages() {
  Pages pages{"Fern ravine – build sheet", "Tarn & Thicket", "TT-0142 <A>", "en", {}, {}, {}};
  pages.tags = {{"Document", -1, "", ""},
                {"H1", 0, "", ""},
                {"P", 0, "", ""},
                {"Figure", 0, "The tank from the front", ""},
                {"Table", 0, "", ""},
                {"TR", tag::table, "", ""},
                {"TH", tag::row, "", "Column"},
                {"TD", tag::row, "", ""}};
  pages.pages = {first_page(), second_page()};
  pages.bookmarks = {{"Build sheet", 1, 0, 800}, {"Layers", 2, 0, 750}, {"Items", 1, 1, 520}};
  return pages;
}

inline Label label(const std::string& text, Point at) {
  Label made;
  made.text = text;
  made.at = at;
  return made;
}

// Two figures of 100 by 50 mm; the labels of the first need a simple and a composite font.
inline Figures example_figures() {
  Figures figures;
  for (const std::string id : {"elevation", "plan"}) {
    Figure figure{id, "Caption", "What it shows", 100, 50, 5, {}};
    figure.marks.push_back(Stroke{{{10, 10}, {90, 10}, {90, 40}}, true, {}});
    figure.marks.push_back(label("clay 5 cm", {20, 20}));
    figure.marks.push_back(label("Ω ≥ 2", {20, 30}));
    figures.all.push_back(figure);
  }
  return figures;
}

// What goes into finish; a test changes what it is about.
struct Parts {
  Pages pages = example_pages();
  Figures figures = example_figures();
  std::string painted = *paint(pages, faces()).value;
  std::string drawn = *draw_pdf(figures, faces()).value;
  std::vector<Attachment> attachments{
      {"fern-ravine.yaml", "application/yaml", "spec", "build:\n  title: Fern ravine\n"},
      {"stock.csv", "text/csv", "stock", "item,pack\n"}};
  Archive archive = Archive::full;

  Outcome<std::string> finished() const {
    return finish({painted, drawn, pages, figures, attachments, colour_profile(), archive,
                   1772896205, "loamsheet test"});  // 2026-03-07 15:10:05
  }
};

// The finished sheet, without an error or a warning.
inline std::string finished(const Parts& parts) {
  auto pdf = parts.finished();
  for (const auto& m : pdf.messages) FAIL(m.message);
  REQUIRE(pdf);
  return std::move(*pdf.value);
}

inline std::string finished(Archive archive) {
  Parts parts;
  parts.archive = archive;
  return finished(parts);
}

// A finished sheet opened again.
class Opened {
 public:
  explicit Opened(std::string bytes) : bytes_(std::move(bytes)) {
    pdf.processMemoryFile("sheet", bytes_.data(), bytes_.size());
  }
  explicit Opened(Archive archive) : Opened(finished(archive)) {}
  QPDF pdf;

 private:
  std::string bytes_;
};

inline std::string stream_text(Object stream) {
  const auto data = stream.getStreamData();
  return {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()};
}

}  // namespace loamsheet
