// layout: Sheet x Typefaces x PageStyle -> Pages. Numbered passes, one a file: measure, break,
// place, furnish. Never: words, libraries.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "catalogue/style.h"
#include "compose/sheet.h"
#include "figure/figure.h"
#include "layout/pages.h"

namespace loamsheet {

Outcome<Pages> lay_out(const Sheet&, const Figures&, const Typefaces&, const PageStyle&);

std::string dump(const Pages&);

}  // namespace loamsheet
