// sfnt: the few figures of a TrueType font file that a PDF repeats (OpenType 1.9, chapters head,
// maxp, OS/2).
#pragma once
#include <map>
#include <optional>
#include <string>

namespace loamsheet {

class Sfnt {
 public:
  // Throws Mismatch when the bytes are no font or a table that is asked for ends too early.
  explicit Sfnt(std::string bytes);

  int glyphs() const;

  // Heights in thousandths of the em; nothing when the font has no OS/2 table of version 2 up.
  std::optional<double> cap_height() const;
  std::optional<double> x_height() const;

 private:
  std::string bytes_;
  std::map<std::string, size_t> tables_;  // offset by tag

  int u16(size_t at) const;
  int in_table(const std::string& tag, size_t offset) const;
  std::optional<double> os2_height(size_t offset) const;
};

}  // namespace loamsheet
