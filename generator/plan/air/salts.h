// salts: how the minerals of the water gather where nothing drains away.
#pragma once
#include <optional>

#include "check/build.h"

namespace loamsheet {

// Whether water can be drawn off below: a drainage layer with an outlet.
bool drains_away(const Build&);

// Days until the water held in the substrate, which starts as pure as what is brought, has come to
// what salt-shy plants bear: all that is brought stays. Nothing where it drains away, where nobody
// says what the water is, or where the substrate is renewed before. Litres held and brought a day.
std::optional<int> flush_every(const Build&, Litres held, Litres a_day);

}  // namespace loamsheet
