// shaded: the light that a plant gets among its grown neighbours.
#pragma once
#include <optional>
#include <vector>

#include "plan/light/light_field.h"

namespace loamsheet {

// A plant's foot, and the crowns of all plants by their index; nothing for one without a place.
struct AmongCrowns {
  Position foot;
  size_t plant;
  const std::vector<std::optional<Crown>>& crowns;
};

// The light at the foot's height, less the share that the crowns of the others take from the middle
// of the plant's own crown: every part of every lamp by its own way (Beer and Lambert).
LightAt shaded_light(const LightField&, const AmongCrowns&);

}  // namespace loamsheet
