// parts: what each part of the sheet says. One function a part, one file a part.
#pragma once
#include "compose/compose.h"

namespace loamsheet {

Part first_page(const ComposeInput&);
Part layers_page(const ComposeInput&);
Part cautions_page(const ComposeInput&);

}  // namespace loamsheet
