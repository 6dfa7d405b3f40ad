// Sheets built by hand, laid out with the real faces and the real style.
#pragma once
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "catalogue/style.h"
#include "compose/sheet.h"
#include "layout/faults.h"
#include "layout/layout.h"
#include "type/type.h"
#include "world/world.h"

namespace loamsheet {

inline const Typefaces& faces() {
  static const auto world = real_world();
  static const auto loaded = load_typefaces(*world);
  REQUIRE(loaded);
  return *loaded.value;
}

inline const PageStyle& style(bool large = false) {
  static const auto world = real_world();
  static const auto normal_print = read_style(*world, false),
                    large_print = read_style(*world, true);
  REQUIRE(normal_print);
  REQUIRE(large_print);
  return large ? *large_print.value : *normal_print.value;
}

inline Words words(const std::string& text) {
  return {{text, Face::regular}};
}

inline std::string repeated(const std::string& word, int count) {
  std::string text = word;
  for (int i = 1; i < count; ++i) text += ' ' + word;
  return text;
}

inline Sheet sheet_of(std::vector<Block> blocks) {
  Sheet sheet;
  sheet.title = "Fern ravine";
  sheet.language = "en";
  sheet.running_left = "TT-0001";
  sheet.running_right = "revision A";
  sheet.page_of = "Page {page} of {pages}";
  sheet.foot = "Tarn & Thicket";
  Part part;
  part.id = "build";
  part.title = "Build sheet";
  part.blocks = std::move(blocks);
  sheet.parts.push_back(std::move(part));
  return sheet;
}

inline Figures figures_of(double width, double height) {
  Figure figure;
  figure.id = "elevation";
  figure.width = width;
  figure.height = height;
  Figures figures;
  figures.all.push_back(figure);
  return figures;
}

// The pages of a sheet that must lie without an error and without a fault.
inline Pages laid(const Sheet& sheet, const Figures& figures = {}) {
  auto pages = lay_out(sheet, figures, faces(), style());
  for (const auto& m : pages.messages) FAIL(m.message);
  REQUIRE(pages);
  CHECK(faults(*pages.value, faces()) == std::vector<std::string>{});
  return std::move(*pages.value);
}

// The only error of a sheet.
inline std::string error_of(const Sheet& sheet, const Figures& figures = {}) {
  const auto pages = lay_out(sheet, figures, faces(), style());
  CHECK(!pages);
  REQUIRE(pages.messages.size() == 1);
  return pages.messages[0].message;
}

template <class Mark>
std::vector<Mark> marks(const Page& page) {
  std::vector<Mark> found;
  for (const PageMark& mark : page.marks) {
    if (auto* m = std::get_if<Mark>(&mark)) found.push_back(*m);
  }
  return found;
}

// The texts of a page that belong to an element of this role.
inline std::vector<TextMark> texts(const Pages& pages, size_t page, const std::string& role) {
  std::vector<TextMark> found;
  for (const TextMark& m : marks<TextMark>(pages.pages.at(page))) {
    if (m.tag >= 0 && pages.tags[static_cast<size_t>(m.tag)].role == role) found.push_back(m);
  }
  return found;
}

}  // namespace loamsheet
