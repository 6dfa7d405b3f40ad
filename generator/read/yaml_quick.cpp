#include "read/yaml_quick.h"

#include <yaml.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "read/tree_builder.h"

namespace loamsheet {
namespace {

// libyaml counts code points: the byte at which each starts, where not every byte is one.
std::vector<size_t> starts_of(std::string_view text) {
  const auto wide = [](char c) { return static_cast<unsigned char>(c) >= 0x80; };
  if (std::none_of(text.begin(), text.end(), wide)) return {};
  std::vector<size_t> starts;
  for (size_t i = 0; i < text.size(); ++i) {
    if ((static_cast<unsigned char>(text[i]) & 0xC0) != 0x80) starts.push_back(i);
  }
  return starts;
}

class Parser {
 public:
  explicit Parser(const std::string& text) : size_(text.size()), starts_(starts_of(text)) {
    good_ = yaml_parser_initialize(&parser_) == 1;
    if (!good_) return;
    yaml_parser_set_encoding(&parser_, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&parser_, reinterpret_cast<const unsigned char*>(text.data()),
                                 text.size());
  }
  ~Parser() {
    if (good_) yaml_parser_delete(&parser_);
  }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;

  // All of it told to the builder; false at the first error.
  bool tell(TreeBuilder& builder) {
    for (bool more = good_; more;) {
      yaml_event_t event;
      if (yaml_parser_parse(&parser_, &event) == 0) return false;
      const Held held{event};
      more = event.type != YAML_STREAM_END_EVENT;
      tell(builder, event);
    }
    return good_;
  }

 private:
  struct Held {
    yaml_event_t& event;
    ~Held() { yaml_event_delete(&event); }
  };

  size_t byte(const yaml_mark_t& mark) const {
    if (starts_.empty()) return std::min(mark.index, size_);
    return mark.index < starts_.size() ? starts_[mark.index] : size_;
  }

  void tell(TreeBuilder& builder, const yaml_event_t& event) const {
    const size_t at = byte(event.start_mark);
    switch (event.type) {
      case YAML_DOCUMENT_START_EVENT:
        return builder.document(at);
      case YAML_ALIAS_EVENT:
        return builder.alias(at);
      case YAML_SCALAR_EVENT:
        return scalar(builder, at, event);
      case YAML_SEQUENCE_START_EVENT:
        return builder.open(at, Raw::Form::list,
                            event.data.sequence_start.style == YAML_FLOW_SEQUENCE_STYLE);
      case YAML_MAPPING_START_EVENT:
        return builder.open(at, Raw::Form::map,
                            event.data.mapping_start.style == YAML_FLOW_MAPPING_STYLE);
      case YAML_SEQUENCE_END_EVENT:
      case YAML_MAPPING_END_EVENT:
        return builder.close();
      default:
        return;
    }
  }

  static void scalar(TreeBuilder& builder, size_t at, const yaml_event_t& event) {
    static constexpr std::array<std::string_view, 5> nulls{"", "~", "null", "Null", "NULL"};
    const auto& told = event.data.scalar;
    const std::string value(reinterpret_cast<const char*>(told.value), told.length);
    const bool plain = told.style == YAML_PLAIN_SCALAR_STYLE;
    if (plain && std::find(nulls.begin(), nulls.end(), value) != nulls.end()) {
      builder.null(at);
    } else {
      builder.scalar(at, value);
    }
  }

  size_t size_;
  std::vector<size_t> starts_;
  yaml_parser_t parser_{};
  bool good_ = false;
};

}  // namespace

std::optional<Raw> read_quickly(const SourceText& source, const std::string& prepared) {
  TreeBuilder builder(source, prepared);
  try {
    if (!Parser(prepared).tell(builder)) return std::nullopt;
  } catch (const Stop&) {
    return std::nullopt;
  }
  if (builder.problems().failed()) return std::nullopt;
  return builder.take_root();
}

}  // namespace loamsheet
