// parts: what each part of the sheet says. One function a part, one file a part.
#pragma once
#include <optional>

#include "compose/compose.h"

namespace loamsheet {

// The highest waterline as tape on the outside shows it: the base's thickness lies under the
// inside floor. Nothing without a drainage layer.
std::optional<Millimetres> outside_waterline(const ComposeInput&);

// What changed since the revision before: plants that were replaced, dates that moved.
std::vector<Words> change_lines(const ComposeInput&);

// The cautions that somebody takes on, each with who and why.
std::vector<Words> taken_on_lines(const ComposeInput&);

// How the plants were picked that the spec left open.
void add_selections(const ComposeInput&, std::vector<Block>&);

// The figure of this id, where the plan has one.
void add_figure(const ComposeInput&, const char* id, std::vector<Block>&);

// The lines of one of care_lists() that the build has.
std::vector<Words> care_points(const ComposeInput&, const std::string& list);

// What the spec did not state itself, by where it is from.
void add_assumed(const ComposeInput&, std::vector<Block>&);

// What to measure first to know the enclosure better.
void add_readings(const ComposeInput&, std::vector<Block>&);

Part first_page(const ComposeInput&);
Part pull_page(const ComposeInput&);
Part layers_page(const ComposeInput&);
Part marks_page(const ComposeInput&);
Part loads_page(const ComposeInput&);
Part climate_page(const ComposeInput&);   // of a plan with air
Part planting_page(const ComposeInput&);  // of a plan with planting
Part order_page(const ComposeInput&);     // of a plan with an order
Part quote_page(const ComposeInput&);     // of a plan with a quote
Part calendar_page(const ComposeInput&);  // of a plan with a calendar
Part care_page(const ComposeInput&);
Part record_page(const ComposeInput&);
Part readiness_page(const ComposeInput&);
Part cautions_page(const ComposeInput&);

}  // namespace loamsheet
