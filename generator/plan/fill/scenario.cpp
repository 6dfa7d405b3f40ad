#include "plan/fill/scenario.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "plan/fill/fill.h"
#include "plan/fill/first_watering.h"
#include "plan/fill/ground.h"
#include "plan/fill/mass.h"
#include "plan/fill/water_area.h"

namespace loamsheet {
namespace {

constexpr size_t corners_limit = 8;  // unknowns up to which every corner is looked at
constexpr int inside_samples = 16;

using Place = std::vector<double>;  // one place for each unknown, then density, then moisture

Scenario scenario_at(const Place& point) {
  const auto unknowns = point.end() - 2;
  return {{point.begin(), unknowns}, unknowns[0], unknowns[1]};
}

bool is_prime(int n) {
  for (int d = 2; d * d <= n; ++d) {
    if (n % d == 0) return false;
  }
  return n > 1;
}

int next_prime(int after) {
  while (!is_prime(++after)) {
  }
  return after;
}

// The digits of `index` in `base`, mirrored behind the point: van der Corput's sequence.
double mirrored(int index, int base) {
  double value = 0, place = 1.0 / base;
  for (; index > 0; index /= base, place /= base) value += index % base * place;
  return value;
}

// One point of Halton's sequence: a prime base for each dimension.
Place sample(int index, size_t dimensions) {
  Place point;
  for (int base = next_prime(1); point.size() < dimensions; base = next_prime(base)) {
    point.push_back(mirrored(index, base));
  }
  return point;
}

// Every corner of a cube: bit k of the corner's number is the place in dimension k.
std::vector<Place> corners(size_t dimensions) {
  std::vector<Place> all(size_t{1} << dimensions, Place(dimensions));
  for (size_t corner = 0; corner < all.size(); ++corner) {
    for (size_t k = 0; k < dimensions; ++k) all[corner][k] = static_cast<double>(corner >> k & 1);
  }
  return all;
}

// For many unknowns: the corners with all unknowns moving as one, and each dimension alone.
std::vector<Place> star(size_t unknowns) {
  std::vector<Place> all;
  for (const Place& corner : corners(3)) {
    Place point(unknowns, corner[0]);
    point.insert(point.end(), {corner[1], corner[2]});
    all.push_back(std::move(point));
  }
  for (size_t k = 0; k < unknowns + 2; ++k) {
    for (double end : {0.0, 1.0}) {
      Place point(unknowns + 2, 0.5);
      point[k] = end;
      all.push_back(std::move(point));
    }
  }
  return all;
}

// By more than the rounding of the last printed digit.
bool differ(double a, double b) {
  return std::fabs(a - b) > 1e-6 * std::max({1.0, std::fabs(a), std::fabs(b)});
}

bool differ(const Result& a, const Result& b) {
  return differ(a.first_watering.v, b.first_watering.v) || differ(a.standing.v, b.standing.v) ||
         differ(a.dry.v, b.dry.v) || differ(a.wet.v, b.wet.v) || differ(a.strokes, b.strokes);
}

// An amount where the scenario has its unknown, or else in its middle.
double at_place(const Uncertain<Litres>& amount, const Scenario& scenario) {
  const double place = amount.unknown < 0 ? 0.5 : scenario.at[static_cast<size_t>(amount.unknown)];
  return (amount.range.low + (amount.range.high - amount.range.low) * place).v;
}

double strokes_per_litre(const Build& build, const Scenario& scenario) {
  if (!build.misting) return 0;
  const Misting& mister = *build.misting;
  if (mister.by_hand) return 1 / at_place(mister.pull, scenario);
  return 60 / (mister.nozzles * at_place(mister.flow, scenario));
}

}  // namespace

Decisions decide(const Build& build) {
  const Ground parts = ground(build);
  const LayersPlan layers = plan_layers(build, parts);
  const auto water = plan_water_area(build, layers);
  return {layers, water ? water->volume : Litres{}, water ? water->dam : Kilograms{},
          empty_mass(build.enclosure), highest_standing(build)};
}

Result evaluate(const Build& build, const Decisions& decisions, const Scenario& scenario) {
  const Litres deficit =
      watered_through(build) ? field_capacity_deficit(build, decisions, scenario) : Litres{};
  const Litres drained = run_through(build, deficit);
  return {deficit + drained,
          standing_level(build, decisions.layers, drained),
          dry_mass(build, decisions, scenario),
          wet_mass(build, decisions, scenario, drained),
          moved_mass(build, decisions, scenario),
          strokes_per_litre(build, scenario)};
}

std::vector<Scenario> scenarios(const Build& build) {
  const size_t unknowns = build.unknowns.size();
  std::vector<Place> points = unknowns <= corners_limit ? corners(unknowns + 2) : star(unknowns);
  for (int i = 1; i <= inside_samples; ++i) points.push_back(sample(i, unknowns + 2));
  std::vector<Scenario> all;
  std::transform(points.begin(), points.end(), std::back_inserter(all), scenario_at);
  return all;
}

Range<double> sweep(const Build& build, const Decisions& decisions, double (*read)(const Result&)) {
  std::vector<double> values;
  for (const Scenario& scenario : scenarios(build)) {
    values.push_back(read(evaluate(build, decisions, scenario)));
  }
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  return {*low, *high};
}

bool matters(const Build& build, const Decisions& decisions, size_t unknown) {
  for (Scenario scenario : scenarios(build)) {
    if (scenario.at[unknown] != 0) continue;
    const Result low = evaluate(build, decisions, scenario);
    scenario.at[unknown] = 1;
    const Result high = evaluate(build, decisions, scenario);
    if (differ(low, high)) return true;
  }
  return false;
}

}  // namespace loamsheet
