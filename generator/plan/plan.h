// plan: what follows from a checked build - volumes, masses, water, findings.
// In: Build. Out: Plan. Pure: no files, no clock, no locale, no words, no positions on paper.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/units.h"
#include "check/build.h"
#include "plan/choose.h"
#include "plan/climate.h"
#include "plan/dosing.h"
#include "plan/finding.h"
#include "plan/fittings.h"
#include "plan/lift.h"
#include "plan/planting.h"
#include "plan/quantities.h"
#include "plan/quote.h"
#include "plan/readings.h"
#include "plan/schedule.h"
#include "plan/water_days.h"

namespace loamsheet {

enum class Status { cleared, provisional, not_cleared };

struct MassPlan {
  Kilograms empty;
  Range<Kilograms> dry, wet;
  std::optional<Range<Kilograms>> stand_margin;
  Range<double> stand_load;  // wet, kg on a square metre of the outside of the base
};

// Nothing where it does not apply: an arid build is not watered through; without a drainage
// layer no water stands.
struct WaterPlan {
  std::optional<Range<Litres>> first_watering;
  std::optional<Range<Millimetres>> standing;
  std::optional<Millimetres> highest_standing;  // level that keeps the air gap under the mesh
};

// The earliest day on which the animal may go in; it holds only when the readiness is signed.
struct Ready {
  Date earliest;
  int days = 0;                      // counted from the day of planting
  std::vector<std::string> because;  // ids: "after-planting", "after-move"
};

struct Pack {
  double size = 0;  // in the unit of the need
  int count = 0;
  double sold = 0;  // as the stock list has it, in `sold_unit`
  std::string sold_unit{};
  std::optional<Money> price{};  // net, of one
  std::string shelf{};
};

struct PullItem {
  std::string use;   // one of pull_uses()
  std::string item;  // id of a material, a plant or a crew species
  double need = 0;
  std::string unit;            // L, m2, kg, piece
  std::vector<Pack> packs;     // whole packs that cover the need; empty without stock
  std::optional<Money> price;  // net, of those packs; nothing where one has no price
  double missing = 0;          // of the need, beyond what is on hand
  double left_over = 0;        // of the packs, beyond the need
};

struct Plan {
  Status status = Status::cleared;
  SquareMetres footprint_area;
  Millimetres footprint_perimeter;
  LayersPlan layers;
  MassPlan mass;
  WaterPlan water;
  std::vector<PullItem> pull_list;
  std::vector<std::string> tools;  // of the bench, that the tasks need
  Ready ready;
  std::optional<Quote> quote;
  std::vector<DosePlan> doses;
  std::vector<CrewPlan> crew;
  std::vector<TapeMark> marks;
  std::vector<Cut> cuts;
  std::optional<SupportsPlan> supports;
  std::vector<FixedLoad> fixed;
  std::optional<WaterAreaPlan> water_area;
  std::optional<TransportPlan> transport;
  std::optional<LiftPlan> lift;
  std::optional<SackLift> sack;
  std::optional<AirPlan> air;
  std::optional<HeatPlan> heat;
  std::vector<UvPlan> uv;
  std::vector<FirstReading> readings;  // to take first, the most telling first
  std::optional<UpkeepPlan> upkeep;
  std::optional<PlantingPlan> planting;
  std::vector<Selection> selections;  // of the plants that the plan picked
  std::vector<Step> order;
  std::vector<CalendarDay> calendar;
  std::vector<CalendarDay> calendar_before;  // of a revision that replaces plants or slips
  int cure_days = 0;              // the longest that anything has to cure; 0: nothing has to
  std::vector<Finding> findings;  // stops first, then cautions, then notes; in spec order
};

// `selections` say how the plants came in that choose_plants() picked.
Plan make_plan(const Build&, std::vector<Selection> selections = {});

// The plan as stable text.
std::string dump(const Plan&);

}  // namespace loamsheet
