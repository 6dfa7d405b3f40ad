// code_points: a set of code points that is quick to ask about the letters of most texts.
#pragma once
#include <bitset>
#include <set>

namespace loamsheet {

class CodePoints {
 public:
  // False when it is in the set already.
  bool add(char32_t c) {
    if (c >= common_.size()) return all_.insert(c).second;
    if (common_[c]) return false;
    common_[c] = true;
    return all_.insert(c).second;
  }
  const std::set<char32_t>& all() const { return all_; }

 private:
  std::bitset<0x2200> common_;  // up to the signs of punctuation and currencies
  std::set<char32_t> all_;
};

}  // namespace loamsheet
