#include "base/text_sink.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr int digits = 6;

struct Written {
  std::string operator()(const std::string& v) const {
    const bool plain = !v.empty() && v.find_first_of(" \"\n") == std::string::npos;
    return plain ? v : '"' + v + '"';
  }
  std::string operator()(int v) const { return std::to_string(v); }
  std::string operator()(double v) const { return significant(v, digits); }
  std::string operator()(Date v) const { return iso(v); }
  template <class Unit>
  std::string operator()(Amount<Unit> v) const {
    return (*this)(v.v);
  }
  template <class T>
  std::string operator()(const Range<T>& v) const {
    return v.exact() ? (*this)(v.low) : (*this)(v.low) + ".." + (*this)(v.high);
  }
};

std::string slots(const Args& args) {
  std::string out;
  for (const auto& [slot, value] : args) {
    out += ' ' + slot + '=' + std::visit(Written{}, static_cast<const AnyArg&>(value));
  }
  return out;
}

}  // namespace

TextSink::TextSink() : levels_(1) {}

void TextSink::yes_no(const FieldName& name, bool v) {
  put(name, v ? "yes" : "no");
}

void TextSink::whole(const FieldName& name, long v) {
  put(name, std::to_string(v));
}

void TextSink::number(const FieldName& name, double v) {
  put(name, Written{}(v));
}

void TextSink::money(const FieldName& name, Money v) {
  put(name, whole_decimal(v, 2));
}

void TextSink::text(const FieldName& name, std::string_view v) {
  put(name, Written{}(std::string(v)));
}

// The numbers of two sentences in a row that have the same are written once.
void TextSink::sentence(const FieldName& name, const std::string& said, const Args& args) {
  const std::string written = said + (args == told_ ? "" : slots(args));
  told_ = args;
  Level& level = levels_.back();
  if (!level.list) return put(name, written);
  level.below += indent() + level.name + ' ' + written + '\n';
}

void TextSink::open(const FieldName& name) {
  const std::string key = name.key();
  levels_.push_back({key.empty() ? levels_.back().name : key});
  told_.clear();
}

void TextSink::open_list(const FieldName& name) {
  levels_.push_back({.name = name.key(), .list = true});
  told_.clear();
}

void TextSink::close() {
  const Level done = std::move(levels_.back());
  levels_.pop_back();
  Level& level = levels_.back();
  if (!done.list) {
    level.below += indent() + done.name + done.line + '\n' + done.below;
    return;
  }
  if (!done.line.empty()) put({done.name}, done.line.substr(1));
  level.below += done.below;
}

// What is no part of an object has a line of its own.
void TextSink::put(const FieldName& name, const std::string& written) {
  const std::string key = name.key();
  if (levels_.size() == 1) {
    levels_[0].below += key + ' ' + written + '\n';
    return;
  }
  levels_.back().line += (key.empty() ? "" : ' ' + key) + ' ' + written;
}

std::string TextSink::indent() const {
  const auto objects =
      std::count_if(levels_.begin(), levels_.end(), [](const Level& l) { return !l.list; });
  return std::string(static_cast<size_t>(objects - 1) * 2, ' ');
}

}  // namespace loamsheet
