// lacking: what is thrown where a sentence, a slot or a measure is asked for that the data do not
// have. A language is compared with English, and English with what the program was built with, as
// they are read; this is for what slips through. The command line catches it: nothing is printed.
#pragma once
#include <stdexcept>

#include "base/diagnostic.h"

namespace loamsheet {

struct Lacking : std::runtime_error {
  explicit Lacking(Diagnostic d) : std::runtime_error(d.message), why(std::move(d)) {}
  Diagnostic why;
};

// A file of the program's own that lacks what the message says.
inline Lacking lacking(const std::string& file, std::string message) {
  Diagnostic d;
  d.where.file = file;
  d.message = std::move(message);
  d.hint = "the installation is not complete; put it back";
  d.fault = Fault::file;
  return Lacking(std::move(d));
}

}  // namespace loamsheet
