// Pass 5, furnish: running heads and feet, once the number of pages is known.
#pragma once
#include "catalogue/style.h"
#include "compose/sheet.h"
#include "layout/pages.h"
#include "type/type.h"

namespace loamsheet {

// Every page gets the sheet's running head over a thin rule, and its foot with the page number.
// All are artifacts. What does not fit on its line ends in an ellipsis.
void furnish(const Sheet&, const Typefaces&, const PageStyle&, Pages&);

}  // namespace loamsheet
