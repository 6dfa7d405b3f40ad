#include "base/arg.h"

namespace loamsheet {

Arg::Arg(const Arg&) = default;
Arg::Arg(Arg&&) noexcept = default;
Arg& Arg::operator=(const Arg&) = default;
Arg& Arg::operator=(Arg&&) noexcept = default;
Arg::~Arg() = default;

}  // namespace loamsheet
