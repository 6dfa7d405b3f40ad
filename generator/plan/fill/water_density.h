// water_density: how heavy water is.
#pragma once
#include "base/units.h"

namespace loamsheet {

// Density of air-free water at one atmosphere, for 0 to 100 °C: Kell's equation in the ITS-90 form
// of Bettin and Spieweck, as given in IP Standard Methods (1998), appendix G.
KilogramsPerCubicMetre water_density(Celsius);

}  // namespace loamsheet
