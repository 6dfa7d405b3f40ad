#include "world/world.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <mutex>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace loamsheet {
namespace {

namespace fs = std::filesystem;

constexpr size_t largest_read = 64u << 20;  // bytes; nothing the program reads is larger

class RealWorld : public World {
 public:
  std::optional<std::string> read(const std::string& path) override;
  bool write(const std::string& path, std::string_view bytes) override;
  bool make_folder(const std::string& path) override;
  std::vector<std::string> list(const std::string& folder) override;
  std::vector<std::string> folders(const std::string& folder) override;
  std::string data(const std::string& name) override;
  std::shared_ptr<const std::string> compiled() override;
  std::optional<std::string> variable(const std::string& name) override;

 private:
  std::once_flag compiled_read_;
  std::shared_ptr<const std::string> compiled_;
};

// Closed when it goes out of scope.
struct OpenFile {
  explicit OpenFile(const std::string& path) : number(::open(path.c_str(), O_RDONLY | O_CLOEXEC)) {}
  ~OpenFile() {
    if (number >= 0) ::close(number);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  int number;
};

bool read_all(int file, std::string& into) {
  for (size_t at = 0; at < into.size();) {
    const ssize_t n = ::read(file, into.data() + at, into.size() - at);
    if (n <= 0) return false;
    at += static_cast<size_t>(n);
  }
  return true;
}

std::optional<std::string> RealWorld::read(const std::string& path) {
  struct stat about {};
  if (::stat(path.c_str(), &about) != 0 || !S_ISREG(about.st_mode)) return std::nullopt;
  const OpenFile file(path);
  if (file.number < 0 || ::fstat(file.number, &about) != 0) return std::nullopt;
  const auto size = static_cast<size_t>(about.st_size);
  if (size > largest_read) return std::nullopt;
  std::string bytes(size, '\0');
  if (!read_all(file.number, bytes)) return std::nullopt;
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

// The names in a folder of what is as wanted.
std::vector<std::string> names_in(const std::string& folder,
                                  bool (fs::directory_entry::*wanted)(std::error_code&) const) {
  std::vector<std::string> names;
  std::error_code failed;
  for (const auto& entry : fs::directory_iterator(folder, failed)) {
    if ((entry.*wanted)(failed)) names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<std::string> RealWorld::list(const std::string& folder) {
  return names_in(folder, &fs::directory_entry::is_regular_file);
}

std::vector<std::string> RealWorld::folders(const std::string& folder) {
  return names_in(folder, &fs::directory_entry::is_directory);
}

// Fonts, the colour profile and what was compiled are staged in the build tree, everything else
// lies in the source.
std::string RealWorld::data(const std::string& name) {
  const char* moved = std::getenv("LOAMSHEET_DATA");
  const std::string source = moved ? moved : LOAMSHEET_SOURCE;
  const std::string staged = (moved ? source : std::string(LOAMSHEET_BUILD)) + '/' + name;
  const bool is_staged = name.starts_with("fonts/") || name == compiled_name;
  std::error_code failed;
  if (is_staged && fs::exists(staged, failed)) return staged;
  return source + '/' + name;
}

// Data that were moved without it are still compared with what the program was built with.
std::shared_ptr<const std::string> RealWorld::compiled() {
  std::call_once(compiled_read_, [this] {
    auto bytes = read(data(compiled_name));
    if (!bytes) bytes = read(std::string(LOAMSHEET_BUILD) + '/' + compiled_name);
    if (bytes) compiled_ = std::make_shared<const std::string>(std::move(*bytes));
  });
  return compiled_;
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
