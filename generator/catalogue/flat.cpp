#include "catalogue/flat.h"

#include <algorithm>
#include <set>

#include "base/text.h"
#include "catalogue/file.h"

namespace loamsheet {
namespace {

bool only_comment(std::string_view rest) {
  const std::string text = trimmed(rest);
  return text.empty() || text[0] == '#';
}

// The value in double quotes at the front; nothing when it does not end or more follows it.
std::optional<std::string> quoted(std::string_view text) {
  std::string out;
  for (size_t i = 1; i < text.size(); ++i) {
    if (text[i] == '"') {
      if (!only_comment(text.substr(i + 1))) return std::nullopt;
      return out;
    }
    const bool escaped = text[i] == '\\' && i + 1 < text.size();
    if (escaped && text[i + 1] != '"' && text[i + 1] != '\\') return std::nullopt;
    out += text[escaped ? ++i : i];
  }
  return std::nullopt;
}

std::optional<std::string> plain(std::string_view text) {
  if (text.find_first_of("'\"[]{}|>&*!%@`") == 0 || text.find(": ") != std::string_view::npos) {
    return std::nullopt;
  }
  return trimmed(text.substr(0, text.find(" #")));
}

class FlatReader {
 public:
  FlatReader(std::string path, Sink& sink) : path_(std::move(path)), sink_(sink) {}

  void line(std::string_view text) {
    ++number_;
    if (only_comment(text)) return;
    const size_t colon = text.find(": ");
    const std::string rest = colon == std::string_view::npos ? "" : trimmed(text.substr(colon + 2));
    const auto value = rest.starts_with('"') ? quoted(rest) : plain(rest);
    if (text[0] == ' ' || rest.empty() || !value) return fault(text);
    FlatLine line{
        std::string(text.substr(0, colon)), *value, {path_, number_, 1, static_cast<int>(colon)}};
    if (!names_.insert(line.name).second) {
      sink_.add({.where = line.where, .message = "'" + line.name + "' comes twice in this file"});
    }
    lines_.push_back(std::move(line));
  }

  std::vector<FlatLine> take() { return std::move(lines_); }

 private:
  void fault(std::string_view text) {
    sink_.add({.where = {path_, number_, 1, code_points(text)},
               .message = "this line is not a name and its value",
               .expected = "one line such as: layers.heading: \"Layers\""});
  }

  std::string path_;
  Sink& sink_;
  int number_ = 0;
  std::set<std::string> names_;
  std::vector<FlatLine> lines_;
};

}  // namespace

std::vector<FlatLine> read_flat(World& world, const std::string& name, Sink& sink) {
  const auto file = data_file(world, name, sink);
  if (!file) return {};
  FlatReader reader(file->path, sink);
  for (std::string_view rest = file->text; !rest.empty();) {
    const size_t end = std::min(rest.find('\n'), rest.size());
    reader.line(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return reader.take();
}

}  // namespace loamsheet
