// misting: the routine from planting to the animal's own regime, and one misting as the hand does
// it.
#pragma once
#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

// Between two days the mistings taper in a straight line. All numbers are common practice.
struct Routine {
  double first = 0, later = 0;  // mistings a day
  int none_before = 0;          // the first day with a misting
  int steady_until = 0, tapered_by = 0;
  Fraction refill;                    // of field capacity: drier than this wants water
  Fraction first_level, later_level;  // aimed at, from the refill point (0) to field capacity (1)
  Millimetres most;                   // of water on the floor in one misting
};

Routine routine_for(const Build&);

// Whole mistings on a day from 0, so spaced that their sum follows the routine.
int mistings_on(const Routine&, int day);

// The mistings of each day for so many days from a day, while a timer stays as it was set.
int mistings_from(const Routine&, int day, int days);

// Every day has its mistings, so that a timer can give them.
constexpr bool is_daily(const Routine& routine) {
  return routine.first >= 1 && routine.later >= 1;
}

// What is aimed at on a day, from the refill point (0) to field capacity (1).
Fraction level_on(const Routine&, int day);

// What one second of the pump or one pull gives, at the middle of what is known.
Litres per_stroke(const Misting&);

// So many mistings of so many whole seconds or pulls; long bursts in steps of five seconds.
struct Spray {
  int mistings = 0;
  double each = 0;
  Litres amount;
};

// The spray that gives `wanted` or a little more, in at most `mistings`, but never more than
// `most`. None when a single short burst would be too much.
Spray spray(const Misting&, Litres wanted, Litres most, int mistings);

}  // namespace loamsheet
