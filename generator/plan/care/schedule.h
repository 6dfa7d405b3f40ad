// schedule: what is done in which order, and on which day.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "base/date.h"
#include "base/finding.h"
#include "check/build.h"

namespace loamsheet {

class FieldSink;

// A step of the build. `task` is an id; the sentence is "order.TASK" of templates/en/order.yaml,
// filled with the numbers.
struct Step {
  int number = 0;        // from 1, in working order
  std::string task;      // "spread-drainage", "plant-3"
  std::string sentence;  // name of the sentence
  std::string group;     // lead-up, tank, drainage, ..., planting, after
  Args args;
  std::vector<int> after;  // numbers of steps that come before
  int minutes = 0;         // hands on
  bool pause = false;      // a good place to stop for the day
};
void fields(const Step&, FieldSink&);

struct CalendarTask {
  std::string task;        // id; sentences "calendar.task.TASK" and, short, "calendar.short.TASK"
  std::string amount;      // its sentence is "calendar.amount.AMOUNT"; may be empty
  int due = 0;             // days after planting, the move or readiness, before it was moved
  bool milestone = false;  // deserves an entry of its own in a diary
  Args args;
};
void fields(const CalendarTask&, FieldSink&);

struct CalendarDay {
  int day = 0;  // 0 is the planting day; lead-up is negative
  Date date;
  std::vector<CalendarTask> tasks;
};
void fields(const CalendarDay&, FieldSink&);

}  // namespace loamsheet
