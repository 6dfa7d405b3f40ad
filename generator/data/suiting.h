// suiting: how a plant of the catalogue suits an animal, as one more thing that is known of it.
#pragma once
#include <string>

#include "catalogue/wording.h"
#include "check/build.h"
#include "data/stated.h"

namespace loamsheet {

// A build of the animal's kind with that animal alone, for plants to be held against. An error when
// there is no such animal.
Outcome<Build> build_around(const Catalogue&, const std::string& animal);

// "yes", "with caution" or "no" with the rules behind it; in full, with their sentences.
Stated suits(const Build&, const Plant&, const Wording&, bool in_full);

}  // namespace loamsheet
