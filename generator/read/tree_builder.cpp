#include "read/tree_builder.h"

#include <algorithm>

#include "base/text.h"
#include "read/scalar_end.h"
#include "read/yaml_problem.h"

namespace loamsheet {
namespace {

Diagnostic problem(Span where, std::string message, std::string hint) {
  return complaint(std::move(where), std::move(message), "", std::move(hint));
}

Raw at(size_t begin, Raw::Form form) {
  Raw raw;
  raw.form = form;
  raw.begin = raw.end = begin;
  return raw;
}

constexpr size_t deepest = 16;  // levels of maps and lists; the message says so, too

constexpr std::string_view share_hint =
    "write the value out where it is needed; what several specs share belongs in a profile";

}  // namespace

void TreeBuilder::report(size_t begin, size_t end, std::string message, std::string hint) {
  problems_.add(problem(source_.span(begin, end), std::move(message), std::move(hint)));
}

std::optional<size_t> TreeBuilder::open_brace() const {
  for (auto f = frames_.rbegin(); f != frames_.rend(); ++f) {
    if (f->node.flow) return f->node.begin;
  }
  return std::nullopt;
}

void TreeBuilder::document(size_t begin) {
  if (started_) {
    throw Stop{problem(span(begin, 1), "a second document starts here",
                       "one file holds one document; put the rest in a file of its own")};
  }
  started_ = true;
}

void TreeBuilder::alias(size_t begin) {
  Raw raw = at(begin, Raw::Form::broken);
  raw.end = word_end(text_, raw.begin);
  report(raw.begin, raw.end, "an alias ('*name') is not read", std::string(share_hint));
  add(std::move(raw));
}

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

void TreeBuilder::scalar(size_t start, const std::string& value) {
  Raw raw = at(after_properties(start), Raw::Form::scalar);
  const ScalarExtent extent = scalar_extent(text_, raw.begin, value);
  raw.end = extent.end;
  raw.quoted = extent.quoted;
  raw.where = source_.span(raw.begin, raw.end);
  raw.text = value;
  std::replace(raw.text.begin(), raw.text.end(), unknown_mark, '?');
  add(std::move(raw));
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

void TreeBuilder::open(size_t start, Raw::Form form, bool flow) {
  const size_t begin = after_properties(start);
  if (frames_.size() >= deepest) {
    throw Stop{problem(span(begin, 1), "more than 16 levels of maps and lists",
                       "no key of a spec lies this deep")};
  }
  Frame frame;
  frame.node = at(begin, form);
  frame.node.flow = flow;
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

}  // namespace loamsheet
