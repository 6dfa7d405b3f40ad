// parts: what each part of the sheet says. One function a part, one file a part.
#pragma once
#include "compose/compose.h"

namespace loamsheet {

Part first_page(const ComposeInput&);
Part layers_page(const ComposeInput&);
Part planting_page(const ComposeInput&);  // of a plan with planting
Part order_page(const ComposeInput&);     // of a plan with an order
Part calendar_page(const ComposeInput&);  // of a plan with a calendar
Part care_page(const ComposeInput&);
Part record_page(const ComposeInput&);
Part readiness_page(const ComposeInput&);
Part cautions_page(const ComposeInput&);

}  // namespace loamsheet
