#include "base/finding.h"

#include <iterator>

namespace loamsheet {

void append(Found& all, Found more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

}  // namespace loamsheet
