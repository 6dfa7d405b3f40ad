#include "read/json_text.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

std::string quoted(std::string_view text) {
  std::string out = "\"";
  for (char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + '"';
}

}  // namespace

Json Json::object() {
  Json j;
  j.form_ = Form::object;
  return j;
}

Json Json::array() {
  Json j;
  j.form_ = Form::array;
  return j;
}

Json Json::text(std::string_view text) {
  Json j;
  j.leaf_ = quoted(text);
  return j;
}

Json Json::number(double v) {
  Json j;
  j.leaf_ = significant(v, 15);
  return j;
}

Json Json::yes(bool v) {
  Json j;
  j.leaf_ = v ? "true" : "false";
  return j;
}

Json& Json::set(std::string name, Json value) {
  parts_.emplace_back(std::move(name), std::move(value));
  return *this;
}

Json& Json::add(Json value) {
  return set("", std::move(value));
}

bool Json::short_array() const {
  constexpr size_t longest = 100;
  const bool leaves = std::all_of(parts_.begin(), parts_.end(),
                                  [](const auto& p) { return p.second.form_ == Form::leaf; });
  return leaves && flat().size() <= longest;
}

std::string Json::flat() const {
  std::string out = "[";
  for (const auto& [name, value] : parts_) out += (out.size() > 1 ? ", " : "") + value.leaf_;
  return out + ']';
}

std::string Json::written(int level) const {
  if (form_ == Form::leaf) return leaf_;
  if (form_ == Form::array && short_array()) return flat();
  const std::string inner(static_cast<size_t>(level + 1) * 2, ' ');
  std::string out(1, form_ == Form::object ? '{' : '[');
  for (const auto& [name, value] : parts_) {
    out += (out.size() > 1 ? ",\n" : "\n") + inner;
    if (form_ == Form::object) out += quoted(name) + ": ";
    out += value.written(level + 1);
  }
  out += '\n' + std::string(static_cast<size_t>(level) * 2, ' ');
  return out + (form_ == Form::object ? '}' : ']');
}

}  // namespace loamsheet
