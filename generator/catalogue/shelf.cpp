#include "catalogue/shelf.h"

#include <algorithm>

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
  Cutter(Shelf& shelf, Sink& sink) : shelf_(shelf), sink_(sink) {}

  void line(std::string_view text) {
    ++number_;
    if (!is_blank(text)) {
      filled_line(text);
    } else if (entry_) {
      entry_->text += std::string(text) + '\n';
    }
  }

 private:
  void filled_line(std::string_view text) {
    const size_t indent = indent_of(text);
    if (indent == 0) return section(text);
    if (indent == 2) return start(text);
    if (!entry_ || indent < 4) return fault(text, "an entry's id two blanks in");
    if (auto name = value_of(text, "name:")) entry_->common_name = std::move(*name);
    if (auto names = value_of(text, "synonyms:")) entry_->synonyms = names_in(*names);
    entry_->text += std::string(text) + '\n';
  }

  void section(std::string_view text) {
    if (trimmed(text) != shelf_.section + ':') fault(text, shelf_.section + ": alone on a line");
  }

  void start(std::string_view text) {
    const std::string id = id_in(text);
    if (id.empty()) return fault(text, "an entry's id, a colon, and nothing or its {...}");
    if (shelf_.has(id)) return fault(text, "each id once");
    entry_ = &shelf_.entries[id];
    entry_->line = number_;
    entry_->text = std::string(text) + '\n';
  }

  void fault(std::string_view text, std::string expected) {
    const int indent = static_cast<int>(indent_of(text));
    sink_.add({.where = {shelf_.file, number_, indent + 1, code_points(text) - indent},
               .message = "this line is not laid out as the catalogue's entries are",
               .expected = std::move(expected)});
  }

  Shelf& shelf_;
  Sink& sink_;
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

std::string Shelf::document(const std::string& id) const {
  const auto found = entries.find(id);
  if (found == entries.end()) return "";
  const auto lines_before = static_cast<size_t>(std::max(0, found->second.line - 2));
  return std::string(lines_before, '\n') + section + ":\n" + found->second.text;
}

Outcome<Shelf> read_shelf(World& world, const std::string& section) {
  Sink sink;
  const auto file = data_file(world, "specs/catalogue/" + section + ".yaml", sink);
  if (!file) return {std::nullopt, sink.take()};
  Shelf shelf{file->path, section, {}};
  Cutter cutter(shelf, sink);
  std::string_view rest = file->text;
  while (!rest.empty()) {
    const size_t end = std::min(rest.find('\n'), rest.size());
    cutter.line(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(shelf), sink.take()};
}

}  // namespace loamsheet
