#include "data/json_sink.h"

#include "compose/words.h"

namespace loamsheet {

JsonSink::JsonSink(const Wording& wording) : wording_(wording), open_{&json_} {}

void JsonSink::nothing(const FieldName& name) {
  put(name, nullptr);
}

void JsonSink::yes_no(const FieldName& name, bool v) {
  put(name, v);
}

void JsonSink::whole(const FieldName& name, long v) {
  put(name, v);
}

void JsonSink::number(const FieldName& name, double v) {
  put(name, figure(v));
}

// Exact: the nearest double of a decimal with four places is written as that decimal.
void JsonSink::money(const FieldName& name, Money v) {
  put(name, static_cast<double>(v.v) / 1e4);
}

void JsonSink::text(const FieldName& name, std::string_view v) {
  put(name, v);
}

void JsonSink::sentence(const FieldName& name, const std::string& said, const Args& args) {
  put(name, wording_.say(said, with_materials_named(args, wording_)));
}

void JsonSink::open(const FieldName& name) {
  open_.push_back(&put(name, Json::object()));
}

void JsonSink::open_list(const FieldName& name) {
  open_.push_back(&put(name, Json::array()));
}

void JsonSink::close() {
  open_.pop_back();
}

Json& JsonSink::put(const FieldName& name, Json value) {
  Json& into = *open_.back();
  if (into.is_array()) {
    into.push_back(std::move(value));
    return into.back();
  }
  return into[name.key()] = std::move(value);
}

}  // namespace loamsheet
