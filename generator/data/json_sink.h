// json_sink: fields as JSON - figures to six significant digits, money exactly, sentences in words.
#pragma once
#include <vector>

#include "base/fields.h"
#include "catalogue/wording.h"
#include "data/json.h"

namespace loamsheet {

class JsonSink final : public FieldSink {
 public:
  explicit JsonSink(const Wording&);
  Json& json() { return json_; }

  void nothing(const FieldName&) override;
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
  Json& put(const FieldName&, Json);

  const Wording& wording_;
  Json json_ = Json::object();
  std::vector<Json*> open_;  // from the whole to what is open
};

}  // namespace loamsheet
