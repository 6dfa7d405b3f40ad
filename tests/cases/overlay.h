// overlay: the real world's files with one more among them.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/world.h"
#include "world/world.h"

namespace loamsheet {

class Overlay : public World {
 public:
  Overlay(std::string path, std::string spec)
      : path_(std::move(path)), spec_(std::move(spec)), real_(real_world()) {}
  std::optional<std::string> read(const std::string& path) override {
    return path == path_ ? std::optional(spec_) : real_->read(path);
  }
  bool write(const std::string&, std::string_view) override { return false; }
  bool make_folder(const std::string&) override { return false; }
  std::vector<std::string> list(const std::string& f) override { return real_->list(f); }
  std::vector<std::string> folders(const std::string& f) override { return real_->folders(f); }
  std::string data(const std::string& name) override { return real_->data(name); }
  std::shared_ptr<const std::string> compiled() override { return real_->compiled(); }
  std::optional<std::string> variable(const std::string&) override { return std::nullopt; }

 private:
  std::string path_, spec_;
  decltype(real_world()) real_;
};

}  // namespace loamsheet
