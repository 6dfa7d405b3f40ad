// A file that lives in memory and has a path, for a library that reads by path only.
#pragma once
#include <string>
#include <string_view>

namespace loamsheet {

class MemoryFile {
 public:
  explicit MemoryFile(std::string_view bytes);
  ~MemoryFile();
  MemoryFile(const MemoryFile&) = delete;
  MemoryFile& operator=(const MemoryFile&) = delete;

  bool good() const { return descriptor_ >= 0; }
  std::string path() const;  // good for as long as the object lives; what is open stays open

 private:
  int descriptor_;
};

}  // namespace loamsheet
