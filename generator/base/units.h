// units: physical values as types, so that no bare number crosses a header.
#pragma once
#include <compare>

namespace loamsheet {

// A number of one unit. The tag is the unit; amounts of different units do not mix.
template <class Unit>
struct Amount {
  double v = 0;
  auto operator<=>(const Amount&) const = default;
  constexpr Amount& operator+=(Amount o) { return v += o.v, *this; }
  constexpr Amount& operator-=(Amount o) { return v -= o.v, *this; }
  friend constexpr Amount operator+(Amount a, Amount b) { return {a.v + b.v}; }
  friend constexpr Amount operator-(Amount a, Amount b) { return {a.v - b.v}; }
  friend constexpr Amount operator-(Amount a) { return {-a.v}; }
  friend constexpr Amount operator*(Amount a, double k) { return {a.v * k}; }
  friend constexpr Amount operator*(double k, Amount a) { return {a.v * k}; }
  friend constexpr Amount operator/(Amount a, double k) { return {a.v / k}; }
  friend constexpr double operator/(Amount a, Amount b) { return a.v / b.v; }
};

using Millimetres = Amount<struct MillimetreUnit>;
using SquareMetres = Amount<struct SquareMetreUnit>;
using Litres = Amount<struct LitreUnit>;
using Kilograms = Amount<struct KilogramUnit>;
using KilogramsPerCubicMetre = Amount<struct DensityUnit>;
using Celsius = Amount<struct CelsiusUnit>;
using Fraction = Amount<struct FractionUnit>;  // 0 to 1; a share, printed as per cent
using Days = Amount<struct DayUnit>;

constexpr Millimetres operator""_mm(unsigned long long v) {
  return {static_cast<double>(v)};
}
constexpr Millimetres operator""_mm(long double v) {
  return {static_cast<double>(v)};
}
constexpr Millimetres operator""_cm(unsigned long long v) {
  return {10.0 * static_cast<double>(v)};
}
constexpr Litres operator""_L(unsigned long long v) {
  return {static_cast<double>(v)};
}
constexpr Litres operator""_L(long double v) {
  return {static_cast<double>(v)};
}
constexpr Kilograms operator""_kg(unsigned long long v) {
  return {static_cast<double>(v)};
}
constexpr Kilograms operator""_kg(long double v) {
  return {static_cast<double>(v)};
}

constexpr Litres volume(SquareMetres area, Millimetres depth) {
  return {area.v * depth.v};
}
constexpr Kilograms mass(Litres volume, KilogramsPerCubicMetre density) {
  return {volume.v * density.v / 1000.0};
}
static_assert(volume(SquareMetres{0.25}, 450_mm) == 112.5_L);
static_assert(mass(10_L, KilogramsPerCubicMetre{670}) == 6.7_kg);

// What is known of a value: one number (low == high) or the ends it lies between.
template <class T>
struct Range {
  T low{}, high{};
  auto operator<=>(const Range&) const = default;
  constexpr bool exact() const { return low == high; }
};

}  // namespace loamsheet
