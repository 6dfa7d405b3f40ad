#include "plan/fill/water_density.h"

namespace loamsheet {

KilogramsPerCubicMetre water_density(Celsius temperature) {
  const double t = temperature.v;
  const double above =
      999.83952 +
      t * (16.952577 +
           t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))));
  return {above / (1 + 16.887236e-3 * t)};
}

}  // namespace loamsheet
