// paint: Pages -> PDF bytes. The only user of libharu. Fonts are cut to the glyphs in use before
// libharu sees them. Figures are left out: finish puts them in.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "layout/pages.h"
#include "type/type.h"

namespace loamsheet {

Outcome<std::string> paint(const Pages&, const Typefaces&);

}  // namespace loamsheet
