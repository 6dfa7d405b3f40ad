#include <variant>

#include "base/text.h"
#include "compose/compose.h"

namespace loamsheet {
namespace {

std::string written(const Words& words) {
  static constexpr const char* marks[] = {"", "*", "_"};  // regular, bold, italic
  std::string out;
  for (const auto& run : words) {
    const char* mark = marks[static_cast<int>(run.face)];
    out += mark + run.text + mark;
  }
  return out;
}

std::string lines(const std::string& kind, const std::vector<Words>& items) {
  std::string out;
  for (const auto& item : items) out += "  " + kind + ' ' + written(item) + '\n';
  return out;
}

struct Dump {
  std::string operator()(const Heading& h) const {
    return "  heading " + std::to_string(h.level) + ' ' + h.text + '\n';
  }
  std::string operator()(const Paragraph& p) const {
    return (p.small ? "  small " : "  paragraph ") + written(p.words) + '\n';
  }
  std::string operator()(const BulletList& l) const { return lines("bullet", l.items); }
  std::string operator()(const TickList& l) const { return lines("tick", l.items); }
  std::string operator()(const Blank& b) const { return "  blank " + written(b.label) + '\n'; }
  std::string operator()(const Facts& f) const {
    std::string out;
    for (const auto& fact : f.facts) {
      out += "  fact " + fact.label + " = " + written(fact.value);
      out += fact.note.empty() ? "\n" : " (" + fact.note + ")\n";
    }
    return out;
  }
  std::string operator()(const Table& t) const {
    std::string out = "  table";
    for (const auto& column : t.columns) out += " | " + column.title;
    out += '\n';
    for (const auto& row : t.rows) {
      out += "  row";
      for (const auto& cell : row) out += " | " + written(cell);
      out += '\n';
    }
    return out;
  }
  std::string operator()(const Callout& c) const {
    return "  callout " + c.title + '\n' + lines("line", c.lines);
  }
  std::string operator()(const FigureBlock& f) const {
    return "  figure " + f.id + ' ' + f.caption + '\n';
  }
  std::string operator()(const Steps& s) const {
    std::string out;
    for (const auto& step : s.steps) {
      out += "  step " + step.number + ' ' + written(step.words);
      out += step.minutes.empty() ? "\n" : " (" + step.minutes + ")\n";
    }
    return out;
  }
  std::string operator()(const CalendarGrid& c) const {
    static constexpr const char* states[] = {"", " closed", " outside"};
    std::string out = "  calendar";
    for (const auto& day : c.weekdays) out += " | " + day;
    out += '\n';
    for (const auto& week : c.weeks) {
      if (!week.every_day.empty()) out += "  every day " + written(week.every_day) + '\n';
      for (const auto& cell : week.days) {
        out += "  day " + cell.day + states[static_cast<int>(cell.state)];
        out += cell.milestone ? " milestone\n" : "\n";
        out += lines("  line", cell.lines);
      }
    }
    return out;
  }
};

}  // namespace

std::string dump(const Sheet& sheet) {
  std::string out = "sheet " + sheet.title + '\n';
  out += "head " + sheet.running_left + " | " + sheet.running_right + '\n';
  for (const auto& part : sheet.parts) {
    out += "part " + part.id + ' ' + part.title + '\n';
    for (const auto& block : part.blocks) out += std::visit(Dump{}, block);
  }
  return out;
}

}  // namespace loamsheet
