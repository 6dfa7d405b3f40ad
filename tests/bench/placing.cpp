// One placement of so many plants in an enclosure so wide, with a floor grid of about so many
// sites, for counting its instructions: placing PLANTS WIDTH_MM SITES.
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "plan/place/search.h"

using namespace loamsheet;

namespace {

Site site_at(double x, double y, double width) {
  Site site;
  site.at = {x, y, 130};
  site.root = 80_mm, site.headroom = 450_mm;
  site.wall = {std::min({x, width - x, y, width / 2 - y})};
  site.support = {std::min({x, width - x, width / 2 - y})};
  site.across = x / width, site.back = y / (width / 2);
  site.light.ppfd = 40 + 160 * std::exp(-std::pow((x - width / 2) / width * 3, 2));
  site.humidity = {{0.75 + 0.1 * (1 - site.back)}, {0.85}};
  return site;
}

ToPlace plant_of(int i, double width) {
  constexpr Habit habits[] = {Habit::low, Habit::tall, Habit::creeper, Habit::climber, Habit::low};
  ToPlace plant;
  Needs& needs = plant.needs;
  needs.habit = habits[i % 5];
  needs.height = {Millimetres{60.0 + 20 * (i % 7)}, Millimetres{150.0 + 30 * (i % 9)}};
  needs.spread = {std::min(80.0 + 15 * (i % 8), width / 9)};
  needs.root = 40_mm;
  needs.ppfd.low = 20 + 10 * (i % 10), needs.ppfd.high = needs.ppfd.low * 4;
  needs.humidity = Fraction{0.5 + 0.05 * (i % 7)};
  return plant;
}

}  // namespace

int main(int count, char** words) {
  if (count != 4) return 2;
  const int plants = std::atoi(words[1]);
  const double width = std::atof(words[2]), sites = std::atof(words[3]);
  const double step = std::sqrt(width * width / 2 / sites);
  std::vector<Site> all;
  for (double y = step / 2; y < width / 2; y += step) {
    for (double x = step / 2; x < width; x += step) all.push_back(site_at(x, y, width));
  }
  std::vector<ToPlace> wanted;
  for (int i = 0; i < plants; ++i) wanted.push_back(plant_of(i, width));
  const Placement found = place(wanted, all, Position{width / 2, width / 4, 650});
  std::printf("%d plants, %zu sites: score %.3f, bound %.3f\n", plants, all.size(),
              double(found.score) / 1e6, double(found.bound) / 1e6);
}
