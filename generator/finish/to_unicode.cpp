#include "finish/to_unicode.h"

#include <algorithm>

namespace loamsheet {
namespace {

struct Run {
  int first, last;
};

// Neighbouring codes in one go; a run must not change the high byte (ISO 32000-1, 9.10.3).
std::vector<Run> runs_of(const std::vector<int>& codes) {
  std::vector<Run> runs;
  for (int code : codes) {
    const bool goes_on = !runs.empty() && code == runs.back().last + 1 && code % 256 != 0;
    if (goes_on) {
      runs.back().last = code;
    } else {
      runs.push_back({code, code});
    }
  }
  return runs;
}

std::string hex(int code) {
  static constexpr char digits[] = "0123456789abcdef";
  std::string out = "<";
  for (int shift = 12; shift >= 0; shift -= 4) out += digits[code >> shift & 15];
  return out + ">";
}

// At most a hundred ranges stand in one block.
std::string blocks(const std::vector<Run>& runs) {
  constexpr size_t most = 100;
  std::string out;
  for (size_t begin = 0; begin < runs.size(); begin += most) {
    const size_t end = std::min(begin + most, runs.size());
    out += std::to_string(end - begin) + " beginbfrange\n";
    for (size_t i = begin; i < end; ++i) {
      out += hex(runs[i].first) + hex(runs[i].last) + hex(runs[i].first) + "\n";
    }
    out += "endbfrange\n";
  }
  return out;
}

}  // namespace

std::string to_unicode(const std::vector<int>& codes) {
  return "/CIDInit /ProcSet findresource begin\n"
         "12 dict begin\n"
         "begincmap\n"
         "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
         "/CMapName /Adobe-Identity-UCS def\n"
         "/CMapType 2 def\n"
         "1 begincodespacerange\n<0000> <ffff>\nendcodespacerange\n" +
         blocks(runs_of(codes)) +
         "endcmap\n"
         "CMapName currentdict /CMap defineresource pop\n"
         "end\nend\n";
}

}  // namespace loamsheet
