#include <algorithm>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"

namespace loamsheet {
namespace {

using namespace constants;

// One species with all of its animals, wherever the spec names them.
struct Household {
  const Build& build;
  const KeptAnimal& animal;
  int count = 0;
};

Finding about(const Household& home, Weight weight, const char* rule, const Origins& origins) {
  return {weight,
          rule,
          home.animal.where,
          {{"animal", home.animal.facts.name}, {"source", sources_of(home.build, origins)}}};
}

struct Side {
  const Known<Range<Millimetres>>& wanted;
  Millimetres there;
  const char* rule;
};

Found too_small(const Household& home, const Side& side) {
  if (!side.wanted || side.there >= side.wanted->value.low) return {};
  Finding found = about(home, Weight::caution, side.rule, {side.wanted->origin});
  found.args.emplace_back("there", side.there);
  found.args.emplace_back("wanted", side.wanted->value.low);
  return {std::move(found)};
}

SquareMetres floor_wanted(const Household& home) {
  const Animal& facts = home.animal.facts;
  if (!facts.floor_length || !facts.floor_width) return {};
  const int more = std::max(0, home.count - housed_by_least);
  const double of_least = facts.floor_length->value.low.v * facts.floor_width->value.low.v / 1e6;
  return {of_least * (1 + floor_for_another.v * more)};
}

// Less than half of the floor that it needs grown; a young animal may still grow into it.
Found far_too_small_floor(const Household& home) {
  const SquareMetres wanted = floor_wanted(home), there = area(home.build.enclosure.footprint);
  if (wanted.v <= 0 || there >= wanted * far_too_small.v) return {};
  const Origins origins{home.animal.facts.floor_length->origin};
  const Weight weight = home.animal.juvenile ? Weight::caution : held(Weight::stop, origins);
  Finding found = about(home, weight, "enclosure-far-too-small", origins);
  found.args.emplace_back("there", there);
  found.args.emplace_back("wanted", wanted);
  return {std::move(found)};
}

Found too_small_for_number(const Household& home) {
  const SquareMetres wanted = floor_wanted(home), there = area(home.build.enclosure.footprint);
  if (home.count <= housed_by_least || there >= wanted) return {};
  Finding found = about(home, Weight::caution, "enclosure-too-small-for-number",
                        {home.animal.facts.floor_length->origin, {"de-1997"}});
  found.args.emplace_back("count", home.count);
  found.args.emplace_back("there", there);
  found.args.emplace_back("wanted", wanted);
  return {std::move(found)};
}

// The air above the layers, which may take a third of the height that the animal needs.
Found too_little_air(const Household& home) {
  const Animal& facts = home.animal.facts;
  const Layers& layers = home.build.layers;
  if (!facts.headroom || floor_wanted(home).v <= 0) return {};
  const Millimetres litter = layers.litter ? layers.litter->depth : Millimetres{0};
  const Millimetres ground =
      layers.drainage.depth + (layers.substrate.front + layers.substrate.back) / 2 + litter;
  const Litres there = volume(area(home.build.enclosure.footprint),
                              std::max(0_mm, home.build.enclosure.height - ground));
  const Litres wanted = volume(floor_wanted(home), facts.headroom->value.low * (1 - layers_take.v));
  if (there >= wanted) return {};
  Finding found = about(home, Weight::caution, "air-space-too-small", {facts.headroom->origin});
  found.args.emplace_back("there", there);
  found.args.emplace_back("wanted", wanted);
  return {std::move(found)};
}

// A law's minimum is printed with where it is the law; to meet it is not yet to keep an animal
// well.
Found legal_minimum(const Household& home) {
  const Animal& facts = home.animal.facts;
  if (!facts.floor_length || !facts.floor_width) return {};
  const auto source = home.build.sources.find(facts.floor_length->origin.name);
  if (source == home.build.sources.end() || source->second.jurisdiction.empty()) return {};
  Finding found = about(home, Weight::note, "legal-minimum", {facts.floor_length->origin});
  found.args.emplace_back("length", facts.floor_length->value.low);
  found.args.emplace_back("width", facts.floor_width->value.low);
  found.args.emplace_back("jurisdiction", source->second.jurisdiction);
  return {std::move(found)};
}

Found room_for(const Household& home) {
  const Enclosure& tank = home.build.enclosure;
  const Animal& facts = home.animal.facts;
  const Side sides[] = {
      {facts.floor_length, std::max(tank.width, tank.depth), "enclosure-too-short"},
      {facts.floor_width, std::min(tank.width, tank.depth), "enclosure-too-narrow"},
      {facts.headroom, tank.height, "enclosure-too-low"}};
  Found all = far_too_small_floor(home);
  if (all.empty()) {
    for (const Side& side : sides) append(all, too_small(home, side));
  }
  if (all.empty()) append(all, too_small_for_number(home));
  if (all.empty()) append(all, too_little_air(home));
  append(all, legal_minimum(home));
  return all;
}

int most_together(const std::string& society, int count) {
  if (society == "alone") return 1;
  return society == "pair" ? 2 : count;
}

Found company(const Household& home) {
  const auto& society = home.animal.facts.society;
  if (!society) return {};
  const Origins origins{society->origin};
  const int most = most_together(society->value, home.count);
  if (home.count <= most) return {};
  const bool alone = most == 1;
  Finding found = about(home, alone ? held(Weight::stop, origins) : Weight::caution,
                        alone ? "lives-alone" : "lives-in-pairs", origins);
  found.args.emplace_back("count", home.count);
  return {std::move(found)};
}

bool live_together(const Animal& a, const Animal& b) {
  const auto names = [](const Animal& one, const Animal& other) {
    if (!one.lives_with) return false;
    const auto& ids = one.lives_with->value;
    return std::find(ids.begin(), ids.end(), other.id) != ids.end();
  };
  return names(a, b) || names(b, a);
}

// Two species share a tank only where the catalogue says that they live together.
Found mixed(const Household& first, const Household& second) {
  if (live_together(first.animal.facts, second.animal.facts)) return {};
  return {{Weight::stop,
           "species-mixed",
           second.animal.where,
           {{"first", first.animal.facts.name}, {"second", second.animal.facts.name}}}};
}

std::vector<Household> households(const Build& build) {
  std::vector<Household> all;
  for (const KeptAnimal& kept : build.kept) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const Household& home) {
      return home.animal.facts.id == kept.facts.id;
    });
    if (same == all.end()) {
      all.push_back({build, kept, kept.count});
    } else {
      same->count += kept.count;
    }
  }
  return all;
}

}  // namespace

Found animal_fit(const Build& build) {
  Found all;
  const auto homes = households(build);
  for (size_t i = 0; i < homes.size(); ++i) {
    append(all, room_for(homes[i]));
    append(all, company(homes[i]));
    for (size_t before = 0; before < i; ++before) append(all, mixed(homes[before], homes[i]));
  }
  return all;
}

}  // namespace loamsheet
