// yaml_file: a YAML file - its bytes, its tree in packed form, and what of it could not be read.
#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "read/packed.h"
#include "read/source.h"

namespace loamsheet {

class YamlFile {
 public:
  // Reads the text.
  YamlFile(std::string name, std::string text);
  // Of what was read before. `data` holds text and tree.
  YamlFile(std::string name, std::string_view text, std::string_view tree,
           std::shared_ptr<const std::string> data);
  YamlFile(const YamlFile&) = delete;
  YamlFile& operator=(const YamlFile&) = delete;

  const std::string& name() const { return name_; }
  std::string_view bytes() const { return text_; }  // as they stand in the file
  std::string_view packed() const { return tree_; }
  SourceText source() const { return {name_, text_}; }

  // Shows what lives as long as the file.
  Packed tree() const { return {name_, source().text(), tree_}; }
  const std::vector<Diagnostic>& problems() const { return problems_; }

 private:
  std::string name_, own_text_, own_tree_;
  std::shared_ptr<const std::string> data_;
  std::string_view text_, tree_;
  std::vector<Diagnostic> problems_;
};

using YamlFilePtr = std::shared_ptr<const YamlFile>;

}  // namespace loamsheet
