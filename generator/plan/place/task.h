// placement_task: plants and sites, weighed against each other: where each plant may stand, and
// what two plants cost each other.
#pragma once
#include <optional>
#include <vector>

#include "plan/light/shade.h"
#include "plan/place/search.h"

namespace loamsheet {

// A site that a plant may take, and what it is worth there, in millionths, beside the fixed plants
// alone.
struct SiteWorth {
  int site = -1;
  long worth = 0;
};
using SiteWorths = std::vector<SiteWorth>;  // best first, then in order of sites

// A plant at a site, with the crown that it has there.
struct Shaded {
  size_t plant;
  int site;
  const Crown& crown;
};

class PlacementTask {
 public:
  PlacementTask(const std::vector<ToPlace>&, const std::vector<Site>&,
                const std::optional<Position>& lamp);

  size_t count() const { return plants_.size(); }
  const ToPlace& plant(size_t i) const { return plants_[i]; }
  const Site& site(int i) const { return sites_[static_cast<size_t>(i)]; }
  const SiteWorths& spots(size_t plant) const { return spots_[plant]; }
  const std::vector<size_t>& movable() const { return movable_; }  // plants that are not fixed

  // Plants of one entry are alike, and follow each other.
  bool alike(size_t a, size_t b) const;

  // The least distance that two plants keep.
  double kept(size_t a, size_t b) const;
  const double* kept_squares(size_t plant) const { return &kept_[plant * plants_.size()]; }
  bool clash(size_t a, int site_a, size_t b, int site_b) const;

  // What shade costs both of two plants together; what that of `b` costs `a`, in millionths.
  long cost(size_t a, int site_a, size_t b, int site_b) const;
  long cost(const Shaded& a, const Shaded& b) const;
  long loss(size_t a, int site_a, size_t b, int site_b) const;
  long loss(const Shaded&, const Crown& other) const;
  Crown crown(size_t plant, int site) const;
  const std::optional<Position>& lamp() const { return lamp_; }

  // The share of its light that `b` leaves to `a`.
  double left(size_t a, int site_a, size_t b, int site_b) const;

  // By the soft rules alone.
  long solo(size_t plant, int site) const;

 private:
  SiteWorths spots_of(size_t plant) const;
  std::optional<SiteWorth> spot(size_t plant, int site) const;

  const std::vector<ToPlace>& plants_;
  const std::vector<Site>& sites_;
  std::optional<Position> lamp_;
  std::vector<double> kept_;  // squares
  std::vector<size_t> fixed_, movable_;
  std::vector<SiteWorths> spots_;
};

}  // namespace loamsheet
