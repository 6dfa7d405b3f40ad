// one_of: a kind as a build holds it - a reference to the row of its table. A row's type lists its
// table in `all()`; the first row is what holds where nothing is said.
#pragma once
#include <algorithm>
#include <stdexcept>
#include <string>
#include <string_view>

namespace loamsheet {

// The row that bears an id. The reader takes no other ids, so one that no row bears is our fault.
template <class Row>
const Row& row_of(std::string_view id) {
  const auto all = Row::all();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Row& row) { return row.id == id; });
  if (found == all.end()) throw std::out_of_range("no row is called " + std::string(id));
  return *found;
}

template <class Row>
class OneOf {
 public:
  OneOf() : row_(&Row::all().front()) {}
  OneOf(std::string_view id) : row_(&row_of<Row>(id)) {}
  OneOf(const std::string& id) : OneOf(std::string_view(id)) {}
  OneOf(const char* id) : OneOf(std::string_view(id)) {}

  const Row* operator->() const { return row_; }
  const Row& operator*() const { return *row_; }

  // Ask a kind for the property that you need, not for its name.
  bool operator==(const OneOf&) const = default;
  bool operator==(std::string_view) const = delete;
  bool operator==(const char*) const = delete;

 private:
  const Row* row_;
};

}  // namespace loamsheet
