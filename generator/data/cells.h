// cells: the plain fields of a value as the texts of a table, by their keys.
#pragma once
#include <map>
#include <string>

#include "base/fields.h"

namespace loamsheet {

// Figures to six significant digits; what is not there, and what is not plain, has no cell.
class Cells final : public FieldSink {
 public:
  // The cell of that key, or an empty one.
  std::string at(const std::string& key) const;

  void nothing(const FieldName&) override {}
  void yes_no(const FieldName&, bool) override;
  void whole(const FieldName&, long) override;
  void number(const FieldName&, double) override;
  void money(const FieldName&, Money) override;
  void text(const FieldName&, std::string_view) override;
  void sentence(const FieldName&, const std::string&, const Args&) override {}
  void open(const FieldName&) override { ++depth_; }
  void open_list(const FieldName&) override { ++depth_; }
  void close() override { --depth_; }

 private:
  void put(const FieldName&, std::string);

  std::map<std::string, std::string> cells_;
  int depth_ = 0;
};

}  // namespace loamsheet
