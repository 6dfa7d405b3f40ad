// world: the one door to files, fonts and the date. Tests pass a world that lives in memory.
#pragma once
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace loamsheet {

class World {
 public:
  virtual ~World() = default;

  // The bytes of a file, or nothing if it cannot be read.
  virtual std::optional<std::string> read(const std::string& path) = 0;

  // Writes a temporary file beside `path` and renames it, so that a reader sees the old file or
  // the whole new one. False if it could not.
  virtual bool write(const std::string& path, std::string_view bytes) = 0;

  // Makes a folder and those above it; true if it is there afterwards.
  virtual bool make_folder(const std::string& path) = 0;

  // Names (not paths) of the files in a folder, sorted; empty if there is none.
  virtual std::vector<std::string> list(const std::string& folder) = 0;

  // Names of the folders in a folder, sorted.
  virtual std::vector<std::string> folders(const std::string& folder) = 0;

  // A file of the program's own data: "templates/en/layers.yaml", "specs/catalogue/materials.yaml",
  // "fonts/OpenSans-Regular.ttf". Gives its path for read().
  virtual std::string data(const std::string& name) = 0;

  // The YAML files among that data as they were compiled at build time (read/compiled.h), all in
  // one; null when there is nothing compiled.
  virtual std::shared_ptr<const std::string> compiled() = 0;

  // A variable of the environment (SOURCE_DATE_EPOCH, NO_COLOR), when it is set.
  virtual std::optional<std::string> variable(const std::string& name) = 0;
};

// A world in memory, for tests.
class MemoryWorld : public World {
 public:
  std::map<std::string, std::string> files;
  std::map<std::string, std::string> variables;
  std::shared_ptr<const std::string> compiled_files;

  std::optional<std::string> read(const std::string& path) override;
  bool write(const std::string& path, std::string_view bytes) override;
  bool make_folder(const std::string&) override { return true; }
  std::vector<std::string> list(const std::string& folder) override;
  std::vector<std::string> folders(const std::string& folder) override;
  std::string data(const std::string& name) override { return name; }
  std::shared_ptr<const std::string> compiled() override { return compiled_files; }
  std::optional<std::string> variable(const std::string& name) override;
};

}  // namespace loamsheet
