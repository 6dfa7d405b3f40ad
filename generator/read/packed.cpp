// A value: a byte of its form and marks, its bytes, its place, then a scalar's words, or the number
// of entries or items and each of them. Before the value of an entry stands how long it is, so that
// it can be passed over. Numbers are in groups of seven bits, the last group without the top bit.
#include "read/packed.h"

#include <cstdint>

namespace loamsheet {
namespace {

constexpr unsigned form_bits = 7, quoted_bit = 8, flow_bit = 16, as_typed_bit = 32;

class Packer {
 public:
  explicit Packer(std::string_view text) : text_(text) {}

  void value(const Raw& raw) {
    const bool as_typed = typed(raw.begin, raw.end) == raw.text;
    out_ += static_cast<char>(static_cast<unsigned>(raw.form) | (raw.quoted ? quoted_bit : 0) |
                              (raw.flow ? flow_bit : 0) | (as_typed ? as_typed_bit : 0));
    place(raw.begin, raw.end, raw.where);
    if (raw.form == Raw::Form::scalar && !as_typed) words(raw.text);
    if (raw.form == Raw::Form::map) entries(raw);
    if (raw.form == Raw::Form::list) items(raw);
  }

  std::string take() { return std::move(out_); }

 private:
  void number(size_t n) {
    for (; n > 0x7F; n >>= 7) out_ += static_cast<char>((n & 0x7F) | 0x80);
    out_ += static_cast<char>(n);
  }

  void words(const std::string& text) {
    number(text.size());
    out_ += text;
  }

  void place(size_t begin, size_t end, const Span& where) {
    number(begin);
    number(end - begin);
    number(static_cast<size_t>(where.line));
    number(static_cast<size_t>(where.column));
    number(static_cast<size_t>(where.length));
  }

  void entries(const Raw& raw) {
    number(raw.entries.size());
    for (const RawEntry& entry : raw.entries) {
      const bool as_typed = typed(entry.begin, entry.end) == entry.key;
      out_ += static_cast<char>(as_typed ? as_typed_bit : 0);
      place(entry.begin, entry.end, entry.name);
      if (!as_typed) words(entry.key);
      Packer inside(text_);
      inside.value(entry.value);
      words(inside.out_);
    }
  }

  void items(const Raw& raw) {
    number(raw.items.size());
    for (const Raw& item : raw.items) value(item);
  }

  std::string_view typed(size_t begin, size_t end) const {
    return begin <= end && end <= text_.size() ? text_.substr(begin, end - begin) : "";
  }

  std::string_view text_;
  std::string out_;
};

}  // namespace

class PackedReader {
 public:
  explicit PackedReader(const Packed& from)
      : file_(*from.file_), text_(from.text_), at_(from.at_) {}

  struct Head {
    unsigned marks;
    size_t begin, end;
    int line, column, length;
    bool is(Raw::Form form) const { return (marks & form_bits) == static_cast<unsigned>(form); }
    Raw::Form form() const { return static_cast<Raw::Form>(marks & form_bits); }
  };

  Head head() {
    Head head{};
    head.marks = static_cast<unsigned char>(*at_++);
    head.begin = number();
    head.end = head.begin + number();
    head.line = static_cast<int>(number());
    head.column = static_cast<int>(number());
    head.length = static_cast<int>(number());
    return head;
  }

  Span span(const Head& head) const {
    if (head.line == 0) return {};
    return {file_, head.line, head.column, head.length};
  }

  // The words behind the head of a scalar or key.
  std::string_view words(const Head& head) {
    if ((head.marks & as_typed_bit) != 0) return {text_ + head.begin, head.end - head.begin};
    return kept();
  }

  Raw value() {
    const Head head = this->head();
    Raw raw;
    raw.form = head.form();
    raw.quoted = (head.marks & quoted_bit) != 0;
    raw.flow = (head.marks & flow_bit) != 0;
    raw.where = span(head);
    raw.begin = head.begin, raw.end = head.end;
    if (head.is(Raw::Form::scalar)) raw.text = words(head);
    if (head.is(Raw::Form::map)) open_entries(raw);
    if (head.is(Raw::Form::list)) open_items(raw);
    return raw;
  }

  std::vector<PackedEntry> entries() {
    std::vector<PackedEntry> out;
    if (!head().is(Raw::Form::map)) return out;
    const size_t count = number();
    out.reserve(count);
    for (size_t i = 0; i < count; ++i) {
      const Head key = head();
      const std::string_view word = words(key);
      const std::string_view inside = kept();
      out.push_back({word, &file_, key.line, key.column, key.length, key.begin, key.end,
                     Packed(file_, {text_, 0}, inside)});
    }
    return out;
  }

  std::vector<Packed> items() {
    std::vector<Packed> out;
    if (!head().is(Raw::Form::list)) return out;
    for (size_t left = number(); left > 0; --left) {
      out.push_back(Packed(file_, {text_, 0}, {at_, 0}));
      value();
    }
    return out;
  }

 private:
  size_t number() {
    auto byte = static_cast<unsigned char>(*at_++);
    size_t n = byte & 0x7F;
    for (unsigned shift = 7; byte > 0x7F; shift += 7) {
      byte = static_cast<unsigned char>(*at_++);
      n |= static_cast<size_t>(byte & 0x7F) << shift;
    }
    return n;
  }

  std::string_view kept() {
    const size_t size = number();
    const std::string_view bytes(at_, size);
    at_ += size;
    return bytes;
  }

  void open_entries(Raw& raw) {
    raw.entries.resize(number());
    for (RawEntry& entry : raw.entries) {
      const Head key = head();
      entry.name = span(key);
      entry.begin = key.begin, entry.end = key.end;
      entry.key = words(key);
      number();  // how long the value is
      entry.value = value();
    }
  }

  void open_items(Raw& raw) {
    raw.items.resize(number());
    for (Raw& item : raw.items) item = value();
  }

  const std::string& file_;
  const char* text_;
  const char* at_;
};

Raw::Form Packed::form() const {
  return PackedReader(*this).head().form();
}

Raw Packed::opened() const {
  return PackedReader(*this).value();
}

std::vector<PackedEntry> Packed::entries() const {
  return PackedReader(*this).entries();
}

std::vector<Packed> Packed::items() const {
  return PackedReader(*this).items();
}

std::optional<std::string_view> Packed::text() const {
  PackedReader reader(*this);
  const auto head = reader.head();
  if (!head.is(Raw::Form::scalar)) return std::nullopt;
  return reader.words(head);
}

Span Packed::where() const {
  PackedReader reader(*this);
  return reader.span(reader.head());
}

size_t Packed::end() const {
  return PackedReader(*this).head().end;
}

std::string pack(const Raw& raw, std::string_view text) {
  Packer packer(text);
  packer.value(raw);
  return packer.take();
}

}  // namespace loamsheet
