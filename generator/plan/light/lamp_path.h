// lamp_path: what of a lamp's rays comes through the top of the tank.
#pragma once
#include <optional>
#include <vector>

#include "check/climate.h"
#include "check/enclosure.h"

namespace loamsheet {

// The share of a lamp's rays, 0 to 1, on the way from its place down to a place in the tank: all
// from inside the tank; through an opening of the top the open share of its mesh; elsewhere what
// the cover lets through, which is of the walls' material.
class LampPath {
 public:
  explicit LampPath(const Enclosure&);
  double light(const Position& from, const Position& to) const { return through(from, to, cover_); }
  // The share for all of a level part of a lamp, from its front-left to its back-right corner;
  // nothing where it differs.
  std::optional<double> light(const Position& from, const Position& until,
                              const Position& to) const;
  double uv(const Position& from, const Position& to) const { return through(from, to, 0); }

 private:
  // An opening smaller than what it covers, or anywhere in the top, is met as often as its area
  // says.
  struct Mesh {
    std::optional<Box> over;
    double met, open;
  };
  double through(const Position& from, const Position& to, double cover) const;
  double through(Point of_top, double cover) const;

  double top_, cover_;
  std::vector<Mesh> meshes_;
};

}  // namespace loamsheet
