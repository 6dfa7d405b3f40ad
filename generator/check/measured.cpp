#include "check/checking.h"

namespace loamsheet {

void check_measured(Checking& c) {
  constexpr double ml_per_litre = 1000;
  const auto lost = c.root.range("measured.water_lost");
  if (!lost) return;
  c.build.measured_loss = Range<Litres>{{lost->low / ml_per_litre}, {lost->high / ml_per_litre}};
}

}  // namespace loamsheet
