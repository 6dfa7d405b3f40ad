// style: the look of a sheet as data (templates/style.yaml): sizes, spaces, greys.
#pragma once
#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "base/diagnostic.h"
#include "base/world.h"

namespace loamsheet {

// Named measures: sizes and leading in points ("body.size"), spaces and margins in millimetres
// ("page.margin-left"), greys from 0 black to 1 white ("table.rule-grey").
class PageStyle {
 public:
  explicit PageStyle(std::map<std::string, double> measures) : measures_(std::move(measures)) {}
  double operator[](std::string_view name) const;  // a missing name is a fault of the program
  bool has(std::string_view name) const;

 private:
  std::map<std::string, double> measures_;
};

// Names that start with "large." stand in, in large print, for those without it.
Outcome<PageStyle> read_style(World&, bool large_print);

}  // namespace loamsheet
