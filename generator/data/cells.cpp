#include "data/cells.h"

#include "base/text.h"
#include "data/json.h"

namespace loamsheet {

std::string Cells::at(const std::string& key) const {
  const auto found = cells_.find(key);
  return found == cells_.end() ? "" : found->second;
}

void Cells::yes_no(const FieldName& name, bool v) {
  put(name, v ? "yes" : "no");
}

void Cells::whole(const FieldName& name, long v) {
  put(name, std::to_string(v));
}

void Cells::number(const FieldName& name, double v) {
  put(name, significant(v, digits_written));
}

void Cells::money(const FieldName& name, Money v) {
  put(name, whole_decimal(v, 2));
}

void Cells::text(const FieldName& name, std::string_view v) {
  put(name, std::string(v));
}

void Cells::put(const FieldName& name, std::string written) {
  if (depth_ == 0) cells_[name.key()] = std::move(written);
}

}  // namespace loamsheet
