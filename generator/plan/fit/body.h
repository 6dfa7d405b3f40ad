// fit_body: how large an animal is and what it does to plants, in the grades 1 to 5 in which the
// catalogue gives a plant's robustness: 1 bears an animal up to 5 g, 2 up to 10 g, 3 up to 50 g, 4
// up to 300 g, 5 any.
#pragma once
#include <optional>

#include "check/build.h"

namespace loamsheet {

// Of one grown animal; nothing when nobody knows it. What was stated of it now counts, too.
std::optional<Kilograms> grown_mass(const KeptAnimal&);

// Body lengths: grown, and of the smallest now. A juvenile whose mass is stated has the cube root
// of its share of the grown mass, for bodies grow alike in all directions; one without is as long
// as it hatches, or a third of the least grown length (common practice).
std::optional<Range<Millimetres>> grown_length(const KeptAnimal&);
std::optional<Millimetres> smallest_length(const KeptAnimal&);

// The grade of the catalogue, or else of the mass and one more for claws, digging or jumping; one
// more where four or more animals that leave marks live together (common practice).
std::optional<Fact<int>> wear_grown(const KeptAnimal&);
std::optional<int> wear_now(const KeptAnimal&);

bool eats_insects(const KeptAnimal&);
bool digs(const KeptAnimal&);

// Climbs with claws and weighs more than 50 g grown, or leaves wear of grade 4 or more; a mass that
// is only from memory is not counted on.
bool heavy_clawed_climber(const KeptAnimal&);

// A plant is out of an animal's reach when its foot is further than one grown body length from
// every place that the animal gets to. What lives in trees gets everywhere; what climbs else, onto
// every branch and the background; what does neither stays on the ground.
bool out_of_reach(const Build&, const PlantUse&, const KeptAnimal&);

}  // namespace loamsheet
