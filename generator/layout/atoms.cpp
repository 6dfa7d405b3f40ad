#include "layout/atoms.h"

#include <algorithm>
#include <string_view>

#include "base/text.h"

namespace loamsheet {
namespace {

struct Letter {
  char32_t code;
  Face face;
};

std::vector<Letter> letters(const Words& words) {
  std::vector<Letter> all;
  for (const Run& run : words) {
    for (char32_t c : decoded(run.text)) all.push_back({c, run.face});
  }
  return all;
}

bool is_blank(char32_t c) {
  return c == U' ' || c == U'\t';
}
bool is_space(char32_t c) {
  return is_blank(c) || c == U'\n' || c == U'\r';
}
bool is_digit(char32_t c) {
  return c >= U'0' && c <= U'9';
}
bool is_joint(char32_t c) {
  return c == U'-' || c == U'\u2010' || c == U'\u2013' || c == U'/';
}

// Whether the word around `i` is a unit with a power in it, as "kg/m²" is.
bool in_unit(const std::vector<Letter>& all, size_t i) {
  while (i > 0 && !is_space(all[i - 1].code)) --i;
  for (; i < all.size() && !is_space(all[i].code); ++i) {
    if (all[i].code == U'\u00B2' || all[i].code == U'\u00B3') return true;
  }
  return false;
}

// Whether a line may break after the joint at `i`: a letter before it, and no digit after it; and
// not within a unit.
bool seam_at(const std::vector<Letter>& all, size_t i) {
  if (!is_joint(all[i].code) || i == 0 || i + 1 == all.size()) return false;
  if (all[i].code == U'/' && in_unit(all, i)) return false;
  const char32_t before = all[i - 1].code, next = all[i + 1].code;
  return !is_space(before) && !is_joint(before) && !is_space(next) && !is_digit(next) &&
         !is_joint(next);
}

bool is_unit(std::string_view word) {
  static constexpr std::string_view units[] = {
      "%", "°", "°C",  "°F", "mm", "cm", "m",  "mL", "L",  "g",  "kg",  "t",      "s",  "min", "h",
      "d", "W", "kWh", "lm", "lx", "in", "ft", "oz", "lb", "qt", "gal", "mL/min", "m²", "cm²"};
  return std::find(std::begin(units), std::end(units), word) != std::end(units) ||
         word.find("/m²") != std::string_view::npos;
}

// The letters from `i` to the next space or the end of a clause.
std::string word_at(const std::vector<Letter>& all, size_t i) {
  std::string word;
  for (; i < all.size() && !is_space(all[i].code); ++i) {
    if (std::u32string_view(U",.;:()").find(all[i].code) != std::u32string_view::npos) break;
    word += utf8(all[i].code);
  }
  return word;
}

// Whether the three letters before `i` are a currency's code.
bool after_currency(const std::vector<Letter>& all, size_t i) {
  if (i < 3 || (i > 3 && !is_space(all[i - 4].code))) return false;
  return std::all_of(all.begin() + static_cast<long>(i) - 3, all.begin() + static_cast<long>(i),
                     [](const Letter& l) { return l.code >= U'A' && l.code <= U'Z'; });
}

// Whether the blank at `i` stands within an amount: "13.5 L", "90 × 45", "EUR 20".
bool within_amount(const std::vector<Letter>& all, size_t i) {
  if (i == 0 || i + 1 == all.size()) return false;
  const char32_t before = all[i - 1].code, next = all[i + 1].code;
  if (is_digit(before)) return next == U'\u00D7' || is_unit(word_at(all, i + 1));
  return is_digit(next) && (before == U'\u00D7' || after_currency(all, i));
}

class Cutter {
 public:
  Cutter(double size, const Typefaces& type) : size_(size), type_(type) {}

  void letter(const Letter& l) {
    if (open_ && l.face != atom_.face) close(Gap::none);
    atom_.face = l.face;
    atom_.text += utf8(l.code);
    open_ = true;
  }

  void close(Gap after) {
    if (!open_) return;
    atom_.after = after;
    atom_.width = type_.width(atom_.face, size_, atom_.text);
    atom_.blank = after == Gap::blank ? type_.width(atom_.face, size_, " ") : 0;
    done_.push_back(std::move(atom_));
    atom_ = {};
    open_ = false;
  }

  void end_line() {
    close(Gap::line);
    if (!done_.empty()) done_.back().after = Gap::line;
  }

  std::vector<Atom> take() {
    end_line();
    return std::move(done_);
  }

 private:
  double size_;
  const Typefaces& type_;
  std::vector<Atom> done_;
  Atom atom_;
  bool open_ = false;
};

// The letters of an atom as atoms of their own, a break allowed after each; a blank among them
// is one that a break swallows.
void add_letters(const Atom& atom, double size, const Typefaces& type, std::vector<Atom>& out) {
  const size_t first = out.size();
  for (char32_t c : decoded(atom.text)) {
    const std::string text = utf8(c);
    const double width = type.width(atom.face, size, text);
    if (c == U' ' && out.size() > first) {  // within an amount
      out.back().after = Gap::blank;
      out.back().blank = width;
    } else {
      out.push_back({text, atom.face, width, Gap::seam, 0});
    }
  }
  out.back().after = atom.after == Gap::none ? Gap::seam : atom.after;
  out.back().blank = atom.blank;
}

}  // namespace

std::vector<Atom> atoms(const Words& words, double size, const Typefaces& type) {
  const std::vector<Letter> all = letters(words);
  Cutter cutter(size, type);
  for (size_t i = 0; i < all.size(); ++i) {
    const char32_t c = all[i].code;
    if (c == U'\n') {
      cutter.end_line();
    } else if (is_space(c) && !within_amount(all, i)) {
      cutter.close(Gap::blank);
    } else {
      cutter.letter(all[i]);
      if (seam_at(all, i)) cutter.close(Gap::seam);
    }
  }
  return cutter.take();
}

std::vector<Atom> broken_by_force(std::vector<Atom> whole, double size, double measure,
                                  const Typefaces& type) {
  std::vector<Atom> out;
  for (size_t from = 0, to = 0; from < whole.size(); from = to) {
    double width = 0;
    do width += whole[to].width;
    while (whole[to++].after == Gap::none);
    for (size_t i = from; i < to; ++i) {
      if (width > measure) {
        add_letters(whole[i], size, type, out);
      } else {
        out.push_back(std::move(whole[i]));
      }
    }
  }
  return out;
}

}  // namespace loamsheet
