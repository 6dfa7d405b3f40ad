#include <algorithm>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"

namespace loamsheet {
namespace {

using namespace constants;

Finding about(const Opening& opening, Weight weight, const char* rule) {
  return {weight, rule, opening.where, {{"opening", opening.name}}};
}

// What holds the smallest animal of a species back.
std::optional<Millimetres> thinnest(const KeptAnimal& animal) {
  const auto length = smallest_length(animal);
  const auto& thickness = animal.facts.body.thickness;
  if (!length || !thickness) return std::nullopt;
  return *length * thickness->value.v;
}

Found through(const Build& build, const Opening& opening, const KeptAnimal& animal) {
  const auto size = thinnest(animal);
  if (!size || *opening.gap < *size) return {};
  Finding found = about(opening, Weight::caution, "escape-gap");
  found.args.emplace_back("animal", animal.facts.name);
  found.args.emplace_back("gap", *opening.gap);
  found.args.emplace_back("size", *size);
  found.args.emplace_back("source", sources_of(build, {animal.facts.body.thickness->origin}));
  return {std::move(found)};
}

Found escapes(const Build& build, const Opening& opening) {
  if (!opening.kind->swings && !opening.mesh) {
    return {about(opening, Weight::caution, "opening-without-mesh")};
  }
  if (!opening.gap) return {about(opening, Weight::note, "mesh-not-measured")};
  Found all;
  for (const KeptAnimal& animal : build.kept) append(all, through(build, opening, animal));
  return all;
}

// The width of the food insects of the animal with the smallest.
std::optional<Millimetres> feeder_width(const Build& build) {
  std::optional<Millimetres> least;
  for (const KeptAnimal& animal : build.kept) {
    if (!animal.facts.feeder || !eats_insects(animal)) continue;
    const Range<Millimetres>& length = animal.facts.feeder->value;
    const Millimetres width = (length.low + length.high) / 2 * feeder_width_share.v;
    least = std::min(least.value_or(width), width);
  }
  return least;
}

// Said once, of the widest gap.
Found feeders(const Build& build) {
  const auto width = feeder_width(build);
  const Opening* widest = nullptr;
  for (const Opening& opening : build.enclosure.openings) {
    if (opening.gap && (!widest || *opening.gap > *widest->gap)) widest = &opening;
  }
  if (!width || !widest || *widest->gap < *width) return {};
  Finding found = about(*widest, Weight::note, "feeders-escape");
  found.args.emplace_back("gap", *widest->gap);
  found.args.emplace_back("size", *width);
  return {std::move(found)};
}

}  // namespace

Found escape_fit(const Build& build) {
  Found all;
  if (build.kept.empty()) return all;
  for (const Opening& opening : build.enclosure.openings) append(all, escapes(build, opening));
  append(all, feeders(build));
  return all;
}

}  // namespace loamsheet
