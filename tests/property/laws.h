// laws: what the property tests draw their specs from, and how a law is held: over a fixed seed, so
// that every run looks at the same cases.
#pragma once
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cstdlib>
#include <string>
#include <utility>

#include "check/build.h"

namespace loamsheet::tests {

// A whole number between two ends, both included.
int drawn(int low, int high);

// One of the footprints of the spec with round measures, and a build on it with layers of every
// kind, without unknowns.
Region drawn_footprint();
Build drawn_build();

// Makes the moisture of each part of the mix an unknown with drawn ends.
Build with_drawn_unknowns(Build build);

template <class Law>
void holds(const std::string& law, Law&& check) {
  setenv("RC_PARAMS", "seed=20260307 verbose_progress=0", 0);
  INFO(law);
  CHECK(rc::check(law, std::forward<Law>(check)));
}

}  // namespace loamsheet::tests
