// The data: a line that names program and form, then of each file its name, its text and its tree,
// each with its size before it, and the sum of the tree.
#include "read/compiled.h"

#include <cstdint>
#include <cstring>

namespace loamsheet {
namespace {

constexpr std::string_view opening = "loamsheet " LOAMSHEET_VERSION ", compiled YAML, form 1\n";
constexpr std::string_view ending = ".yaml";

using Size = std::uint64_t;

// Of bytes that nobody means to forge: it finds what was torn or damaged.
Size sum_of(std::string_view bytes) {
  Size sum = bytes.size();
  while (!bytes.empty()) {
    Size word = 0;
    const size_t some = std::min(bytes.size(), sizeof word);
    std::memcpy(&word, bytes.data(), some);
    sum = (sum ^ word) * 0x9E3779B97F4A7C15u;  // 2^64 over the golden ratio, as hashes use
    sum ^= sum >> 32;
    bytes.remove_prefix(some);
  }
  return sum;
}

void put(std::string& out, Size number) {
  out.append(reinterpret_cast<const char*>(&number), sizeof number);
}

void put(std::string& out, std::string_view bytes) {
  put(out, bytes.size());
  out += bytes;
}

struct Record {
  std::string_view name, text, tree;
  Size sum = 0;
};

// Goes through the records of the data.
class Records {
 public:
  explicit Records(std::string_view data) {
    if (!data.starts_with(opening)) return;
    rest_ = data.substr(opening.size());
    whole_ = true;
  }

  std::optional<Record> next() {
    Record record;
    record.name = bytes();
    record.text = bytes();
    record.tree = bytes();
    record.sum = number();
    return whole_ ? std::optional(record) : std::nullopt;
  }

 private:
  Size number() {
    Size number = 0;
    whole_ = whole_ && rest_.size() >= sizeof number;
    if (!whole_) return 0;
    std::memcpy(&number, rest_.data(), sizeof number);
    rest_.remove_prefix(sizeof number);
    return number;
  }

  std::string_view bytes() {
    const Size size = number();
    whole_ = whole_ && size <= rest_.size();
    if (!whole_) return "";
    const std::string_view bytes = rest_.substr(0, size);
    rest_.remove_prefix(size);
    return bytes;
  }

  std::string_view rest_;
  bool whole_ = false;
};

void add_folder(World& world, const std::string& root, const std::string& folder,
                std::vector<std::string>& out) {
  for (const std::string& file : world.list(root + '/' + folder)) {
    if (file.ends_with(ending)) out.push_back(folder + '/' + file);
  }
}

}  // namespace

std::vector<std::string> shipped_files(World& world, const std::string& root) {
  std::vector<std::string> names;
  for (const char* folder : {"specs/catalogue", "specs/profiles", "templates"}) {
    add_folder(world, root, folder, names);
  }
  for (const std::string& language : world.folders(root + "/templates")) {
    add_folder(world, root, "templates/" + language, names);
  }
  return names;
}

std::string compile(const std::vector<YamlFilePtr>& files) {
  std::string out(opening);
  for (const YamlFilePtr& file : files) {
    put(out, file->name());
    put(out, file->bytes());
    put(out, file->packed());
    put(out, sum_of(file->packed()));
  }
  return out;
}

YamlFilePtr compiled_file(const CompiledData& data, const std::string& name) {
  Records records(data ? std::string_view(*data) : "");
  while (const auto record = records.next()) {
    if (record->name != name) continue;
    if (sum_of(record->tree) != record->sum) return nullptr;
    return std::make_shared<const YamlFile>(name, record->text, record->tree, data);
  }
  return nullptr;
}

std::vector<std::string> compiled_names(const CompiledData& data) {
  std::vector<std::string> names;
  Records records(data ? std::string_view(*data) : "");
  while (const auto record = records.next()) names.emplace_back(record->name);
  return names;
}

YamlFilePtr shipped_file(const CompiledData& data, const std::string& name, std::string text) {
  auto file = compiled_file(data, name);
  if (file && file->bytes() == text) return file;
  return std::make_shared<const YamlFile>(name, std::move(text));
}

}  // namespace loamsheet
