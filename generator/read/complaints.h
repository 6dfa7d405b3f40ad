// complaints: the problems of one document, as many as a person can use.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "base/diagnostic.h"

namespace loamsheet {

class Complaints {
 public:
  void add(Diagnostic d);
  void add(std::vector<Diagnostic> more);
  bool full() const;  // further problems are no longer kept
  bool failed() const { return !all_.empty(); }
  std::vector<Diagnostic> take() { return std::move(all_); }

 private:
  std::vector<Diagnostic> all_;
};

// A problem at a place, in words.
Diagnostic complaint(Span where, std::string message, std::string expected = "",
                     std::string hint = "");

}  // namespace loamsheet
