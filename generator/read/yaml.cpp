#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <map>
#include <optional>
#include <sstream>

#include "base/text.h"
#include "read/complaints.h"
#include "read/raw.h"
#include "read/scalar_end.h"
#include "read/yaml_problem.h"

namespace loamsheet {
namespace {

// Thrown by the builder through the library when nothing after this point can be read.
struct Stop {
  Diagnostic why;
};

Diagnostic problem(Span where, std::string message, std::string hint) {
  return complaint(std::move(where), std::move(message), "", std::move(hint));
}

constexpr std::string_view share_hint =
    "write the value out where it is needed; what several specs share belongs in a profile";

class TreeBuilder : public YAML::EventHandler {
 public:
  TreeBuilder(const SourceText& source, std::string_view prepared)
      : source_(source), text_(prepared) {}

  void OnDocumentStart(const YAML::Mark& mark) override {
    if (started_) {
      throw Stop{problem(span(byte(mark), 1), "a second document starts here",
                         "one file holds one document; put the rest in a file of its own")};
    }
    started_ = true;
  }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t) override { add(nothing(byte(mark))); }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    Raw raw = at(byte(mark), Raw::Form::broken);
    raw.end = word_end(text_, raw.begin);
    report(raw.begin, raw.end, "an alias ('*name') is not read", std::string(share_hint));
    add(std::move(raw));
  }
  void OnScalar(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                const std::string& value) override {
    add(scalar(after_properties(byte(mark)), value));
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                       YAML::EmitterStyle::value style) override {
    open(mark, Raw::Form::list, style);
  }
  void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                  YAML::EmitterStyle::value style) override {
    open(mark, Raw::Form::map, style);
  }
  void OnSequenceEnd() override { close(); }
  void OnMapEnd() override { close(); }

  std::optional<size_t> open_brace() const {
    for (auto f = frames_.rbegin(); f != frames_.rend(); ++f) {
      if (f->node.flow) return f->node.begin;
    }
    return std::nullopt;
  }
  Raw take_root() { return std::move(root_); }
  Complaints& problems() { return problems_; }
  bool started() const { return started_; }

 private:
  struct Frame {
    Raw node;
    std::optional<RawEntry> waiting;   // a key whose value comes next
    std::map<std::string, int> lines;  // of the keys so far
  };

  size_t byte(const YAML::Mark& mark) const {
    return std::min(static_cast<size_t>(std::max(0, mark.pos)), text_.size());
  }
  Span span(size_t begin, size_t length) const { return source_.span(begin, begin + length); }
  void report(size_t begin, size_t end, std::string message, std::string hint) {
    problems_.add(problem(source_.span(begin, end), std::move(message), std::move(hint)));
  }
  Raw at(size_t begin, Raw::Form form) const {
    Raw raw;
    raw.form = form;
    raw.begin = raw.end = begin;
    return raw;
  }

  size_t after_properties(size_t at);
  Raw scalar(size_t begin, const std::string& value);
  Raw nothing(size_t begin);
  void open(const YAML::Mark&, Raw::Form, YAML::EmitterStyle::value);
  void close();
  void add(Raw);
  void add_key(Frame&, Raw);
  void add_entry(Frame&, Raw);

  const SourceText& source_;
  std::string_view text_;
  bool started_ = false;
  std::vector<Frame> frames_;
  Complaints problems_;
  Raw root_;
};

// Reports tags and anchors that stand before a value and gives the byte after them.
size_t TreeBuilder::after_properties(size_t at) {
  while (at < text_.size() && (text_[at] == '&' || text_[at] == '!')) {
    const size_t end = word_end(text_, at);
    if (text_[at] == '&') {
      report(at, end, "an anchor ('&name') is not read", std::string(share_hint));
    } else {
      report(at, end, "a tag ('!name') is not read", "delete it; the key says what a value is");
    }
    at = text_.find_first_not_of(" \t\r\n", end);
    if (at == std::string_view::npos) at = text_.size();
  }
  return at;
}

Raw TreeBuilder::scalar(size_t begin, const std::string& value) {
  Raw raw = at(begin, Raw::Form::scalar);
  const ScalarExtent extent = scalar_extent(text_, begin, value);
  raw.end = extent.end;
  raw.quoted = extent.quoted;
  raw.where = source_.span(raw.begin, raw.end);
  raw.text = value;
  std::replace(raw.text.begin(), raw.text.end(), unknown_mark, '?');
  return raw;
}

