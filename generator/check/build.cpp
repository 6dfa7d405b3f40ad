#include "check/build.h"

namespace loamsheet {

Build::Build() = default;
Build::Build(const Build&) = default;
Build::Build(Build&&) noexcept = default;
Build& Build::operator=(const Build&) = default;
Build& Build::operator=(Build&&) noexcept = default;
Build::~Build() = default;

}  // namespace loamsheet
