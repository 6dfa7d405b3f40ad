#include "catalogue/shelf.h"

#include <algorithm>
#include <set>

#include "base/text.h"
#include "catalogue/file.h"

namespace loamsheet {
namespace {

bool is_blank(std::string_view line) {
  const auto first = line.find_first_not_of(" \t\r");
  return first == std::string_view::npos || line[first] == '#';
}

size_t indent_of(std::string_view line) {
  return std::min(line.find_first_not_of(' '), line.size());
}

// "  ficus-pumila:" gives "ficus-pumila", and so does "  ficus-pumila: {...}"; anything else gives
// nothing.
std::string id_in(std::string_view line) {
  const std::string text = trimmed(line);
  const size_t colon = text.find(':');
  if (colon == std::string::npos || colon == 0) return "";
  const std::string id = text.substr(0, colon), rest = trimmed(text.substr(colon + 1));
  const bool is_id = id.find_first_of(" {[\"'") == std::string::npos;
  return is_id && (rest.empty() || rest.front() == '{') ? id : "";
}

std::optional<std::string> value_of(std::string_view line, std::string_view key) {
  const std::string text = trimmed(line);
  if (indent_of(line) != 4 || !text.starts_with(key)) return std::nullopt;
  return trimmed(std::string_view(text).substr(key.size()));
}

std::vector<std::string> names_in(std::string_view flow_list) {
  std::vector<std::string> names;
  const auto last = flow_list.find(']');
  if (!flow_list.starts_with('[') || last == std::string_view::npos) return names;
  for (const auto& name : split(flow_list.substr(1, last - 1), ',')) names.push_back(trimmed(name));
  return names;
}

// Goes through the lines of a file once.
class Cutter {
 public:
  Cutter(const std::vector<Shelf*>& shelves, std::string file, Sink& sink)
      : shelves_(shelves), file_(std::move(file)), sink_(sink) {}

  void text(std::string_view rest) {
    while (!rest.empty()) {
      const size_t end = std::min(rest.find('\n'), rest.size());
      line(rest.substr(0, end));
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  }

 private:
  void line(std::string_view text) {
    ++number_;
    if (!is_blank(text)) {
      filled_line(text);
    } else if (entry_) {
      entry_->text += std::string(text) + '\n';
    }
  }

  void filled_line(std::string_view text) {
    const size_t indent = indent_of(text);
    if (indent == 0) return section(text);
    if (elsewhere_) return;
    if (indent == 2) return start(text);
    if (!entry_ || indent < 4) return fault(text, "an entry's id two blanks in");
    if (auto name = value_of(text, "name:")) entry_->common_name = std::move(*name);
    if (auto names = value_of(text, "synonyms:")) entry_->synonyms = names_in(*names);
    entry_->text += std::string(text) + '\n';
  }

  // A file with one shelf holds that section alone.
  void section(std::string_view text) {
    const std::string name = id_in(text);
    const auto found = std::find_if(shelves_.begin(), shelves_.end(),
                                    [&](const Shelf* shelf) { return shelf->section == name; });
    entry_ = nullptr;
    shelf_ = found == shelves_.end() ? nullptr : *found;
    elsewhere_ = !shelf_ && !name.empty() && shelves_.size() > 1;
    const std::string line = trimmed(text);
    const bool alone = line == name + ':' || line == name + ": {}";
    if ((shelf_ && alone) || elsewhere_) return;
    const bool one = shelves_.size() == 1;
    fault(text, one ? shelves_.front()->section + ": alone on a line"
                    : "the name of a section, such as plants: alone on a line");
  }

  void start(std::string_view text) {
    const std::string id = id_in(text);
    if (id.empty()) return fault(text, "an entry's id, a colon, and nothing or its {...}");
    if (!shelf_) return;
    if (!seen_.insert(shelf_->section + '.' + id).second) return fault(text, "each id once");
    entry_ = &(shelf_->entries[id] = {});
    entry_->file = file_;
    entry_->line = number_;
    entry_->text = std::string(text) + '\n';
  }

  void fault(std::string_view text, std::string expected) {
    const int indent = static_cast<int>(indent_of(text));
    sink_.add({.where = {file_, number_, indent + 1, code_points(text) - indent},
               .message = "this line is not laid out as the catalogue's entries are",
               .expected = std::move(expected)});
  }

  const std::vector<Shelf*>& shelves_;
  std::string file_;
  Sink& sink_;
  std::set<std::string> seen_;
  Shelf* shelf_ = nullptr;
  bool elsewhere_ = false;
  Entry* entry_ = nullptr;
  int number_ = 0;
};

}  // namespace

std::vector<std::string> Shelf::ids() const {
  std::vector<std::string> out;
  for (const auto& [id, entry] : entries) out.push_back(id);
  return out;
}

std::optional<std::string> Shelf::renamed(const std::string& former) const {
  for (const auto& [id, entry] : entries) {
    if (std::find(entry.synonyms.begin(), entry.synonyms.end(), former) != entry.synonyms.end()) {
      return id;
    }
  }
  return std::nullopt;
}

void cut_into(const std::vector<Shelf*>& shelves, const std::string& file, std::string_view text,
              Sink& sink) {
  Cutter(shelves, file, sink).text(text);
}

Outcome<Shelf> read_shelf(World& world, const std::string& section) {
  Sink sink;
  const auto file = data_file(world, "specs/catalogue/" + section + ".yaml", sink);
  if (!file) return {std::nullopt, sink.take()};
  Shelf shelf{file->path, section, {}};
  cut_into({&shelf}, file->path, file->text, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(shelf), sink.take()};
}

}  // namespace loamsheet
