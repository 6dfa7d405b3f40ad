// dump_lines: how the rules and boxes of a page are said in its dump.
#pragma once
#include <string>
#include <vector>

#include "layout/pages.h"

namespace loamsheet {

// Rules and boxes that follow one another; of three and more rules of one kind only how many there
// are, how far they reach and how long they are in all. Heights are above what was placed before,
// at `y`; afterwards `y` is where the last of them is.
struct SaidLines {
  std::string kinds, text;  // "box, rule", and with places
};
SaidLines said_lines(const std::vector<const PageMark*>&, double& y);

}  // namespace loamsheet
