#include "read/complaints.h"

namespace loamsheet {
namespace {
constexpr size_t most = 200;
}

void Complaints::add(Diagnostic d) {
  if (full()) return;
  if (all_.size() == most) {
    d.message = "there are more problems after this place";
    d.expected.clear();
    d.hint = "mend those above first";
    d.edit.reset();
  }
  all_.push_back(std::move(d));
}

bool Complaints::full() const {
  return all_.size() > most;
}

void Complaints::add(std::vector<Diagnostic> more) {
  for (auto& d : more) add(std::move(d));
}

Diagnostic complaint(Span where, std::string message, std::string expected, std::string hint) {
  Diagnostic d;
  d.where = std::move(where);
  d.message = std::move(message);
  d.expected = std::move(expected);
  d.hint = std::move(hint);
  return d;
}

}  // namespace loamsheet
