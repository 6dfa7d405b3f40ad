#include "world/world.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include <sys/stat.h>
#include <unistd.h>

namespace loamsheet {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t largest_read = 64u << 20;  // bytes; nothing the program reads is larger

class RealWorld : public World {
 public:
  std::optional<std::string> read(const std::string& path) override;
  bool write(const std::string& path, std::string_view bytes) override;
  bool make_folder(const std::string& path) override;
  std::vector<std::string> list(const std::string& folder) override;
  std::string data(const std::string& name) override;
  std::optional<std::string> variable(const std::string& name) override;
};

std::optional<std::string> RealWorld::read(const std::string& path) {
  std::error_code failed;
  if (!fs::is_regular_file(path, failed)) return std::nullopt;
  const auto size = fs::file_size(path, failed);
  if (failed || size > largest_read) return std::nullopt;
  std::ifstream in(path, std::ios::binary);
  std::string bytes(size, '\0');
  if (!in.read(bytes.data(), static_cast<std::streamsize>(size)) && size > 0) return std::nullopt;
  return bytes;
}

bool write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(file, bytes.data(), bytes.size());
    if (n < 0) return false;
    bytes.remove_prefix(static_cast<size_t>(n));
  }
  return true;
}

bool RealWorld::write(const std::string& path, std::string_view bytes) {
  std::string temporary = path + ".XXXXXX";
  const int file = ::mkstemp(temporary.data());
  if (file < 0) return false;
  const mode_t mask = ::umask(0);
  ::umask(mask);
  const bool written = write_all(file, bytes) && ::fchmod(file, 0666 & ~mask) == 0;
  const bool closed = ::close(file) == 0;
  if (written && closed && ::rename(temporary.c_str(), path.c_str()) == 0) return true;
  ::unlink(temporary.c_str());
  return false;
}

bool RealWorld::make_folder(const std::string& path) {
  std::error_code failed;
  fs::create_directories(path, failed);
  return fs::is_directory(path, failed);
}

std::vector<std::string> RealWorld::list(const std::string& folder) {
  std::vector<std::string> names;
  std::error_code failed;
  for (const auto& entry : fs::directory_iterator(folder, failed)) {
    if (entry.is_regular_file(failed)) names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

// Fonts and the colour profile are staged in the build tree, everything else lies in the source.
std::string RealWorld::data(const std::string& name) {
  const char* moved = std::getenv("LOAMSHEET_DATA");
  const std::string source = moved ? moved : LOAMSHEET_SOURCE;
  const std::string staged = (moved ? source : std::string(LOAMSHEET_BUILD)) + '/' + name;
  std::error_code failed;
  if (name.starts_with("fonts/") && fs::exists(staged, failed)) return staged;
  return source + '/' + name;
}

std::optional<std::string> RealWorld::variable(const std::string& name) {
  const char* text = std::getenv(name.c_str());
  return text ? std::optional<std::string>(text) : std::nullopt;
}

}  // namespace

std::unique_ptr<World> real_world() {
  return std::make_unique<RealWorld>();
}

}  // namespace loamsheet
