// draw: Figures -> bytes. The only user of Cairo.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "figure/figure.h"
#include "type/type.h"

namespace loamsheet {

// All figures as pages of one PDF, in order, each as large as the figure.
Outcome<std::string> draw_pdf(const Figures&, const Typefaces&);

Outcome<std::string> draw_svg(const Figure&, const Typefaces&);
Outcome<std::string> draw_png(const Figure&, const Typefaces&);  // 200 dots per inch

}  // namespace loamsheet
