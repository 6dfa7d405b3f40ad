// placement_rules: the hard rules, which no plan breaks, and the soft ones, as a score.
#pragma once
#include <string>
#include <vector>

#include "plan/place/needs.h"
#include "plan/place/sites.h"

namespace loamsheet {

// The hard rules between a plant and a place: mounts take what can be mounted, epiphytes stay off
// the ground; roots find their depth; the least mature height fits; the foot keeps off the walls.
bool fits(const Needs&, const Site&);
bool right_kind(const Needs&, const Site&);
bool rooted(const Needs&, const Site&);

// How far apart the feet of two plants stay: half of both mature spreads, less what a ground cover
// may overlap.
Millimetres distance_kept(const Needs&, const Needs&);
bool clash(const Needs&, const Site&, const Needs&, const Site&);

// The soft rules, each from 0 to 1.
double light_fit(const Needs&, double ppfd);  // on a logarithmic scale
double light_fit(const Needs&, const Site&);
double humidity_fit(const Needs&, const Site&);  // too dry, or too damp for dry-loving plants
double habit_fit(const Needs&, const Site&);     // where such a plant shows and grows best
double headroom_fit(const Needs&, const Site&);  // for its full mature height

// Their weighted mean, in millionths, so that all machines compare alike.
long score(const Needs&, const Site&);

}  // namespace loamsheet
