#include "read/yaml_file.h"

#include "read/raw.h"

namespace loamsheet {

YamlFile::YamlFile(std::string name, std::string text)
    : name_(std::move(name)), own_text_(std::move(text)), text_(own_text_) {
  const SourceText source = this->source();
  RawDocument raw = parse_yaml(source);
  problems_ = std::move(raw.problems);
  own_tree_ = pack(raw.root, source.text());
  tree_ = own_tree_;
}

YamlFile::YamlFile(std::string name, std::string_view text, std::string_view tree,
                   std::shared_ptr<const std::string> data)
    : name_(std::move(name)), data_(std::move(data)), text_(text), tree_(tree) {}

}  // namespace loamsheet
