// Letters: whether the faces have a glyph for every letter of the pages.
#pragma once
#include "base/diagnostic.h"
#include "layout/pages.h"
#include "type/type.h"

namespace loamsheet {

// One error for each letter that a face lacks, in order of first use. Such a letter can only have
// come from what the user wrote.
void check_letters(const Pages&, const Typefaces&, Sink&);

}  // namespace loamsheet