// An empty value has no place of its own: it is shown at its key.
Raw TreeBuilder::nothing(size_t begin) {
  Raw raw = at(begin, Raw::Form::nothing);
  const std::string_view word = text_.substr(begin, word_end(text_, begin) - begin);
  const bool written = word.starts_with('~') || edit_distance(word.substr(0, 4), "null") == 0;
  if (!written && !frames_.empty() && frames_.back().waiting) {
    raw.begin = raw.end = frames_.back().waiting->end;
    raw.where = frames_.back().waiting->name;
    return raw;
  }
  if (written) raw.end = begin + (word[0] == '~' ? 1 : 4);
  raw.where = source_.span(raw.begin, raw.end);
  return raw;
}

void TreeBuilder::open(const YAML::Mark& mark, Raw::Form form, YAML::EmitterStyle::value style) {
  const size_t begin = after_properties(byte(mark));
  if (frames_.size() >= deepest) {
    throw Stop{problem(span(begin, 1), "more than 16 levels of maps and lists",
                       "no key of a spec lies this deep")};
  }
  Frame frame;
  frame.node = at(begin, form);
  frame.node.flow = style == YAML::EmitterStyle::Flow;
  frames_.push_back(std::move(frame));
}

void TreeBuilder::close() {
  Frame frame = std::move(frames_.back());
  frames_.pop_back();
  Raw& raw = frame.node;
  size_t last = raw.begin + 1;
  if (!raw.items.empty()) last = std::max(last, raw.items.back().end);
  if (!raw.entries.empty()) last = std::max(last, raw.entries.back().value.end);
  const bool braced =
      raw.begin < text_.size() && (text_[raw.begin] == '[' || text_[raw.begin] == '{');
  raw.flow = raw.flow && braced;
  raw.end = raw.flow ? brace_end(text_, last) : last;
  raw.where = source_.span(raw.begin, raw.flow ? raw.end : raw.begin + 1);
  add(std::move(raw));
}

void TreeBuilder::add(Raw raw) {
  if (frames_.empty()) {
    root_ = std::move(raw);
    return;
  }
  Frame& top = frames_.back();
  if (top.node.form == Raw::Form::list) {
    top.node.items.push_back(std::move(raw));
  } else if (top.waiting) {
    add_entry(top, std::move(raw));
  } else {
    add_key(top, std::move(raw));
  }
}

void TreeBuilder::add_key(Frame& top, Raw raw) {
  if (raw.form != Raw::Form::scalar && raw.form != Raw::Form::broken) {
    throw Stop{problem(source_.span(raw.begin, std::max(raw.end, raw.begin + 1)),
                       "a key must be a word", "write it as 'key: value'")};
  }
  if (raw.text == "<<") {
    report(raw.begin, raw.end, "a merge key ('<<') is not read", std::string(share_hint));
  }
  top.waiting = RawEntry{raw.text, source_.span(raw.begin, raw.end), raw.begin, raw.end, {}};
}

void TreeBuilder::add_entry(Frame& top, Raw raw) {
  RawEntry entry = std::move(*top.waiting);
  top.waiting.reset();
  entry.value = std::move(raw);
  const auto [first, fresh] = top.lines.emplace(entry.key, entry.name.line);
  if (entry.key == "<<" || entry.key.empty()) return;
  if (!fresh) {
    report(entry.begin, entry.end, "the key '" + shortened(entry.key) + "' is given twice",
           "it was first given on line " + std::to_string(first->second) + "; keep one of the two");
    return;
  }
  top.node.entries.push_back(std::move(entry));
}

void parse_into(TreeBuilder& builder, const SourceText& source, const std::string& prepared) {
  try {
    std::istringstream in(prepared);
    YAML::Parser parser(in);
    if (parser.HandleNextDocument(builder)) parser.HandleNextDocument(builder);
  } catch (Stop& stop) {
    builder.problems().add(std::move(stop.why));
  } catch (const YAML::Exception& e) {
    const auto at = static_cast<size_t>(std::max(0, e.mark.pos));
    builder.problems().add(syntax_problem(source, {e.msg, at, builder.open_brace()}));
  } catch (const std::exception& e) {
    builder.problems().add(syntax_problem(source, {e.what(), 0, builder.open_brace()}));
  }
}

}  // namespace

RawDocument parse_yaml(const SourceText& source) {
  RawDocument out;
  out.problems = check_bytes(source);
  if (!out.problems.empty()) return out;
  const std::string prepared = mark_unknowns(source.text());
  TreeBuilder builder(source, prepared);
  parse_into(builder, source, prepared);
  out.problems = builder.problems().take();
  out.root = builder.take_root();
  if (out.problems.empty() && out.root.form == Raw::Form::nothing) {
    out.problems.push_back(problem({source.file(), 1, 1, 1}, "the file says nothing",
                                   "start from the example that 'loamsheet begin' prints"));
  }
  return out;
}

}  // namespace loamsheet
