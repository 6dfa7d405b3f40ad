#include "catalogue/csv.h"

#include "base/text.h"

namespace loamsheet {
namespace {

class CsvReader {
 public:
  CsvReader(std::string_view text, const std::string& file, Sink& sink)
      : text_(text), file_(file), sink_(sink) {
    if (text_.starts_with("\xEF\xBB\xBF")) text_.remove_prefix(3);
  }

  std::vector<CsvRow> rows() {
    std::vector<CsvRow> all;
    while (at_ < text_.size()) {
      CsvRow next = row();
      if (next.size() > 1 || !next.front().text.empty()) all.push_back(std::move(next));
    }
    return all;
  }

 private:
  bool ends_line() const { return at_ == text_.size() || text_[at_] == '\n' || crlf(); }
  bool crlf() const { return text_.substr(at_, 2) == "\r\n"; }

  CsvRow row() {
    CsvRow fields{field()};
    while (at_ < text_.size() && text_[at_] == ',') {
      step();
      fields.push_back(field());
    }
    if (crlf()) step();
    if (at_ < text_.size()) step();
    return fields;
  }

  CsvField field() {
    CsvField f;
    f.where = {file_, line_, column_, 0};
    const size_t from = at_;
    f.text = at_ < text_.size() && text_[at_] == '"' ? quoted(f.where) : plain();
    f.where.length = line_ == f.where.line ? code_points(text_.substr(from, at_ - from)) : 1;
    return f;
  }

  std::string plain() {
    std::string out;
    while (!ends_line() && text_[at_] != ',') {
      if (text_[at_] == '"')
        fault({file_, line_, column_, 1}, "a quote stands inside a plain field");
      out += text_[at_];
      step();
    }
    return out;
  }

  std::string quoted(const Span& from) {
    std::string out;
    step();
    while (at_ < text_.size()) {
      const bool quote = text_[at_] == '"', doubled = text_.substr(at_, 2) == "\"\"";
      if (quote && !doubled) return after_quote(std::move(out));
      if (doubled) step();
      out += text_[at_];
      step();
    }
    fault({file_, from.line, from.column, 1}, "this quote is never closed");
    return out;
  }

  std::string after_quote(std::string out) {
    step();
    if (ends_line() || text_[at_] == ',') return out;
    fault({file_, line_, column_, 1}, "text follows a quoted field");
    plain();
    return out;
  }

  void fault(Span where, const char* message) {
    sink_.add({.where = std::move(where),
               .message = message,
               .expected = "a field in double quotes, with quotes inside it doubled"});
  }

  // One byte on; lines and columns count as people do.
  void step() {
    const char c = text_[at_++];
    if (c == '\n') {
      ++line_, column_ = 1;
    } else if ((c & 0xC0) != 0x80) {
      ++column_;
    }
  }

  std::string_view text_;
  const std::string& file_;
  Sink& sink_;
  size_t at_ = 0;
  int line_ = 1, column_ = 1;
};

}  // namespace

std::vector<CsvRow> read_csv(std::string_view text, const std::string& file, Sink& sink) {
  return CsvReader(text, file, sink).rows();
}

}  // namespace loamsheet
