#include "read/number.h"

#include <array>
#include <charconv>
#include <cmath>

#include "base/text.h"

namespace loamsheet {
namespace {

struct Spelling {
  char32_t from;
  std::string_view to;
};

constexpr std::array spellings{
    Spelling{U'\u00A0', " "}, Spelling{U'\u2009', " "}, Spelling{U'\u202F', " "},
    Spelling{U'\t', " "},     Spelling{U'\n', " "},     Spelling{U'\r', " "},
    Spelling{U'\u2212', "-"}, Spelling{U'\u2012', "–"}, Spelling{U'\u2044', "/"},
    Spelling{U'º', "°"},      Spelling{U'˚', "°"},      Spelling{U'℃', "°C"},
    Spelling{U'℉', "°F"},     Spelling{U'″', "\""},     Spelling{U'”', "\""},
    Spelling{U'′', "'"},      Spelling{U'’', "'"},      Spelling{U'²', "2"},
    Spelling{U'³', "3"},      Spelling{U'½', "1/2"},    Spelling{U'¼', "1/4"},
    Spelling{U'¾', "3/4"},    Spelling{U'⅓', "1/3"},    Spelling{U'⅔', "2/3"},
    Spelling{U'⅕', "1/5"},    Spelling{U'⅖', "2/5"},    Spelling{U'⅗', "3/5"},
    Spelling{U'⅘', "4/5"},    Spelling{U'⅙', "1/6"},    Spelling{U'⅚', "5/6"},
    Spelling{U'⅛', "1/8"},    Spelling{U'⅜', "3/8"},    Spelling{U'⅝', "5/8"},
    Spelling{U'⅞', "7/8"},
};

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

const Spelling* spelling_of(char32_t c) {
  for (const auto& s : spellings) {
    if (s.from == c) return &s;
  }
  return nullptr;
}

void append(std::string& out, char32_t c) {
  const Spelling* s = spelling_of(c);
  const std::string piece = s ? std::string(s->to) : utf8(c);
  const bool fraction = piece.size() == 3 && piece[1] == '/';
  if (fraction && !out.empty() && is_digit(out.back())) out += ' ';
  if (piece == " " && (out.empty() || out.back() == ' ')) return;
  out += piece;
}

// Reads a number from left to right.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  Number read() {
    if (peek() == '-') ++at_;
    if (is_endless()) return failed(Number::Fault::endless);
    const std::string_view whole = digits();
    if (whole.empty() && !(peek() == '.' && is_digit(peek(1)))) {
      return failed(Number::Fault::not_a_number);
    }
    if (peek() == '/' && is_digit(peek(1))) return fraction("0", whole);
    if (peek() == ' ' && is_digit(peek(1))) return after_blank(whole);
    if (is_digit(peek(1)) && (peek() == ',' || peek() == '\'')) return after_comma(whole);
    return decimal();
  }

 private:
  char peek(size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  std::string_view digits() {
    const size_t from = at_;
    while (is_digit(peek())) ++at_;
    return text_.substr(from, at_ - from);
  }
  bool is_endless() const {
    std::string word;
    for (char c : text_.substr(at_, 4)) word += static_cast<char>(c | 0x20);
    if (word.starts_with('.')) word.erase(0, 1);
    return word.starts_with("nan") || word.starts_with("inf") || text_.substr(at_).starts_with("∞");
  }
  Number failed(Number::Fault fault, std::string mended = "") const {
    return {fault, 0, at_, std::move(mended)};
  }
  Number made(double value) const {
    if (!std::isfinite(value)) return failed(Number::Fault::endless);
    return {Number::Fault::none, text_.starts_with('-') ? -value : value, at_, ""};
  }
  static double value_of(std::string_view digits) {
    double v = 0;
    const auto r = std::from_chars(digits.data(), digits.data() + digits.size(), v);
    return r.ec == std::errc() ? v : HUGE_VAL;
  }

  Number decimal();
  Number fraction(std::string_view whole, std::string_view top);
  Number after_blank(std::string_view whole);
  Number after_comma(std::string_view whole);

  std::string_view text_;
  size_t at_ = 0;
};

Number Scanner::decimal() {
  if (peek() == '.' && is_digit(peek(1))) {
    ++at_;
    digits();
  }
  if (is_digit(peek(1)) && (peek() == '.' || peek() == ','))
    return failed(Number::Fault::thousands);
  const bool exponent =
      (peek() == 'e' || peek() == 'E') &&
      (is_digit(peek(1)) || ((peek(1) == '-' || peek(1) == '+') && is_digit(peek(2))));
  if (exponent) return failed(Number::Fault::exponent);
  const size_t sign = text_.starts_with('-') ? 1 : 0;
  return made(value_of(text_.substr(sign, at_ - sign)));
}

Number Scanner::fraction(std::string_view whole, std::string_view top) {
  ++at_;
  const double below = value_of(digits());
  if (below == 0) return failed(Number::Fault::endless);
  return made(value_of(whole) + value_of(top) / below);
}

// "1 1/2" is one number, "6 000" is not.
Number Scanner::after_blank(std::string_view whole) {
  const size_t blank = at_++;
  const std::string_view next = digits();
  if (peek() == '/' && is_digit(peek(1))) return fraction(whole, next);
  return failed(Number::Fault::blank, std::string(text_.substr(0, blank)) + std::string(next));
}

Number Scanner::after_comma(std::string_view) {
  const size_t mark = at_++;
  const std::string_view next = digits();
  const bool again = is_digit(peek(1)) && (peek() == ',' || peek() == '.' || peek() == '\'');
  if (next.size() == 3 || again || text_[mark] == '\'') return failed(Number::Fault::thousands);
  return failed(Number::Fault::comma, std::string(text_.substr(0, mark)) + '.' + std::string(next));
}

}  // namespace

Number parse_number(std::string_view text) {
  return Scanner(text).read();
}

std::string normalised(std::string_view text) {
  std::string out;
  for (char32_t c : decoded(text)) append(out, c);
  if (out.ends_with(' ')) out.pop_back();
  return out;
}

std::string fault_words(const Number& n, std::string_view typed) {
  const std::string quoted = "'" + std::string(typed) + "'";
  switch (n.fault) {
    case Number::Fault::none:
      return "";
    case Number::Fault::not_a_number:
      return quoted + " is not a number";
    case Number::Fault::comma:
      return quoted + " has a decimal comma";
    case Number::Fault::thousands:
      return quoted + " has a mark between its digits";
    case Number::Fault::blank:
      return quoted + " has a blank inside its number";
    case Number::Fault::endless:
      return quoted + " is not a finite number";
    case Number::Fault::exponent:
      return quoted + " has an exponent";
  }
  return "";
}

}  // namespace loamsheet
