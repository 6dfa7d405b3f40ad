#include "base/fields.h"

namespace loamsheet {

std::string FieldName::key() const {
  std::string key(name);
  if (!name.empty() && !unit.empty()) (key += '_') += unit;
  return key;
}

FieldSink::~FieldSink() = default;

void FieldSink::add(std::string_view name, const Ratio& v) {
  number({name}, static_cast<double>(v.top) / static_cast<double>(v.bottom));
}

void FieldSink::add(std::string_view name, const std::vector<std::string>& all) {
  open_list({name});
  for (const std::string& v : all) text({}, v);
  close();
}

void FieldSink::add(std::string_view name, const std::vector<int>& all) {
  open_list({name});
  for (int v : all) whole({}, v);
  close();
}

void FieldSink::add_known(std::string_view name, std::string_view v) {
  v.empty() ? nothing({name}) : text({name}, v);
}

void FieldSink::add(std::string_view name, const UnitOf<void>& unit, double v) {
  number({name, unit.name}, v * unit.times);
}

void FieldSink::add_all(std::string_view name, const UnitOf<void>& unit,
                        std::initializer_list<double> all) {
  open_list({name, unit.name});
  for (double v : all) add("", unit, v);
  close();
}

}  // namespace loamsheet
