// rules: the work and care of a build as data (templates/tasks.yaml): which steps there are and
// what each waits for, what is done on which day, and how long the tank stays empty.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"
#include "base/world.h"
#include "catalogue/file.h"

namespace loamsheet {

// On what a rule depends: names of conditions, which plan/care knows.
struct Conditions {
  std::vector<std::string> all, none;  // all of these hold; none of these does
};

// A step at the bench. Its sentence is order.ID.
struct WorkRule {
  std::string id, group;           // one of task_groups()
  std::string each;                // raised, floor: a step of every such plant; may be empty
  std::vector<std::string> after;  // ids of steps that come before
  std::vector<std::string> slots;  // numbers that its sentence shows
  std::vector<std::string> needs;  // tools, supplies and uses of the pull list
  Conditions when;
  int minutes = 0;     // hands on
  bool pause = false;  // a good place to stop for the day
  Span where;
};

// Something that is done on a day, or again and again.
struct CareRule {
  enum class From { planting, move, ready, replacement };
  std::string id;
  From from = From::planting;
  int on = 0;                      // days after that; negative: before it
  std::optional<int> to;           // the last day, when it comes again
  int every = 0;                   // days; 0: once
  bool moves = true;               // to an open day, when the shop is closed
  bool milestone = false;          // has an entry of its own in a diary
  bool while_empty = false;        // only before the animal's earliest day
  std::string amount;              // what is shown with it; may be empty
  std::vector<std::string> after;  // tasks of the lead-up, and the days that lie between at least
  int gap = 0;
  std::vector<std::string> needs;  // as of a step; those of a step of the same name go without
                                   // saying
  Conditions when;
  Span where;
};

// A reason to keep the tank empty for longer.
struct ReadinessRule {
  std::string id;
  int days = 0;            // at least so many after planting or the move
  int more = 0;            // on top of what the other rules say
  int after_acquired = 0;  // at least so many after the animal came
  Conditions when;
  Span where;
};

// What is pulled besides what the spec names, when a task needs it.
struct Supply {
  std::string id;     // of a material
  std::string per;    // what is counted: one of supply_counts()
  std::string unit;   // L, kg, m2, piece
  double amount = 0;  // for each
  Span where;
};

// A line of the care sheet's lists, or a box to tick before the animal goes in. Its sentence is
// care.point.ID.
struct CarePoint {
  std::string id, under;  // one of care_lists()
  Conditions when;
  Span where;
};

struct TaskRules {
  std::vector<WorkRule> work;
  std::vector<CareRule> care;
  std::vector<ReadinessRule> readiness;
  std::vector<std::string> tools;  // of the bench
  std::vector<Supply> supplies;
  std::vector<CarePoint> points;
};

// The names that rules may use; groups in working order.
std::vector<std::string> task_groups();
std::vector<std::string> task_slots();
std::vector<std::string> task_amounts();
std::vector<std::string> supply_counts();
std::vector<std::string> care_lists();
std::vector<std::string> pull_uses();  // what the lines of a pull list are for

// templates/tasks.yaml with its bytes, and the rules in it: the two may be done at two times.
YamlFilePtr rules_file(World&, Sink&);
Outcome<TaskRules> rules_in(const YamlFile&);

// Reads templates/tasks.yaml. A step that waits for one that is not there, steps that wait for one
// another, and a need that nothing meets are errors with their place.
Outcome<TaskRules> read_rules(World&);

}  // namespace loamsheet
