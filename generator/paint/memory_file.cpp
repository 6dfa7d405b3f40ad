#include "paint/memory_file.h"

#include <sys/mman.h>
#include <unistd.h>

namespace loamsheet {
namespace {

bool write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(descriptor, bytes.data(), bytes.size());
    if (n <= 0) return false;
    bytes.remove_prefix(static_cast<size_t>(n));
  }
  return true;
}

}  // namespace

MemoryFile::MemoryFile(std::string_view bytes) : descriptor_(::memfd_create("font", MFD_CLOEXEC)) {
  if (good() && !write_all(descriptor_, bytes)) {
    ::close(descriptor_);
    descriptor_ = -1;
  }
}

MemoryFile::~MemoryFile() {
  if (good()) ::close(descriptor_);
}

std::string MemoryFile::path() const {
  return "/proc/self/fd/" + std::to_string(descriptor_);
}

}  // namespace loamsheet
