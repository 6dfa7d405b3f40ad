// span: where in which file something was written.
#pragma once
#include <string>

namespace loamsheet {

// Lines and columns count from 1, columns and length in code points. line 0: no place known.
struct Span {
  std::string file;
  int line = 0, column = 0, length = 0;
  bool operator==(const Span&) const = default;
};

// A value that remembers where it was written.
template <class T>
struct Located {
  T value{};
  Span where;
};

}  // namespace loamsheet
