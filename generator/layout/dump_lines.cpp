#include "layout/dump_lines.h"

#include <cmath>

#include "base/text.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return ' ' + fixed(v, 2);
}

std::string grey(double v) {
  return v > 0 ? " grey" + number(v) : "";
}

std::string pen_of(const RuleMark& rule) {
  std::string out = " pen" + number(rule.width) + grey(rule.grey);
  for (size_t i = 0; i < rule.dashes.size(); ++i) {
    out += (i == 0 ? " dashes" : "/") + number(rule.dashes[i]);
  }
  return out;
}

std::string sides(const Box& box) {
  return number(box.width()) + " x" + number(box.height());
}

class Sayer {
 public:
  explicit Sayer(double& y) : y_(y) {}

  void say(const BoxMark& m) {
    add("box", place({m.box.left, m.box.top}) + sides(m.box) +
                   (m.fill >= 0 ? " fill" + number(m.fill) : "") +
                   (m.stroke >= 0 ? " pen" + number(m.stroke_width) + grey(m.stroke) : ""));
  }

  void say(const RuleMark& m) {
    const std::string from = place(m.from);
    add("rule", from + " by" + number(m.to.x - m.from.x) + number(m.to.y - m.from.y) + pen_of(m));
  }

  void say(const std::vector<const RuleMark*>& rules) {
    if (rules.size() < 3) {
      for (const RuleMark* rule : rules) say(*rule);
      return;
    }
    Box reach;
    double length = 0;
    for (const RuleMark* rule : rules) {
      reach.add(rule->from), reach.add(rule->to);
      length += std::hypot(rule->to.x - rule->from.x, rule->to.y - rule->from.y);
    }
    add(std::to_string(rules.size()) + " rules", place({reach.left, reach.top}) + sides(reach) +
                                                     " long" + number(length) +
                                                     pen_of(*rules.front()));
    y_ = reach.bottom;
  }

  SaidLines said;

 private:
  std::string place(Point at) {
    const double up = at.y - y_;
    y_ = at.y;
    return number(at.x) + number(up);
  }

  void add(const std::string& kind, const std::string& rest) {
    said.kinds += (said.kinds.empty() ? "" : ", ") + kind;
    said.text += (said.text.empty() ? "" : "; ") + kind + rest;
  }

  double& y_;
};

bool alike(const RuleMark& a, const RuleMark& b) {
  return a.width == b.width && a.grey == b.grey && a.dashes == b.dashes;
}

}  // namespace

SaidLines said_lines(const std::vector<const PageMark*>& marks, double& y) {
  Sayer sayer(y);
  std::vector<const RuleMark*> rules;
  for (const PageMark* mark : marks) {
    const auto* rule = std::get_if<RuleMark>(mark);
    if (!rules.empty() && !(rule && alike(*rule, *rules.front()))) {
      sayer.say(rules);
      rules.clear();
    }
    if (rule) rules.push_back(rule);
    if (const auto* box = std::get_if<BoxMark>(mark)) sayer.say(*box);
  }
  sayer.say(rules);
  return sayer.said;
}

}  // namespace loamsheet
