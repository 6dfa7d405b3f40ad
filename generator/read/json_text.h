// json_text: JSON built in order, for the schema.
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace loamsheet {

class Json {
 public:
  static Json object();
  static Json array();
  static Json text(std::string_view);
  static Json number(double);
  static Json yes(bool);

  Json& set(std::string name, Json value);  // of an object
  Json& add(Json value);                    // of an array

  // Two blanks a level; a short array stays on one line.
  std::string written(int level = 0) const;

 private:
  enum class Form { leaf, object, array };
  std::string flat() const;
  bool short_array() const;

  Form form_ = Form::leaf;
  std::string leaf_;
  std::vector<std::pair<std::string, Json>> parts_;
};

}  // namespace loamsheet
