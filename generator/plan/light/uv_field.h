// uv_field: the UV index of all lamps at any place of the tank.
#pragma once
#include <vector>

#include "plan/light/lamp_path.h"
#include "plan/light/obstacles.h"

namespace loamsheet {

// From each lamp's own open-air table, straight on logarithmic scales between its rows, through
// what lies between: mesh its open share, glass nothing, furnishings nothing.
class UvField {
 public:
  explicit UvField(const Build&);

  double at(const Position&) const;

  UvField under(std::vector<Lamp> lamps) const;
  const std::vector<Lamp>& lamps() const { return lamps_; }
  const std::vector<Solid>& solids() const { return solids_; }

 private:
  double from_lamp(const Lamp&, const Position&) const;

  LampPath path_;
  std::vector<Solid> solids_;
  std::vector<Lamp> lamps_;
};

}  // namespace loamsheet
