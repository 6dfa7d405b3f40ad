#include "check/slip.h"

namespace loamsheet {

void move_dates(Identity& id, int days) {
  const auto moved = [&](Date& date) { date = plus_days(date, days); };
  if (!id.done_until) moved(id.plant_on);
  if (id.moves_on && (!id.done_until || *id.moves_on > *id.done_until)) moved(*id.moves_on);
}

}  // namespace loamsheet
