// paper: the sizes of paper that a sheet may be printed on. A further size is a further row.
#pragma once
#include <algorithm>
#include <array>
#include <string_view>

namespace loamsheet {

struct PaperSize {
  std::string_view name;  // as `print.paper` has it
  double width, height;   // mm, upright
};

inline constexpr std::array papers{
    PaperSize{"A4", 210, 297},          // ISO 216
    PaperSize{"Letter", 215.9, 279.4},  // ANSI Y14.1 size A: 8.5 in by 11 in
};

// Their names, as a choice of the spec.
inline constexpr std::string_view paper_choices = "A4|Letter";
static_assert(std::count(paper_choices.begin(), paper_choices.end(), '|') + 1 == papers.size());

// The size of this name; of a name that is none, the first.
constexpr const PaperSize& paper_named(std::string_view name) {
  for (const PaperSize& size : papers) {
    if (size.name == name) return size;
  }
  return papers.front();
}

}  // namespace loamsheet
