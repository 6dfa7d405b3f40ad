#include <cmath>

#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

std::string worked_with(const Wording& w, const FirstReading& reading) {
  const std::string name = "readings." + reading.of;
  if (reading.of == "room-humidity") return w.say(name, {{"used", reading.share}});
  if (reading.of == "uv" || reading.of == "openings" || reading.of == "water-lost") {
    return w.say(name);
  }
  return w.say(name, {{"used", reading.celsius}});
}

// What the reading settles, where the balance says so: points of humidity are whole numbers.
std::string settles(const Wording& w, const FirstReading& reading) {
  const int points = static_cast<int>(std::lround(reading.humidity * 100));
  return points > 0 ? w.say("readings.moves", {{"points", points}}) : w.say("readings.end");
}

}  // namespace

void add_readings(const ComposeInput& in, std::vector<Block>& blocks) {
  const auto& readings = in.plan.readings;
  if (readings.empty()) return;
  const Wording& w = in.wording;
  Words words{{w.say("readings.lead"), Face::bold}};
  int number = 0;
  for (const FirstReading& reading : readings) {
    words.push_back({w.say("readings.one", {{"number", ++number},
                                            {"what", worked_with(w, reading)},
                                            {"moves", settles(w, reading)}}),
                     Face::regular});
  }
  blocks.push_back(Paragraph{std::move(words), true});
}

}  // namespace loamsheet
