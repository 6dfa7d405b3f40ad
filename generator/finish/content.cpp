#include "finish/content.h"

#include <array>
#include <optional>
#include <set>

#include "finish/steps.h"

namespace loamsheet {
namespace {

// An operator and the bytes from its first operand to its end.
struct Instruction {
  std::string_view bytes, op;
};

enum class Kind : char { regular, blank, delimiter };

constexpr std::array<Kind, 256> make_kinds() {
  std::array<Kind, 256> kinds{};
  for (char c : std::string_view("\0\t\n\f\r ", 6)) kinds[size_t(c)] = Kind::blank;
  for (char c : std::string_view("()<>[]{}/%")) kinds[size_t(c)] = Kind::delimiter;
  return kinds;
}

constexpr std::array<Kind, 256> kinds = make_kinds();

Kind kind(char c) {
  return kinds[static_cast<unsigned char>(c)];
}
bool is_blank(char c) {
  return kind(c) == Kind::blank;
}
bool is_delimiter(char c) {
  return kind(c) == Kind::delimiter;
}

// Cuts a content stream into instructions.
class Scanner {
 public:
  explicit Scanner(std::string_view stream) : stream_(stream) {}

  std::optional<Instruction> next() {
    skip_blanks();
    const size_t start = at_;
    while (at_ < stream_.size()) {
      const size_t token = at_;
      if (skip_token()) {
        return Instruction{stream_.substr(start, at_ - start), stream_.substr(token, at_ - token)};
      }
      skip_blanks();
    }
    return std::nullopt;
  }

 private:
  std::string_view stream_;
  size_t at_ = 0;

  void skip_blanks() {
    while (at_ < stream_.size() && is_blank(stream_[at_])) ++at_;
  }

  void skip_to(char end) {
    const size_t found = stream_.find(end, at_);
    at_ = found == std::string_view::npos ? stream_.size() : found + 1;
  }

  void skip_string() {
    int depth = 0;
    do {
      const char c = stream_[at_++];
      if (c == '\\') ++at_;
      if (c == '(') ++depth;
      if (c == ')') --depth;
    } while (depth > 0 && at_ < stream_.size());
  }

  void skip_regular() {
    while (at_ < stream_.size() && kind(stream_[at_]) == Kind::regular) ++at_;
  }

  // Steps over one token; true when it was an operator.
  bool skip_token() {
    const char c = stream_[at_];
    if (c == '(') return skip_string(), false;
    if (c == '<' && stream_.substr(at_, 2) != "<<") return skip_to('>'), false;
    if (c == '%') return skip_to('\n'), false;
    if (is_delimiter(c)) ++at_;
    if (c == '/') skip_regular();
    if (is_delimiter(c)) return false;
    skip_regular();
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '\'' || c == '"';
  }
};

bool paints(std::string_view op) {
  static constexpr std::array<std::string_view, 13> painting{"S", "s",  "f",  "F",  "f*", "B", "B*",
                                                             "b", "b*", "sh", "Do", "BI", "EI"};
  for (auto p : painting) {
    if (op == p) return true;
  }
  return false;
}

// Writes instructions, opening and closing marked content as the pieces change.
class Marker {
 public:
  explicit Marker(const std::vector<TextPiece>& pieces) : pieces_(pieces) {}

  void take(const Instruction& i) {
    if (i.op == "BT") begin_text();
    if (i.op == "ET" && texts_ > 0 && pieces_[texts_ - 1].blank_after) append("<0020> Tj");
    append(i.bytes);
    if (i.op == "ET") {
      flush();
    } else if (paints(i.op)) {
      switch_to({});
      flush();
    }
  }

  std::string finished() {
    flush();
    close();
    if (texts_ != pieces_.size())
      throw Mismatch("a painted page has not the texts it was laid out with");
    return std::move(out_);
  }

 private:
  const std::vector<TextPiece>& pieces_;
  std::string out_, waiting_;  // waiting: not yet known which piece it belongs to
  size_t texts_ = 0;
  std::optional<int> open_;
  std::set<int> used_;

  void append(std::string_view bytes) { (waiting_ += bytes) += '\n'; }

  void begin_text() {
    if (texts_ == pieces_.size()) throw Mismatch("a painted page has more texts than its layout");
    flush();
    switch_to(pieces_[texts_++]);
  }

  void flush() {
    out_ += waiting_;
    waiting_.clear();
  }

  void close() {
    if (open_) out_ += "EMC\n";
    open_.reset();
  }

  void switch_to(const TextPiece& piece) {
    if (open_ == piece.id) return;
    close();
    open_ = piece.id;
    if (piece.id < 0) {
      out_ += "/Artifact BMC\n";
      return;
    }
    if (!used_.insert(piece.id).second) throw Mismatch("one text was painted in two pieces");
    out_ += "/" + piece.role + " <</MCID " + std::to_string(piece.id) + ">> BDC\n";
  }
};

}  // namespace

std::string with_marks(std::string_view stream, const std::vector<TextPiece>& pieces) {
  Scanner scanner(stream);
  Marker marker(pieces);
  while (auto instruction = scanner.next()) marker.take(*instruction);
  return marker.finished();
}

}  // namespace loamsheet
