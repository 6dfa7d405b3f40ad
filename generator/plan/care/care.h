// care: what is done in which order and on which day, and when the animal may go in.
#pragma once
#include <string>
#include <vector>

#include "base/date.h"
#include "base/finding.h"
#include "check/build.h"
#include "plan/care/schedule.h"
#include "plan/choose/choose.h"
#include "plan/place/place.h"

namespace loamsheet {

class FieldSink;
class Sink;

// The earliest day on which the animal may go in; it holds only when the readiness is signed.
struct Ready {
  Date earliest;
  int days = 0;                      // counted from the day of planting
  std::vector<std::string> because;  // ids: "after-planting", "after-move"
};
void fields(const Ready&, const Build&, FieldSink&);

// What is known once the work is put in order and dated.
struct Scheduled : Planted {
  Ready ready;
  std::vector<Step> order;
  std::vector<CalendarDay> calendar;
  std::vector<CalendarDay> calendar_before;  // of a revision that replaces plants or slips
  int cure_days = 0;  // the longest that anything has to cure; 0: nothing has to
};

// Fills the order and the calendar of a plan whose plants are placed and whose readiness is known.
void add_schedule(const Build&, Scheduled&);

// Dates of planting and move.
Found schedule_findings(const Build&, const Scheduled&);

// What was taken on, replaced and chosen: stops cannot be taken on; what a number or a rule names
// must be there. `found` is what the other rules found.
Found record_findings(const Build&, const std::vector<Selection>&, const Found& found);

// The conditions that rules may name, and an error for each that they name besides, at its rule.
std::vector<std::string> task_conditions();
void check_conditions(const TaskRules&, Sink&);

// False for a name that is none.
bool condition_holds(const std::string& name, const Build&);

// All of a rule's "if" hold and none of its "unless" does.
bool applies(const Conditions&, const Build&);

// Makes Build::replaced part of the plants: each keeps its number and remembers what stood there
// first. Plants are to be numbered already.
void put_replacements(Build&);

// The days on which plants were replaced, counted from planting, each once, in order.
std::vector<int> replacement_days(const Build&);

}  // namespace loamsheet
