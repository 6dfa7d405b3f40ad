// vectors: places in the tank as vectors, in millimetres.
#pragma once
#include <algorithm>
#include <cmath>

#include "base/geometry.h"
#include "check/climate.h"

namespace loamsheet {

// Held between nothing and all.
constexpr double share(double part) {
  return std::clamp(part, 0.0, 1.0);
}

// A place on the floor, or seen from above.
constexpr Position flat(Point p) {
  return {p.x, p.y, 0};
}
constexpr Position flat(const Position& p) {
  return {p.x, p.y, 0};
}

constexpr Position minus(const Position& a, const Position& b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}

constexpr double dot(const Position& a, const Position& b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

constexpr Position cross(const Position& a, const Position& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

// Of the straight way from one place to another, the share that is nearest to a third.
constexpr double nearest_share(const Position& from, const Position& to, const Position& p) {
  const Position along = minus(to, from);
  const double square = dot(along, along);
  return square > 0 ? share(dot(minus(p, from), along) / square) : 0;
}

constexpr Position between(const Position& from, const Position& to, double share) {
  return {from.x + share * (to.x - from.x), from.y + share * (to.y - from.y),
          from.z + share * (to.z - from.z)};
}

// From a place to the straight way between two others, squared.
constexpr double distance_square(const Position& p, const Position& from, const Position& to) {
  const Position gap = minus(p, between(from, to, nearest_share(from, to, p)));
  return dot(gap, gap);
}

inline double distance(const Position& p, const Position& from, const Position& to) {
  return std::sqrt(distance_square(p, from, to));
}

}  // namespace loamsheet
