// placement_state: where the plants stand while places are looked for, and what that is worth.
#pragma once
#include <optional>
#include <vector>

#include "plan/placement_task.h"

namespace loamsheet {

class PlacementState {
 public:
  explicit PlacementState(const PlacementTask&);

  const std::optional<SiteWorth>& at(size_t plant) const { return at_[plant]; }
  void put(size_t plant, const std::optional<SiteWorth>& spot) { at_[plant] = spot; }

  // Movable plants that clash with a plant at a site; no more than two are told.
  std::vector<size_t> in_the_way(size_t plant, int site) const;
  bool is_free(size_t plant, int site) const;

  // What a plant adds at a site, with what shade costs it and the others.
  long gain(size_t plant, const SiteWorth&) const;
  long gain(size_t plant) const { return at_[plant] ? gain(plant, *at_[plant]) : 0; }

  // The free site where it adds most, when that is more than `above`.
  std::optional<SiteWorth> best_free(size_t plant, long above) const;

  long total() const;  // of the movable plants

 private:
  const PlacementTask& task_;
  std::vector<std::optional<SiteWorth>> at_;  // of movable plants
};

}  // namespace loamsheet
