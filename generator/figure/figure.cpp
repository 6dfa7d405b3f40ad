#include "figure/figure.h"

#include "figure/sketch.h"

namespace loamsheet {

const Figure* Figures::find(std::string_view id) const {
  for (const Figure& f : all) {
    if (f.id == id) return &f;
  }
  return nullptr;
}

Box extent(const Figure& f) {
  return extent(f.marks);
}

}  // namespace loamsheet
