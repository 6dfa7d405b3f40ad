// Atoms: the parts of a text that no line break divides, with what may follow each.
#pragma once
#include <string>
#include <vector>

#include "compose/sheet.h"
#include "type/type.h"

namespace loamsheet {

// What stands between an atom and the next: nothing (they stay together), a blank that a break
// swallows, a place to break without one (after a hyphen), or an end of line.
enum class Gap { none, blank, seam, line };

struct Atom {
  std::string text;
  Face face = Face::regular;
  double width = 0;
  Gap after = Gap::none;
  double blank = 0;  // width of the blank after it
};

// Breaks are allowed at blanks (U+0020 and U+0009, runs of them count as one), and after a hyphen,
// en dash or slash between letters: dates, ranges and fractions stay whole, as in UAX 14
// (Unicode line breaking), rules HY x NU and SY x NU. No-break blanks are letters here,
// and so is the blank in an amount: a number is not parted from its unit.
std::vector<Atom> atoms(const Words&, double size, const Typefaces&);

// The same with every stretch between breaks no wider than `measure`, by breaking between letters.
std::vector<Atom> broken_by_force(std::vector<Atom>, double size, double measure, const Typefaces&);

}  // namespace loamsheet
