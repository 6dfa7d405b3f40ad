// around: the cases of what is around the tank and of what is not known well, that the air is
// worked out for.
#pragma once
#include <vector>

#include "plan/air/balance.h"

namespace loamsheet {

// Every end taken with every other, at one temperature of the room: 8 cases.
std::vector<Around> cases_around(const Build&, Celsius room);

// The middle of them all.
Around usual_around(const Build&, Celsius room);

// How much of the worked-out evaporation there may be. A measured loss of water, which is taken as
// the mean over the year, narrows it to what the balance needs to lose as much.
Range<double> evaporation_ends(const Build&);

// Kilograms of water that leave in a day through the openings, the mean of both ends of the year,
// half of it day.
double daily_loss(const Build&, const Shell&, double evaporation);

}  // namespace loamsheet
