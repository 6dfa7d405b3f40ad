// Faults: what must not be on a page, looked for in finished pages. Empty for sound pages.
#pragma once
#include <string>
#include <vector>

#include "layout/pages.h"
#include "type/type.h"

namespace loamsheet {

// One sentence each, with the page: texts that overlap (from descender to capital height), text
// or figures outside the page's body (running text: nearer than 5 mm to the paper's edge), text
// over a figure, pages without content, a heading as the last text of a page.
std::vector<std::string> faults(const Pages&, const Typefaces&);

}  // namespace loamsheet
