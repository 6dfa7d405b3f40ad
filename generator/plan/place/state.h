// placement_state: where the plants stand while places are looked for, and what that is worth.
#pragma once
#include <optional>
#include <vector>

#include "plan/light/shade.h"
#include "plan/place/task.h"

namespace loamsheet {

class PlacementState {
 public:
  explicit PlacementState(const PlacementTask&);

  const std::optional<SiteWorth>& at(size_t plant) const { return at_[plant]; }
  void put(size_t plant, const std::optional<SiteWorth>&);

  // Movable plants that clash with a plant at a site; no more than two are told.
  std::vector<size_t> in_the_way(size_t plant, int site) const;
  bool is_free(size_t plant, int site) const;

  // What a plant adds at a site, with what shade costs it and the others.
  long gain(size_t plant, const SiteWorth&) const;
  long gain(size_t plant) const { return at_[plant] ? gain(plant, *at_[plant]) : 0; }

  // The free site where it adds most, when that is more than `above`.
  std::optional<SiteWorth> best_free(size_t plant, long above) const;

 private:
  // The feet of the movable plants, by plant; of those without a place far away, so that the
  // question asked most, whether a site is free, needs no other.
  struct Feet {
    std::vector<double> x, y, z;
  };

  bool near(size_t other, const Position&, double square) const;

  const PlacementTask& task_;
  std::vector<std::optional<SiteWorth>> at_;  // of movable plants
  Feet feet_;
  std::vector<Crown> crowns_;  // of those that have a place
};

}  // namespace loamsheet
