// yaml_problem: what the YAML library finds wrong, in our words.
#pragma once
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "read/source.h"

namespace loamsheet {

struct SyntaxTrouble {
  std::string library_words;   // the library's own sentence
  size_t at = 0;               // byte where the library stopped
  std::optional<size_t> open;  // byte of the innermost brace that was open
};

Diagnostic syntax_problem(const SourceText&, const SyntaxTrouble&);

}  // namespace loamsheet
