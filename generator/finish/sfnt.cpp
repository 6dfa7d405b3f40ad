#include "finish/sfnt.h"

#include "finish/steps.h"

namespace loamsheet {

Sfnt::Sfnt(std::string bytes) : bytes_(std::move(bytes)) {
  const int count = u16(4);
  for (int i = 0; i < count; ++i) {
    const size_t entry = 12 + 16 * size_t(i);
    const size_t offset = size_t(u16(entry + 8)) << 16 | size_t(u16(entry + 10));
    tables_[bytes_.substr(entry, 4)] = offset;
  }
}

int Sfnt::u16(size_t at) const {
  if (at + 2 > bytes_.size()) throw Mismatch("an embedded font is cut off");
  return static_cast<unsigned char>(bytes_[at]) << 8 | static_cast<unsigned char>(bytes_[at + 1]);
}

int Sfnt::in_table(const std::string& tag, size_t offset) const {
  const auto table = tables_.find(tag);
  if (table == tables_.end()) throw Mismatch("an embedded font lacks the table " + tag);
  return u16(table->second + offset);
}

int Sfnt::glyphs() const {
  return in_table("maxp", 4);
}

std::optional<double> Sfnt::os2_height(size_t offset) const {
  if (!tables_.contains("OS/2") || in_table("OS/2", 0) < 2) return std::nullopt;
  return static_cast<int16_t>(in_table("OS/2", offset)) * 1000.0 / in_table("head", 18);
}

std::optional<double> Sfnt::x_height() const {
  return os2_height(86);
}
std::optional<double> Sfnt::cap_height() const {
  return os2_height(88);
}

}  // namespace loamsheet
