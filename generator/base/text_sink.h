// text_sink: fields as stable text, for developers and goldens. An object is a line of its plain
// fields with its objects below, two blanks further in; what is not there leaves no trace.
#pragma once
#include <string>
#include <vector>

#include "base/fields.h"

namespace loamsheet {

class TextSink final : public FieldSink {
 public:
  TextSink();
  const std::string& text() const { return levels_[0].below; }

  bool inner() const override { return true; }
  void nothing(const FieldName&) override {}
  void yes_no(const FieldName&, bool) override;
  void whole(const FieldName&, long) override;
  void number(const FieldName&, double) override;
  void money(const FieldName&, Money) override;
  void text(const FieldName&, std::string_view) override;
  void sentence(const FieldName&, const std::string& said, const Args&) override;
  void open(const FieldName&) override;
  void open_list(const FieldName&) override;
  void close() override;

 private:
  struct Level {
    std::string name, line{}, below{};
    bool list = false;
  };
  void put(const FieldName&, const std::string& written);
  std::string indent() const;

  std::vector<Level> levels_;  // from the whole to what is open
  Args told_;                  // of the last sentence
};

}  // namespace loamsheet
